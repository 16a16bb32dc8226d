/** What has to be in place; the words for a code are written elsewhere. */
export type ControlCode =
  | 'water-feed-to-blade'
  | 'water-at-point'
  | 'shroud-and-collector'
  | 'collector-99'
  | 'enclosed-cab'
  | 'water-or-suppressant-as-needed'
  | 'water-at-bit'
  | 'hepa-vacuum'
  | 'water-with-surfactant'
  | 'drum-exhaust-and-sprays'
  | 'booth-or-remote-station'
  | 'outdoors-only';

/** The least assigned protection factor of a respirator; 0 where none is asked for, null where the table does not reach. */
export type Apf = 0 | 10 | 25 | null;

export type SilicaRow = {
  readonly row: string;
  readonly equipment: string;
  /** Each list is one way; where there are several, one of them is enough. */
  readonly controls: readonly (readonly ControlCode[])[];
  readonly outdoors: { readonly to4Hr: Apf; readonly over4Hr: Apf };
  readonly indoors: { readonly to4Hr: Apf; readonly over4Hr: Apf };
  readonly source: string;
  readonly seen: boolean;
};

const TITLE_8 = 'read in California Code of Regulations, Title 8, section 1532.3, Table 1, which repeats it';
const TRADE_REPRINT = 'read in a trade magazine reprint of Table 1';
const COURSE = 'read in OSHAcademy course 851, module 4';
const MEMORY = 'from memory';

function apf(to4Hr: Apf, over4Hr: Apf) {
  return { to4Hr, over4Hr };
}

const NEVER = apf(0, 0);
const OUTSIDE_THE_TABLE = apf(null, null);

/**
 * 29 CFR 1926.1153(c)(1), Table 1, all rows. "Indoors" is indoors or in an enclosed area.
 *
 * `seen` is whether the respirator columns of the row were read in a public copy; where a part
 * was, the source says which. The rows from memory are to be checked against the official text.
 * Row xii has two ways with different columns, so it stands twice.
 */
