import type { Measure, ProblemTexts, ProblemWords, Thing } from '../problems/index.ts';

/** With its article, as it stands after "is not a key of". */
const THING: Readonly<Record<Thing, string>> = {
  'job-file': 'a job file',
  'company-file': 'a company file',
  'rules-file': 'a rule set',
  job: 'the section "job"',
  client: 'a client',
  acknowledgement: 'an acknowledged finding',
  site: 'the section "site"',
  existing: 'an existing thing',
  rectangle: 'a rectangle',
  access: 'the access',
  emergency: 'the emergency block',
  build: 'the section "build"',
  slab: 'a slab',
  fall: 'a fall',
  reinforcement: 'a reinforcement',
  steps: 'a flight of steps',
  mix: 'a mix',
  plan: 'the section "plan"',
  price: 'the section "price"',
  hidden: 'a hidden condition',
  edit: 'an edit',
  'other-cost': 'an other cost',
  overrides: 'what a job may change of the company',
  company: 'the section "company"',
  labor: 'the section "labor"',
  person: 'a person',
  production: 'the section "production"',
  'production-row': 'a task',
  allowances: 'the section "allowances"',
  machine: 'a machine',
  trailer: 'a trailer',
  box: 'a box',
  'tow-vehicle': 'a tow vehicle',
  forms: 'the section "forms"',
  board: 'a form board',
  place: 'a dump place',
  suppliers: 'the section "suppliers"',
  'concrete-supplier': 'a concrete supplier',
  'bag-supplier': 'a supplier of bags',
  'base-supplier': 'a supplier of base',
  'mesh-supplier': 'a supplier of mesh',
  'bar-supplier': 'a supplier of bars',
  sundries: 'the sundries',
  pricing: 'the section "pricing"',
  payment: 'a payment',
  clause: 'a clause',
  safety: 'the section "safety"',
  rule: 'a rule',
  'rule-change': 'a change to a rule',
  'rule-set': 'a rule set',
};

const MEASURE: Readonly<Record<Measure, string>> = {
  length: 'a length',
  volume: 'a volume',
  weight: 'a weight',
  slope: 'a slope',
  duration: 'a time',
  share: 'a share',
  density: 'a weight for a volume',
  strength: 'a strength',
  coverage: 'an area for a volume',
  money: 'an amount of money',
  rate: 'a price for a unit',
  pace: 'a quantity an hour',
};

const WEEKDAY: Readonly<Record<string, string>> = { saturday: 'Saturday', sunday: 'Sunday' };

/** `a`, `a or b`, `a, b or c`. */
function orList(items: readonly string[]): string {
  const last = items.at(-1);
  if (last === undefined) return '';
  return items.length === 1 ? last : `${items.slice(0, -1).join(', ')} or ${last}`;
}

const write = (forms: readonly string[]) => (forms.length === 0 ? '' : ` Write ${orList(forms)}.`);
const meant = (nearest: string | null, known: readonly string[]) => {
  if (nearest !== null) return ` Did you mean "${nearest}"?`;
  return known.length === 0 ? '' : ` There ${known.length === 1 ? 'is' : 'are'}: ${known.join(', ')}.`;
};
const needsUnit =
  (what: string) =>
  ({ forms }: { readonly forms: readonly string[] }) =>
    `${what} needs its unit.${write(forms)}`;
const percent = (ratio: string) => `${Number((Number(ratio) * 100).toFixed(4))} %`;

