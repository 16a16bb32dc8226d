import type * as z from 'zod';
import { lazily } from './leaf.ts';
import { choice, thing } from './shape.ts';
import { publicText } from './text.ts';

/** Who you are, as it stands on every document. */
export const companySection = lazily(() =>
  thing('company', {
    name: publicText('Name of the company.', 'Plumb & Level Flatwork'),
    address: publicText('Its address.', '12 Yard Lane, Anytown'),
    phone: publicText('Its telephone.', '555-0142'),
    email: publicText('Its mail address.', 'office@company.example'),
    licence: publicText('Its licence, as the state wants it shown.', 'Licence 000000'),
    insurance: publicText('What it is insured for.', 'General liability; certificates on request'),
    paper: choice(['letter', 'a4'], 'Paper the documents are printed on.'),
  }),
);

export type CompanySection = z.output<ReturnType<typeof companySection>>;
