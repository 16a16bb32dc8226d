import { stringify } from 'yaml';
import { addDaysOn, nextWorkdayOn } from '../units/index.ts';

export type Answers = {
  readonly label: string;
  readonly number: string;
  readonly client: string;
  readonly address: string;
  readonly length: string;
  readonly width: string;
  readonly preparedOn: string;
};

/** A job file that fits in one screen and says what each part is for. */
export function jobScaffold(answers: Answers, schemaPath: string): string {
  const { label, number, client, address, length, width, preparedOn } = answers;
  const startsOn = nextWorkdayOn(addDaysOn(preparedOn, 13));
  return `# yaml-language-server: $schema=${schemaPath}
# Every length needs its unit: 14' 6", 14 ft 6-1/2 in, 4 in, 3.6 m. Dates: 2026-05-04.
job:
  number: ${text(number)}
  label: ${text(label)}               # the homeowner reads this
  client: { name: ${text(client)} }
  address: ${text(address)}
  prepared-on: ${preparedOn}
  rule-sets: [general]

# What is there. Corners and edges count from 1, anticlockwise, beginning at the house.
site:
  existing:
    old-slab:                          # a short name of your own; figures carry it
      label: Old slab
      rectangle: { length: ${text(length)}, width: ${text(width)} }
      edges: { 4: house, 2: stays }    # along the house; along concrete that stays
      thickness: 4 in
      thickness-is: assumed            # or measured
      steel: none                      # or mesh, bars
  stays: []                            # what must be protected, one line each
  access:
    truck-stands: On the street
  emergency:
    hospital: Name of the nearest hospital
    hospital-address: Its address
    hospital-phone: 555-0100
    cross-street: Nearest cross street

# What will be there.
build:
  slabs:
    new-slab:
      label: New slab
      use: driveway                    # or walk, patio, porch
      rectangle: { length: ${text(length)}, width: ${text(width)} }
      edges: { 4: house, 2: stays }
      # rounded: { 3: 3 ft }           # corner 3, so far back along both edges
      thickness: 4 in
      base: 4 in
      dig: 4 in                        # soil dug out under the old slab
      fall: { slope: 1/4 in per ft, towards: the street }
      reinforcement: { mesh: 6x6-w1.4 } # or { bars: 4, spacing: 18 in }, or leave it out
      finish: broom                    # or float, exposed-aggregate
      board: 2x6                       # one of your form boards
      short-board: drop-base           # or pack: where the board is lower than the slab
  mix:
    strength: 4500 psi
    air: 6 %
    slump: 4 in
    aggregate: 3/4 in
    exposure: freezing-and-deicers     # or freezing, no-freezing

plan:
  starts-on: ${startsOn}
  crew: [foreman, finisher, laborer]
  trailers: [long-box, short-box]

# What may be hidden, priced beforehand.
price:
  hidden:
    thicker:
      label: The old slab is an inch thicker than assumed
      edits:
        - { thicker-existing: old-slab, by: 1 in }
`;
}

/** A scalar of YAML on one line: quoted only where it must be, also between the braces of a short map. */
function text(value: string): string {
  if (/[,[\]{}]/.test(value)) return JSON.stringify(value);
  return stringify(value, { lineWidth: 0, defaultStringType: 'PLAIN' }).trim().replaceAll('\n', ' ');
}
