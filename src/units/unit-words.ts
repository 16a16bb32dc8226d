import { plainUnit } from './number-text.ts';

/** What a price or a production can be reckoned by. */
export type RateUnit =
  | 'yd3'
  | 'cu ft'
  | 'm3'
  | 'ton'
  | 'lb'
  | 'load'
  | 'h'
  | 'day'
  | 'sq ft'
  | 'm2'
  | 'ft'
  | 'm'
  | 'each'
  | 'gal'
  | 'bag'
  | 'sheet'
  | 'roll'
  | 'mi'
  | 'job';

/** Other ways to write a unit; after `per` it stands in the singular, before it in the plural. */
const SPELLINGS: Readonly<Record<RateUnit, readonly string[]>> = {
  yd3: ['yd3', 'cu yd'],
  'cu ft': ['cu ft', 'ft3'],
  m3: ['m3'],
  ton: ['ton', 'tons'],
  lb: ['lb'],
  load: ['load', 'loads'],
  h: ['h'],
  day: ['day', 'days'],
  'sq ft': ['sq ft', 'ft2'],
  m2: ['m2'],
  ft: ['ft'],
  m: ['m'],
  each: ['each'],
  gal: ['gal'],
  bag: ['bag', 'bags'],
  sheet: ['sheet', 'sheets'],
  roll: ['roll', 'rolls'],
  mi: ['mi'],
  job: ['job', 'jobs'],
};

const RATE_UNITS = Object.keys(SPELLINGS) as readonly RateUnit[];

export function rateUnitBySpelling(written: string): RateUnit | undefined {
  const spelling = plainUnit(written);
  return RATE_UNITS.find((unit) => SPELLINGS[unit].includes(spelling));
}

/** The unit beside a number: `12 loads`, `1 load`, `200 sq ft`. */
export function withCount(count: string, unit: RateUnit): string {
  const plural = SPELLINGS[unit].find((spelling) => spelling === `${unit}s`);
  return `${count} ${count === '1' || plural === undefined ? unit : plural}`;
}
