import * as z from 'zod';
import { lazily } from './leaf.ts';
import { count, date } from './quantities.ts';
import { choice, reference, thing } from './shape.ts';
import { crewText, officeText, publicText } from './text.ts';

const acknowledgement = () =>
  thing('acknowledgement', {
    finding: reference('Code of the finding, as the check prints it.', 'form-board-short'),
    where: reference('The place of the finding, as the check prints it.', 'front-walk'),
    reason: officeText('Why it is accepted.', 'The base is cut down along the form.'),
  });

/** What job it is, for whom, and how it is to be written. */
export const jobSection = lazily(() =>
  thing('job', {
    number: publicText('Number of the job in the books.', '2026-014'),
    label: publicText('What the job is called on paper.', 'Driveway and front walk replaced'),
    client: thing('client', {
      name: publicText('Who the proposal is for.', 'R. and J. Okafor-Lind'),
      phone: crewText('Telephone of the client; the crew may call.', '555-0119').optional(),
      email: officeText('Mail address of the client.', 'client@mail.example').optional(),
    }),
    address: publicText('Where the work is.', '18 Maple Court, Anytown'),
    'prepared-on': date('Date of the documents.', '2026-04-06'),
    revision: count(
      { least: 1, most: 99 },
      'Counts up with each version that is sent; 1 if not given.',
      '1',
    ).optional(),
    stage: choice(
      ['bid', 'signed', 'scheduled', 'working', 'done', 'paid'],
      'How far the job is; bid if not given.',
    ).optional(),
    units: choice(['us', 'metric'], 'Units of the documents; us if not given.').optional(),
    'rule-sets': z
      .array(reference('Name of a rule set.', 'general'))
      .meta({
        description: 'Rule sets the job is checked against; general if not given.',
        examples: [['general']],
      })
      .optional(),
    acknowledged: z
      .array(acknowledgement())
      .meta({ description: 'Findings that were looked at and accepted.' })
      .optional(),
  }),
);

export type JobSection = z.output<ReturnType<typeof jobSection>>;