const texts: ProblemTexts = {
  'no-folder': () => 'There is no folder of this name.',
  'no-jobs': () => 'This folder holds no jobs. Make a folder for each, with a job.yaml in it.',
  'unknown-job': ({ name, nearest }) => `There is no job "${name}" in this folder.${meant(nearest, [])}`,
  'folder-name': ({ name }) =>
    `"${name}" cannot be the name of a job. Use lower-case words joined by hyphens, such as maple-court.`,
  'no-yaml': () => 'This folder holds no YAML file. Put a job.yaml into it.',
  'other-file': ({ name, nearest, known }) =>
    `Nothing reads a file called "${name}" here.${meant(nearest, known)}`,
  'folder-not-read': ({ name }) =>
    `Nothing reads the YAML files in the folder "${name}". Move them up or away.`,
  'not-a-plain-file': () => 'This is a link or no file. Put the file itself here.',
  'file-too-large': ({ size, most }) => `This file has ${size}; it may have ${most}. It was not read.`,
  'unreadable-file': ({ reason }) =>
    `This cannot be opened (${reason}). Check that it is there and that you may read it.`,
  'not-utf8': () => 'This file is not UTF-8 text. Save it again with the encoding UTF-8.',
  'empty-file': () => 'This file is empty. Write its keys or take the file away.',
  'section-twice': ({ section, where }) => `"${section}" stands here and at ${where}. Keep one of the two.`,
  'section-elsewhere': ({ section, file }) =>
    `"${section}" belongs in ${file} or in job.yaml. Move it there.`,

  'not-yaml': ({ reason }) => `This is not YAML: ${reason}.`,
  'tab-indent': () => 'A line starts with a tab. Indent with spaces.',
  indent: () =>
    'This line is indented differently from the ones it belongs to. Put it below them, with spaces.',
  'colon-in-text': () => 'A colon with a space behind it starts a new key. Put the whole text in quotes.',
  'colon-without-space': ({ text }) => `"${text}" has no space behind its colon. Put one there.`,
  'text-after-quote': () =>
    'Text goes on behind the closing quote. Leave the quotes off: 6" and 14\' 6" need none.',
  'quote-not-closed': () => 'The quote that starts here has no end. Close it, or leave it off.',
  'bracket-not-closed': () => 'The bracket that opens here is not closed. Close it.',
  'first-character': ({ character }) =>
    `A text cannot start with ${character}. Put the whole text in quotes.`,
  'more-than-one-document': () =>
    'A line of three hyphens starts a second document, which nothing reads. Take it away.',
  'duplicate-key': ({ key, line }) => `"${key}" stands here and in line ${line}. Keep one of the two.`,
  'tag-refused': ({ tag }) => `The tag ${tag} is not taken. Write the value without it.`,
  'merge-key-refused': () => 'The key << is not taken. Write the keys out.',
  'unknown-anchor': ({ name }) => `Nothing above is marked &${name}. Write the value out.`,
  'too-many-values': ({ most }) =>
    `This file has more than ${most} values, counting repeated ones. The rest was not read.`,
  'too-deep': ({ most }) =>
    `Keys and lists stand inside one another more than ${most} deep. Write them flatter.`,
  'key-not-text': () => 'A key must be a word. Write it without brackets.',
  'cut-off-by-hash': ({ kept }) =>
    kept === ''
      ? 'A # with a space before it starts a comment, so nothing is read here. Put the value in quotes, or a space behind the #.'
      : `A # with a space before it starts a comment, so only "${kept}" is read here. Put the value in quotes, or a space behind the #.`,
  'number-split-by-comma': ({ number }) =>
    `Between brackets a comma starts the next value, so "${number}" is read as two. Write ${number.replaceAll(',', '')}.`,
  'text-split-by-comma': ({ text }) =>
    `Between brackets a comma starts the next key, so "${text}" is a key without a value. Put the whole text in quotes.`,
  'empty-value': ({ key }) => `Nothing stands behind "${key}". Write its value or take the key away.`,

  'unknown-key': ({ key, thing, nearest, known }) =>
    `"${key}" is not a key of ${THING[thing]}.${meant(nearest, known)}`,
  'missing-key': ({ key, thing, example }) =>
    `"${key}" is missing in ${THING[thing]}.${example === null ? '' : ` Write ${key}: ${example}`}`,
  'missing-section': ({ section, file }) =>
    `The section "${section}" is missing. Write it${file === null ? ' into a file of this folder' : ` into job.yaml or ${file}`}.`,
  'bad-id': ({ id }) =>
    `"${id}" cannot be an id. Use lower-case words joined by hyphens, such as front-walk.`,
  'not-a-corner-number': ({ key }) =>
    `"${key}" is not the number of a corner or an edge. They are counted from 1.`,
  'keys-expected': ({ known }) =>
    `Keys are expected here${known.length === 0 ? '' : `: ${known.join(', ')}`}.`,
  'list-expected': () =>
    'A list is expected here. Write [one, two], or one line each with a hyphen in front.',
  'one-value-expected': ({ forms }) =>
    `One value is expected here${forms.length === 0 ? '' : `, such as ${orList(forms.slice(0, 3))}`}.`,
  'list-length': ({ count, wanted }) =>
    `This list has ${count === '1' ? '1 value' : `${count} values`}; ${wanted} are expected.`,

  'length-without-unit': needsUnit('A length'),
  'volume-without-unit': needsUnit('A volume'),
  'weight-without-unit': needsUnit('A weight'),
  'slope-without-unit': needsUnit('A slope'),
  'duration-without-unit': needsUnit('A time'),
  'share-without-unit': needsUnit('A share'),
  'density-without-unit': needsUnit('A weight for a volume'),
  'strength-without-unit': needsUnit('A strength'),
  'coverage-without-unit': needsUnit('An area for a volume'),
  'money-without-unit': ({ forms }) => `An amount of money needs its dollar sign.${write(forms)}`,
  'rate-without-unit': ({ forms }) => `A price needs its dollar sign and what it is for.${write(forms)}`,
  'pace-without-unit': ({ forms }) => `A pace needs its unit and the hour.${write(forms)}`,
  'unknown-unit': ({ value, measure, forms }) =>
    `"${value}" has a unit that is not known for ${MEASURE[measure]}.${write(forms)}`,
  'wrong-kind': ({ value, measure, forms }) =>
    `"${value}" is not ${MEASURE[measure]} that works here.${write(forms)}`,
  'not-a-number': ({ value, forms }) => `"${value}" cannot be read as a value.${write(forms)}`,
  'not-dollars': ({ value, forms }) => `"${value}" is not in US dollars.${write(forms)}`,
  'not-a-date': ({ value, forms }) => `"${value}" is not a date of the calendar, year first.${write(forms)}`,
  'not-yes-no': ({ value }) => `"${value}" is neither yes nor no. Write yes or no.`,
  'not-a-count': ({ value, forms }) => `"${value}" is not a whole number.${write(forms)}`,
  'not-whole-days': ({ value, forms }) => `"${value}" is not a number of whole days.${write(forms)}`,
  'stray-quote': ({ value, forms }) => `A quote stands in the wrong place in ${value}.${write(forms)}`,
  'not-above-zero': ({ value }) => `${value} is too small; it must be above 0.`,
  'too-small': ({ value, least }) => `${value} is too small; the least here is ${least}.`,
  'too-large': ({ value, most }) => `${value} is too large; the most here is ${most}.`,
  'not-a-choice': ({ value, choices, nearest }) =>
    nearest === null
      ? `"${value}" does not work here.${write(choices)}`
      : `"${value}" does not work here. Did you mean "${nearest}"?`,
  'character-not-in-font': ({ character, code }) =>
    `The documents cannot print the character ${character} (${code}). Write it in other letters.`,
  'control-character': ({ code }) => `An invisible character (${code}) stands in this text. Take it out.`,
  'text-too-long': ({ count, most }) =>
    `This text has ${count} characters; there is room for ${most}. Shorten it.`,

  'unknown-id': ({ id, thing, nearest, known }) =>
    `There is no ${THING[thing].replace(/^(?:an?|the) /, '')} "${id}".${meant(nearest, known)}`,
  'named-twice': ({ id }) => `"${id}" stands twice in this list. Take one out.`,
  'no-slab': () => 'This job has no slab to build. Add at least one below "slabs".',
  'nobody-named': () => 'This list is empty. Name at least one.',
  'no-outline': ({ thing }) =>
    `The outline of ${THING[thing]} is missing. Give a rectangle with length and width, or its corners.`,
  'two-outlines': ({ thing }) =>
    `The outline of ${THING[thing]} is given twice. Keep the rectangle or the corners.`,
  'too-few-corners': ({ count }) => `An outline needs at least 3 corners; this one has ${count}.`,
  'no-such-corner': ({ corner, count }) => `There is no corner ${corner}; this outline has ${count}.`,
  'no-such-edge': ({ edge, count }) => `There is no edge ${edge}; this outline has ${count}.`,
  'reinforcement-unclear': () =>
    'A reinforcement is either mesh or bars. Write { mesh: 6x6-w1.4 } or { bars: 4, spacing: 18 in }, or leave it away for none.',
  'bars-without-spacing': () => 'Bars need their spacing. Write { bars: 4, spacing: 18 in }.',
  'spacing-without-bars': () =>
    'A spacing goes with bars only. Take it away, or write { bars: 4, spacing: 18 in }.',
  'edit-unclear': ({ known }) => `An edit says one thing that changes: ${orList(known)}.`,
  'edit-lacks': ({ edit, key, example }) => `"${edit}" needs "${key}". Write ${key}: ${example}`,
  'edit-extra': ({ edit, key }) => `"${key}" does not go with "${edit}". Take it away.`,
  'rule-twice': ({ code, where }) =>
    `The rule "${code}" stands in this rule set and in "${where}". Choose one of the two.`,
  'limit-kind': ({ value, forms }) => `"${value}" cannot be the limit of this rule.${write(forms)}`,

  'outline-crosses-itself': ({ first, second }) =>
    `Edge ${first} and edge ${second} of this outline cross. Check the order of the corners and their distances.`,
  'outline-without-area': () => 'This outline has no area. Check its corners.',
  'corner-does-not-fit': ({ corner, wanted, available }) =>
    `The rounding of corner ${corner} starts ${wanted} from it, but its edges leave ${available}. Make it smaller.`,
  'truck-below-increment': ({ truck, increment }) =>
    `A truck of ${truck} yd3 cannot bring an order that goes up by ${increment} yd3. Change one of the two.`,
  'starts-on-weekend': ({ on, weekday }) =>
    `The work starts on a ${WEEKDAY[weekday] ?? weekday} (${on}). Choose a day from Monday to Friday.`,
  'wage-not-per-hour': ({ unit }) =>
    `This wage is for a ${unit}. Write what an hour costs, such as $28 per h.`,
  'pace-unit': ({ task, unit, wanted }) =>
    `"${task}" is counted in ${wanted}, and this pace is in ${unit}. Write it in ${wanted} per h.`,
  'rate-unit': ({ unit, wanted }) =>
    `This price is for ${unit}, and what is bought is counted in ${wanted}. Write it for that.`,
  'acknowledgement-without-finding': ({ finding, where }) =>
    `There is no finding "${finding}" at "${where}" any more. Take the acknowledgement away, or correct what it names.`,
  'mesh-lap-too-long': ({ lap, sheet }) => `A lap of ${lap} uses up the sheet of ${sheet}. Make it shorter.`,
  'bar-lap-too-long': ({ lap, stock }) =>
    `A lap of ${lap} uses up the bar of ${stock}. Make it shorter, or buy longer bars.`,
  'no-payload': ({ trailer, allowsLb, emptyLb, reserveLb }) =>
    `The trailer "${trailer}" can carry nothing: ${allowsLb} lb are allowed, it weighs ${emptyLb} lb empty, and ${reserveLb} lb are kept free. Check its ratings and its weight.`,
  'no-trailer': () => 'Something has to be hauled, and no trailer comes to this job. Name at least one.',
  'no-place-for-stream': ({ stream }) =>
    `No place takes "${stream}". Add it below "accepts" of a place that does.`,
  'overhead-and-margin-take-all': ({ overhead, margin }) =>
    `Overhead (${percent(overhead)}) and margin (${percent(margin)}) are shares of the price; together they must stay below 100 %.`,
  'payments-not-whole': ({ sum }) => `The payments add up to ${sum} %. Make them 100 %.`,
};

export const problemsEn: ProblemWords = {
  texts,
  closing: ({ problemCount, fileCount }) =>
    `${problemCount} ${problemCount === 1 ? 'problem' : 'problems'} in ${fileCount} ${fileCount === 1 ? 'file' : 'files'}. ` +
    'Nothing was written; the documents of the last build are unchanged.',
};