export const SILICA_TABLE = [
  {
    row: 'i',
    equipment: 'stationary masonry saw',
    controls: [['water-feed-to-blade']],
    outdoors: NEVER,
    indoors: NEVER,
    source: TITLE_8,
    seen: true,
  },
  {
    row: 'ii',
    equipment: 'handheld power saw, any blade',
    controls: [['water-feed-to-blade']],
    outdoors: apf(0, 10),
    indoors: apf(10, 10),
    source: TITLE_8,
    seen: true,
  },
  {
    row: 'iii',
    equipment: 'handheld saw for fiber-cement board, blade of 8 in or less',
    controls: [['outdoors-only', 'collector-99']],
    outdoors: NEVER,
    indoors: OUTSIDE_THE_TABLE,
    source: TITLE_8,
    seen: true,
  },
  {
    row: 'iv',
    equipment: 'walk-behind saw',
    controls: [['water-feed-to-blade']],
    outdoors: NEVER,
    indoors: apf(10, 10),
    source: TITLE_8,
    seen: true,
  },
  {
    row: 'v',
    equipment: 'drivable saw',
    controls: [['outdoors-only', 'water-feed-to-blade']],
    outdoors: NEVER,
    indoors: OUTSIDE_THE_TABLE,
    source: TITLE_8,
    seen: true,
  },
  {
    row: 'vi',
    equipment: 'rig-mounted core saw or drill',
    controls: [['water-feed-to-blade']],
    outdoors: NEVER,
    indoors: NEVER,
    source: MEMORY,
    seen: false,
  },
  {
    row: 'vii',
    equipment: 'handheld or stand-mounted drill',
    controls: [['shroud-and-collector', 'hepa-vacuum']],
    outdoors: NEVER,
    indoors: NEVER,
    source: MEMORY,
    seen: false,
  },
  {
    row: 'viii',
    equipment: 'dowel drilling rig',
    controls: [['outdoors-only', 'shroud-and-collector', 'hepa-vacuum']],
    outdoors: apf(10, 10),
    indoors: OUTSIDE_THE_TABLE,
    source: MEMORY,
    seen: false,
  },
  {
    row: 'ix',
    equipment: 'vehicle-mounted drilling rig',
    controls: [
      ['shroud-and-collector', 'water-at-bit'],
      ['enclosed-cab', 'water-at-bit'],
    ],
    outdoors: NEVER,
    indoors: NEVER,
    source: MEMORY,
    seen: false,
  },
  {
    row: 'x',
    equipment: 'jackhammer or handheld powered chipping tool',
    controls: [['water-at-point'], ['shroud-and-collector']],
    outdoors: apf(0, 10),
    indoors: apf(10, 10),
    source: 'columns from memory; controls read in OSHA fact sheet FS-3629',
    seen: false,
  },
  {
    row: 'xi',
    equipment: 'handheld grinder, mortar removal',
    controls: [['shroud-and-collector']],
    outdoors: apf(10, 25),
    indoors: apf(10, 25),
    source: TRADE_REPRINT,
    seen: true,
  },
  {
    row: 'xii, water',
    equipment: 'handheld grinder, other than mortar removal',
    controls: [['outdoors-only', 'water-feed-to-blade']],
    outdoors: NEVER,
    indoors: OUTSIDE_THE_TABLE,
    source: MEMORY,
    seen: false,
  },
  {
    row: 'xii, collector',
    equipment: 'handheld grinder, other than mortar removal',
    controls: [['shroud-and-collector']],
    outdoors: NEVER,
    indoors: apf(0, 10),
    source: MEMORY,
    seen: false,
  },
  {
    row: 'xiii',
    equipment: 'walk-behind milling machine or floor grinder',
    controls: [['water-feed-to-blade'], ['collector-99', 'hepa-vacuum']],
    outdoors: NEVER,
    indoors: NEVER,
    source: TRADE_REPRINT,
    seen: true,
  },
  {
    row: 'xiv',
    equipment: 'small drivable milling machine',
    controls: [['water-with-surfactant']],
    outdoors: NEVER,
    indoors: NEVER,
    source: TRADE_REPRINT,
    seen: true,
  },
  {
    row: 'xv',
    equipment: 'large drivable milling machine',
    controls: [['drum-exhaust-and-sprays'], ['water-with-surfactant']],
    outdoors: NEVER,
    indoors: NEVER,
    source: `columns from memory; controls ${COURSE}`,
    seen: false,
  },
  {
    row: 'xvi',
    equipment: 'crushing machine',
    controls: [['water-or-suppressant-as-needed', 'booth-or-remote-station']],
    outdoors: NEVER,
    indoors: NEVER,
    source: COURSE,
    seen: true,
  },
  {
    row: 'xvii',
    equipment: 'heavy equipment that breaks or is used in demolition',
    controls: [['enclosed-cab', 'water-or-suppressant-as-needed']],
    outdoors: NEVER,
    indoors: NEVER,
    source: `columns from memory; controls ${COURSE}`,
    seen: false,
  },
  {
    row: 'xviii',
    equipment: 'heavy equipment for grading and excavating only',
    controls: [['water-or-suppressant-as-needed'], ['enclosed-cab']],
    outdoors: NEVER,
    indoors: NEVER,
    source: `${COURSE} and in an OSHA fact sheet reprint`,
    seen: true,
  },
] as const satisfies readonly SilicaRow[];

export type SilicaRowName = (typeof SILICA_TABLE)[number]['row'];

/** The column heads "4 hours or less a shift" and "more than 4 hours": exactly 4 h is the first. */
export const COLUMN_HR = 4;

export function silicaRow(name: SilicaRowName): SilicaRow {
  const row = SILICA_TABLE.find(({ row: candidate }) => candidate === name);
  if (row === undefined) throw new RangeError(`Table 1 has no row ${name}`);
  return row;
}

/** Where a reader finds the row. */
export function silicaCitation({ row, seen, source }: SilicaRow): string {
  return `29 CFR 1926.1153(c)(1), Table 1 (${row}); ${seen ? 'columns ' : ''}${source}`;
}
