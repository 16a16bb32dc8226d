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
  walls: 'the walls of a hollow thing',
  footing: 'the footing of a hollow thing',
  fill: 'the fill of a hollow thing',
  rectangle: 'a rectangle',
  trapezoid: 'a trapezoid',
  circle: 'a circle',
  sector: 'a sector',
  side: 'a side',
  'four-sides': 'a shape of four sides',
  triangles: 'a shape of triangles',
  'triangle-corner': 'a corner by its distances',
  strip: 'a strip',
  'strip-piece': 'a piece of a line',
  chord: 'a rounding by its chord',
  'two-arcs': 'a rounding by two arcs',
  bend: 'a bent edge',
  'cut-out': 'a cut-out',
  'added-piece': 'an added piece',
  taped: 'how it was taped',
  posts: 'a row of posts',
  'post-footing': 'the footing of a post',
  'old-steps': 'a flight of steps that goes',
  flight: 'a flight of steps that stays',
  'flight-foot': 'the foot of a flight',
  topping: 'a topping',
  green: 'something green that goes',
  chip: 'a coating that is chipped off',
  'photo-point': 'a photo point',
  access: 'the access',
  emergency: 'the emergency block',
  build: 'the section "build"',
  slab: 'a slab',
  fall: 'a fall',
  'thickened-edge': 'a thickened edge',
  reinforcement: 'a reinforcement',
  'edge-joint': 'a joint along an edge',
  steps: 'a flight of steps',
  mix: 'a mix',
  heights: 'the section "heights"',
  'level-note': 'a level note',
  'wall-part': 'a part of a wall',
  profile: 'a profile',
  'beyond-point': 'a point beyond the slab',
  'garage-floor': 'a garage floor',
  'kept-dry': 'a line kept dry',
  'public-walk': 'a public walk',
  'public-walk-end': 'an end of a public walk',
  drain: 'a drain',
  'drain-pipe': 'the pipe of a drain',
  lid: 'a lid',
  'under-slab': 'a pipe under a slab',
  'level-point': 'a level point',
  plan: 'the section "plan"',
  pour: 'the section "pour"',
  'noise-hours': 'the hours of noise',
  weather: 'the weather',
  'weather-time': 'a time of the weather',
  price: 'the section "price"',
  hidden: 'a hidden condition',
  edit: 'an edit',
  'other-cost': 'an other cost',
  overrides: 'what a job may change of the company',
  company: 'the section "company"',
  labor: 'the section "labor"',
  person: 'a person',
  production: 'the section "production"',
  placing: 'the ways to place concrete',
  chute: 'a chute',
  'additive-prices': 'the prices of additives',
  carrier: 'a wheelbarrow or buggy',
  pump: 'a pump',
  'production-row': 'a task',
  allowances: 'the section "allowances"',
  machine: 'a machine',
  'tied-down': 'the key "tied-down" of a machine',
  trailer: 'a trailer',
  box: 'a box',
  'tow-vehicle': 'a tow vehicle',
  forms: 'the section "forms"',
  board: 'a form board',
  'form-strip': 'a form strip',
  place: 'a dump place',
  'largest-piece': 'a largest piece',
  'opening-hours': 'the opening hours',
  suppliers: 'the section "suppliers"',
  'concrete-supplier': 'a concrete supplier',
  'bag-supplier': 'a supplier of bags',
  yard: 'the yard',
  'base-sold': 'base that a place sells',
  'base-supplier': 'a supplier of base',
  'geotextile-supplier': 'a supplier of fabric',
  'joint-line': 'a joint',
  joints: 'the joints of a slab',
  sealant: 'the sealant',
  'mesh-supplier': 'a supplier of mesh',
  'bar-supplier': 'a supplier of bars',
  'bar-ties': 'ties for bars',
  'glass-fibre-supplier': 'a supplier of glass fibre bars',
  'dowel-supplier': 'a supplier of dowels',
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
  area: 'an area',
  volume: 'a volume',
  weight: 'a weight',
  slope: 'a slope',
  duration: 'a time',
  share: 'a share',
  density: 'a weight for a volume',
  strength: 'a strength',
  coverage: 'an area for a volume',
  temperature: 'a temperature',
  speed: 'a speed',
  angle: 'an angle',
  turn: 'a turn',
  'time-of-day': 'a time of day',
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

/** How a strip says what other outlines say by numbers. */
const INSTEAD_IN_STRIP: Readonly<Record<string, string>> = {
  rounded: 'Its line rounds a corner: { turn: left, rounded: parallel, back: 3 ft }.',
  'rounded-to-radius': 'Its line has the arc itself: { arc: 90 deg left, radius: 4 ft }.',
  'rounded-by-chord': 'Its line has the arc itself: { arc: 90 deg left, radius: 4 ft }.',
  'rounded-by-two-arcs': 'Its line has both arcs, one piece each: { arc: 30 deg left, radius: 8 ft }.',
  bent: 'Its line has the arc itself: { arc: 20 deg left, radius: 20 ft }.',
  edges: 'Say in it what stands at its start, its end, its left and its right.',
};
/** Which measurement would explain a miss, if only one of them is wrong. */
const culpritText = (culprit: string, wouldBe: string) => {
  if (culprit === '') return '';
  const diagonals: Readonly<Record<string, string>> = {
    diagonal: 'the first diagonal',
    'other-diagonal': 'the other diagonal itself',
  };
  const what = Object.hasOwn(diagonals, culprit) ? diagonals[culprit] : `edge ${culprit}`;
  return ` If only one of them is wrong, it may be ${what}, which would be ${wouldBe}.`;
};

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
  'area-without-unit': needsUnit('An area'),
  'volume-without-unit': needsUnit('A volume'),
  'weight-without-unit': needsUnit('A weight'),
  'slope-without-unit': needsUnit('A slope'),
  'duration-without-unit': needsUnit('A time'),
  'share-without-unit': needsUnit('A share'),
  'density-without-unit': needsUnit('A weight for a volume'),
  'strength-without-unit': needsUnit('A strength'),
  'coverage-without-unit': needsUnit('An area for a volume'),
  'temperature-without-unit': needsUnit('A temperature'),
  'speed-without-unit': needsUnit('A speed'),
  'angle-without-unit': needsUnit('An angle'),
  'turn-without-unit': ({ forms }) => `A turn needs its degrees and its side.${write(forms)}`,
  'time-of-day-without-unit': ({ forms }) => `A time of day needs its minutes, or am or pm.${write(forms)}`,
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
  'not-a-time-of-day': ({ value, forms }) => `"${value}" is not a time of day.${write(forms)}`,
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
  'no-outline': ({ thing, known }) =>
    `The outline of ${THING[thing]} is missing. Write rectangle: { length: 20 ft, width: 4 ft }, or one of ${orList(known.filter((base) => base !== 'rectangle'))}.`,
  'two-outlines': ({ thing, first, second }) =>
    `The outline of ${THING[thing]} is given twice. Keep "${first}" or "${second}".`,
  'too-few-corners': ({ count }) => `An outline needs at least 3 corners; this one has ${count}.`,
  'too-few-sides': ({ count }) => `An outline needs at least 3 sides; this one has ${count}.`,
  'first-side-turns': () =>
    'The first side runs along, without a turn. Take the turn away, or turn the whole shape with "turned".',
  'side-without-turn': ({ side }) =>
    `Side ${side} needs its turn from the side before. Write turn: left, turn: 45 deg right or turn: straight.`,
  'corner-not-fixed': ({ corner, named, known }) =>
    `Corner ${corner} cannot be measured from corner ${named}, which does not stand before it. Write ${orList(known)}.`,
  'corner-named-twice': ({ named }) =>
    `A corner is measured from two different corners, and here both are corner ${named}. Change one of them.`,
  'line-empty': () => 'The line of a strip needs a piece. Write one, such as { straight: 12 ft }.',
  'piece-unclear': ({ piece, known }) =>
    `Piece ${piece} of the line must be one thing: ${orList(known)}. Write each as a piece of its own.`,
  'piece-lacks': ({ piece, key, example }) =>
    `"${key}" is missing beside "${piece}". Write ${key}: ${example}`,
  'piece-extra': ({ piece, key }) => `"${key}" does not go with "${piece}". Take it away.`,
  'turn-not-between-straights': ({ piece }) =>
    `Piece ${piece} turns at once, and a turn stands between two straight pieces. Put one before it and one behind it, such as { straight: 1 ft }.`,
  'not-with-strip': ({ key }) =>
    `"${key}" does not go with a strip. ${INSTEAD_IN_STRIP[key] ?? 'Take it away.'}`,
  'no-such-corner': ({ corner, count }) =>
    `There is no corner ${corner}; this outline has ${count === '0' ? 'none' : count}.`,
  'no-such-edge': ({ edge, count }) => `There is no edge ${edge}; this outline has ${count}.`,
  'corner-rounded-twice': ({ corner, first, second }) =>
    `Corner ${corner} is rounded twice. Keep it in "${first}" or in "${second}".`,
  'corner-beside-arc': ({ corner, edge }) =>
    `Corner ${corner} cannot be rounded, since edge ${edge} beside it is an arc. Round corners between straight edges only.`,
  'edge-is-arc': ({ edge }) => `Edge ${edge} is an arc already. Only a straight edge can be bent.`,
  'bend-unclear': ({ known }) =>
    `A bent edge says one of ${orList(known)}. Write { rise: 1 ft, bends: out }, { radius: 20 ft, bends: out } or { through: [12 ft, 21 ft] }.`,
  'bend-without-side': ({ key }) =>
    `"${key}" does not say to which side the edge bends. Write bends: out or bends: in`,
  'bend-with-side': () => 'The point says already to which side the edge bends. Take "bends" away.',
  'no-pace-for-method': ({ method, row, example }) =>
    `The company has no pace for "${method}". Write one below production, such as ${row}: ${example}, or write break-out: breaker.`,
  'no-pace-for-chip': () =>
    'The company has no pace for chipping. Write one below production, such as chip: { pace: 8 sq ft per h, people: 1 }.',
  'no-sealant': () =>
    'The company names no sealant. Write it below suppliers and sundries, such as sealant: { fills: 24 ft, price: $9.50 }.',
  'joint-line-outside': () =>
    'This joint cuts nothing: it lies outside the slab, along its edge, or on another joint. Places are on this shape, from its corner 1.',
  'no-geotextile-supplier': () =>
    'The company names nobody who sells the fabric. Write it below suppliers, such as geotextile: { label: Builders yard, phone: 555-0100, roll-width: 12 ft 6 in, roll-length: 100 ft, lap: 12 in, price: $140 per roll }.',
  'too-many-drivers': ({ drivers, list, count }) =>
    list === 'crew'
      ? `${drivers} drivers, but the crew is ${count}: each driver is one of the crew. Name more people or fewer drivers.`
      : `${drivers} drivers, but trailers that come: ${count}. Each driver pulls one of his own; name more trailers or fewer drivers.`,
  'machine-on-no-trailer': ({ machine, weight, length: long, trailers }) =>
    `No trailer that comes carries ${machine}, ${weight} and ${long} long. They carry at most, with boxes so long: ${trailers}. Bring another trailer, or take yard away where the machine comes another way.`,
  'haul-not-in-time': ({ haulBy, days, trips, lastOn, perDay }) =>
    `Not all is hauled by ${haulBy}: of the quickest plan, ${trips} trips, the last one is driven on ${lastOn}. Working days until then: ${days}. Trips that a day has room for, by opening hours and loading: ${perDay}. Give it more days, or another driver with a trailer.`,
  'haul-by-before-start': ({ startsOn }) =>
    `Hauling would end before the work starts (${startsOn}). Change one of the two.`,
  'lift-without-machine': () =>
    'Sawn pieces are as large as a machine lifts. Name the machine, such as machine: loader',
  'machine-without-lift': ({ machine }) =>
    `Sawn pieces are as large as this machine lifts. Write what that is with "${machine}", such as lifts: 900 lb`,
  'earth-without-height': () =>
    'Nobody said how high the earth beside it will be. Write ground: and a height such as 101.00 ft or -1 in.',
  'ground-beside-slab': () =>
    'The surface of the slab beside it says how high it is there. Take "ground" away, or write beside: earth.',
  'public-point-not-fixed': ({ kind }) =>
    `A public walk is nothing we move, and this point is kind: ${kind}. Write kind: fixed with the point, at the height it has now.`,
  'slab-down-from-existing': () =>
    'A new slab comes down from something fixed or from a finish height, not from what is there now. Name such a point.',
  'floor-not-fixed': ({ kind }) =>
    `A garage floor is nothing we move, and this point is kind: ${kind}. Write kind: fixed with the point, at the height it has.`,
  'floor-of-two': ({ id }) =>
    `"${id}" lies on another garage floor too, and the slab stays below it only once. Take it out of one of them.`,
  'bend-at-existing': () =>
    'A new surface bends between fixed points and finish heights, not at what is there now. Name such a point.',
  'same-point-twice': ({ id }) =>
    `"${id}" stands here for two places, and they have to lie apart. Name another point.`,
  'panel-price-without-share': () =>
    'Nobody said what part of it the homeowner pays. Write owner-share: 50 %, or 0 % where the authority pays all of it.',
  'owner-share-without-price': () =>
    'A share goes with what the panel costs. Write panel-price: $1,850, or take the share away.',
  'steps-lack-end': ({ key }) => `Steps between two heights need both ends. Write ${key}: the id of a point.`,
  'riser-from-heights': () => 'The two heights give the riser. Take it away, or take "from" and "to" away.',
  'reinforcement-unclear': () =>
    'A reinforcement is either mesh or bars. Write { mesh: 6x6-w1.4 } or { bars: 4, spacing: 18 in }, or leave it away for none.',
  'bars-without-spacing': () => 'Bars need their spacing. Write { bars: 4, spacing: 18 in }.',
  'spacing-without-bars': () =>
    'A spacing goes with bars only. Take it away, or write { bars: 4, spacing: 18 in }.',
  'only-with-bars': ({ key }) => `"${key}" goes with bars only, and this is mesh. Take it away.`,
  'only-with-mesh': ({ key }) => `"${key}" goes with mesh only, and these are bars. Take it away.`,
  'no-glass-fibre-supplier': () =>
    'The company names nobody who sells bars of glass fibre. Write it below suppliers, such as glass-fibre-bars: { label: Composite supply, phone: 555-0100, stock: 20 ft, lap: 40, price: $0.62 per ft, bent-price: $9.50, bent-notice: 15 days }.',
  'tied-across-isolated': ({ edge, stands }) =>
    `Edge ${edge} is isolated, since it lies at ${stands === 'house' ? 'the house' : 'concrete that stays'}: bars across it would tear one of the two. Write how: isolated, or say what they go into, such as into: ${stands}.`,
  'public-without-detail': () =>
    'Nothing is joined to public concrete but by the detail of the authority. Write detail: and what it is called, or how: isolated.',
  'no-dowel-supplier': () =>
    'The company names nobody who sells dowels and tie bars. Write it below suppliers, such as dowels: { label: Steel yard, phone: 555-0100, dowel-price: $3.10, tie-price: $2.20, holes-per-cartridge: 10, cartridge-price: $32 }.',
  'no-pace-for-drill': () =>
    'The company has no pace for drilling. Write one below production, such as drill: { pace: 10 each per h, people: 1 }.',
  'tendons-not-ruled-out': ({ into }) =>
    `Drilling into a ${into} slab can cut a tendon, which kills. Find out first, then write post-tensioned: no and known-by: how it is known.`,
  'drill-into-tendons': () => 'Nothing is drilled into concrete that is post-tensioned. Write how: isolated.',
  'tendons-known-by': () =>
    'Say how it is known that there are no tendons. Write known-by: and the drawing, the scan or who said so.',
  'no-mesh-rolls': () =>
    'The company names no rolls of mesh. Write roll-length, roll-width and roll-price below suppliers, mesh; or take "from" away for sheets.',
  'thickness-or-walls': () =>
    'What goes has a thickness, or walls where it is hollow. Write thickness: 4 in, or walls: { thickness: 8 in, height: 2 ft }.',
  'thickness-and-walls': () => 'What goes has either a thickness or walls. Take one of the two away.',
  'only-with-thickness': ({ key }) => `"${key}" goes with a thickness, and this has walls. Take it away.`,
  'only-with-walls': ({ key }) =>
    `"${key}" goes with walls: { thickness: 8 in, height: 2 ft }. Take it away, or write the walls.`,
  'walls-of-asphalt': () => 'Walls are of concrete, brick or block.',
  'walls-not-sawn': () => 'Walls are broken out. Write breaker or jackhammer.',
  'edit-of-walls': ({ edit, id }) =>
    `"${edit}" is about a slab, and "${id}" has walls. Choose another thing.`,
  'thickest-of-measured': () =>
    'A thickness that was measured has no range. Take "thickest" away, or write thickness-is: assumed.',
  'coating-not-on-concrete': ({ material }) =>
    `A coating is said of concrete only; ${material} goes the same way with or without one. Take it away.`,
  'coating-without-thickness': ({ coating }) =>
    `The weight of ${coating} counts. Write how thick it is: coating-thickness: 1 1/2 in`,
  'coating-thickness-without-layer': () =>
    'Only a coating of tile or an overlay has a thickness that counts. Take it away, or write coating: overlay.',
  'edit-unclear': ({ known }) => `An edit says one thing that changes: ${orList(known)}.`,
  'edit-lacks': ({ edit, key, example }) => `"${edit}" needs "${key}". Write ${key}: ${example}`,
  'edit-extra': ({ edit, key }) => `"${key}" does not go with "${edit}". Take it away.`,
  'height-missing': () =>
    'Nobody said how high this is. Write its height, such as 100.25 ft or -3/4 in, or a foresight on it in the notes.',
  'height-twice': ({ station, where }) =>
    `"${station}" has a height already (${where}). Take one of the two away.`,
  'note-unclear': ({ known }) =>
    `A level note says one thing: ${orList(known)}. Write each reading as a note of its own.`,
  'notes-without-start': ({ station }) =>
    `No height is known to start from. Write that of "${station}" before its backsight, such as { on: ${station}, height: 100.00 ft }.`,
  'backsight-on-unknown': ({ station, last, known }) =>
    `"${station}" has no height when the instrument is set up by it: nothing was sighted on it before.${last === '' ? '' : ` The last foresight before is on "${last}".`} Write a foresight on it from the set-up before, or sight back on ${orList(known)}.`,
  'foresight-before-backsight': () =>
    'This foresight stands before any backsight, so the height of the instrument is not known. Write a backsight on a known height first.',
  'finish-sighted': ({ station }) =>
    `"${station}" is a finish height, chosen and not there yet, so no rod can stand on it. Write kind: existing, or name the place otherwise.`,
  'closing-error-without-notes': () =>
    'Only level notes have a closing error. Take it away, or write the notes.',
  'heights-mixed': ({ signed, plain, first }) =>
    `${signed} has a sign, so it counts from a datum called 0, and ${plain} has none, so its datum has a height (the first of the two: ${first}). Write a sign before all heights of this job or before none.`,
  'stood-on-missing': () =>
    'What is there now may go. Write what the rod stood on: stood-on: stays, stood-on: dirt, or the id of an existing thing.',
  'stood-on-of-finish': () =>
    'A finish height is chosen, and no rod stood on it. Take "stood-on" away, or write kind: existing.',
  'stood-on-walls': ({ id }) =>
    `"${id}" has walls, and a level point lies on something flat. Name another thing, or write stays.`,
  'fixed-on-dirt': () => 'Dirt is not fixed. Write kind: existing, or what the rod stood on.',
  'fixed-on-what-goes': ({ id }) =>
    `"${id}" goes, so its top is no fixed height. If the rod stood on a layer that goes from something that stays, write with "${id}" what the layer is and its coating-thickness; else write kind: existing.`,
  'surcharge-not-accepted': ({ stream, nearest, known }) =>
    `The place does not take "${stream}", so it cannot cost more there.${meant(nearest, known)}`,
  'base-not-sold': () =>
    'No base is sold here, so no load goes back with base. Take the fee away, or write sells-base: yes',
  'closes-before-opening': ({ from, to }) =>
    `The place opens at ${from} and closes at ${to}. Write a closing time after it, such as 16:30.`,
  'last-load-outside-hours': ({ lastLoad, from, to }) =>
    `The last load is taken at ${lastLoad}, and the place is open from ${from} to ${to}. Write a time after ${from}, ${to} at the latest.`,
  'sheeting-without-price': ({ method }) =>
    `This job is cured with "${method}", and no supplier has a price for it. Add sheeting-price: $0.09 per sq ft to the sundries of the suppliers.`,
  'time-not-after': ({ from, to }) =>
    `${to} is not later than ${from}, which stands before it. Change one of the two.`,
  'rule-twice': ({ code, where }) =>
    `The rule "${code}" stands in this rule set and in "${where}". Choose one of the two.`,
  'limit-kind': ({ value, forms }) => `"${value}" cannot be the limit of this rule.${write(forms)}`,

  'outline-crosses-itself': ({ first, second }) =>
    `Edge ${first} and edge ${second} of this outline cross. Check the order of the corners and their distances.`,
  'outline-without-area': () => 'This outline has no area. Check its corners.',
  'corner-does-not-fit': ({ corner, wanted, available, mostRadius }) =>
    `The rounding of corner ${corner} starts ${wanted} from it, but its edges leave ${available}. Make it smaller: the largest radius that fits is ${mostRadius}.`,
  'corner-runs-straight-on': ({ corner }) =>
    `Corner ${corner} cannot be rounded, since its edges run straight on or fold back. Take its rounding away, or check the corners beside it.`,
  'first-turn-too-large': ({ corner, turn, most }) =>
    `The first arc of corner ${corner} turns ${turn} of its ${most}, which leaves nothing to the second. Write less than ${most}.`,
  'sides-do-not-close': ({ error, direction, share, allowed }) =>
    `The walk along these sides ends ${error} from where it began (${share} % of its length), in the direction of ${direction} degrees from the first side to the left; ${allowed} is allowed. Tape the sides that run that way again, and check the turns.`,
  'four-sides-impossible': ({ edge, least, most }) =>
    `Edge ${edge} cannot meet its neighbours with this diagonal. With the others as they are it is between ${least} and ${most}.`,
  'diagonals-disagree': ({ miss, computed, culprit, wouldBe }) =>
    `The other diagonal misses by ${miss}: by the sides and the first diagonal it is ${computed}.${culpritText(culprit, wouldBe)} Tape them again.`,
  'triangle-impossible': ({ corner, first, second, least, most }) =>
    `Corner ${corner} cannot lie so far from corners ${first} and ${second}. With the other distance as it is, this one is between ${least} and ${most}.`,
  'strip-too-tight': ({ piece, radius, least }) =>
    `The arc of piece ${piece} is too tight for the width of the strip: its radius is ${radius}, and it must be more than ${least}.`,
  'strip-setback-too-long': ({ piece, back, most }) =>
    `The curve of piece ${piece} starts ${back} back, and the straight pieces beside it leave ${most}. Write at most ${most}.`,
  'strip-straight-too-short': ({ piece, length, least }) =>
    `Piece ${piece} is ${length} long, which is too short for the corners of the turns beside it. It must be more than ${least}.`,
  'strip-width-on-arc': ({ piece }) =>
    `The width of a strip changes along its straight pieces, and from piece ${piece} on there is none. Take "end-width" away, or add a straight piece.`,
  'radius-too-small': ({ edge, radius, least }) =>
    `Edge ${edge} is too long to bend with a radius of ${radius}. The least that spans it is ${least}.`,
  'bend-point-on-edge': ({ edge }) =>
    `This point lies in line with edge ${edge}, so that no curve goes through it. Measure it off to one side, or leave the edge straight.`,
  'cut-out-outside': ({ cutOut, by }) =>
    `The cut-out "${cutOut}" reaches ${by} out of its outline. Move it in by at least that, or make it smaller.`,
  'cut-outs-overlap': ({ first, second }) =>
    `The cut-outs "${first}" and "${second}" lie on one another. Move one of them, or make them one.`,
  'added-does-not-touch': ({ piece, miss, allowed }) =>
    miss === ''
      ? `No edge of the added piece "${piece}" lies along a straight edge of the outline. Check where it stands and how it is turned.`
      : `The added piece "${piece}" misses its outline by ${miss}; ${allowed} is closed up. Move it by that much.`,
  'levels-do-not-close': ({ station, read, other, miss, allowed }) =>
    `By these notes "${station}" is at ${read}, and its height is ${other}. They miss it by ${miss}; ${allowed} is allowed. Look for a reading that is a foot or a tenth off, or level again.`,
  'sights-disagree': ({ station, read, other, miss, allowed }) =>
    `This sight puts "${station}" at ${read}, and one before it at ${other}: ${miss} apart, and ${allowed} is allowed. Look for a reading that is a foot or a tenth off, or level again.`,
  'finish-outside-slabs': ({ slab, by }) =>
    `This point of a new surface lies on no slab; "${slab}" is nearest, ${by} away. Check where it is, or write kind: existing or fixed.`,
  'heights-disagree': ({ first, second, by }) =>
    `"${first}" and "${second}" are at one place, and their heights are ${by} apart. Level one of them again, or move it to where it was read.`,
  'surface-short-of-points': ({ slab, known }) =>
    `The new surface of "${slab}" has ${known}, and it takes three points that are not in a line. Write the height of another place on it, kind: finish.`,
  'slabs-overlap': ({ first, second, area }) =>
    `"${first}" and "${second}" lie on one another by ${area} sq ft. Move one of them, or take that part out of it.`,
  'slabs-miss': ({ first, second, miss, allowed }) =>
    `"${first}" and "${second}" miss each other by ${miss} at their joint; ${allowed} is closed up. Check where they stand and their sizes, or call the edge formed.`,
  'walls-do-not-fit': ({ thickness }) =>
    `Walls of ${thickness} meet inside. They have to be thinner than half of where the thing is narrowest.`,
  'walls-on-bent-outline': () =>
    'The walls follow an arc that meets its neighbour at an angle. Write an outline of straight edges, a circle, or corners that are rounded.',
  'footing-does-not-fit': ({ width }) =>
    `A footing of ${width} under the middle of the walls meets itself inside. Write how wide it is there, or build the thing of its parts.`,
  'wall-without-surface': ({ slab }) =>
    `How high "${slab}" is there is not known: its surface takes three points of the heights on it, not in a line.`,
  'wall-off-slab': ({ slab, by }) =>
    `It stands ${by} away from "${slab}", so that slab is not beside it. Check where it is, or name another slab.`,
  'profile-off-slabs': () =>
    'This line crosses no slab whose surface is known from the heights. Run it across one, not along its edge, or give that slab three points of the heights, not in a line.',
  'tie-in-off-slab': ({ slab, by }) =>
    `This point lies ${by} off "${slab}", so the slab does not meet it. Check where it is, or name another slab.`,
  'fall-against-heights': ({ first, second, run, stated, drop, by, slope }) =>
    `From "${first}" to "${second}" this fall would go down ${stated} in ${run}, and their heights go down ${drop}: ${by} apart, and both are fixed. Write slope: ${slope} if they are right, level them once more, or call one of them finish.`,
  'fall-against-climb': ({ first, second, run, stated, rise, by }) =>
    `From "${first}" to "${second}" this fall would go down ${stated} in ${run}, and their heights go up ${rise}: ${by} apart, and both are fixed. Turn its direction, level them once more, or call one of them finish.`,
  'bends-cross': ({ first, second }) =>
    `Line ${first} and line ${second} of bends-along cross, and nothing says how high the surface is there. Give it a finish height where they cross, and lead both lines through it.`,
  'lid-off-slabs': ({ slab, by }) =>
    `This lid lies in no new slab; "${slab}" is nearest, ${by} away. Check where it is.`,
  'lid-without-surface': ({ slab }) =>
    `How high "${slab}" will be there is not known: its surface takes three points of the heights on it, not in a line.`,
  'pipe-under-no-slab': () =>
    'This pipe passes under no new slab. Check the places it runs through, or take it away.',
  'drain-off-slab': ({ slab, by }) =>
    `This place of the drain lies on no new slab; "${slab}" is nearest, ${by} away. Check where it is.`,
  'invert-above-rim': ({ by }) =>
    `With its own size the pipe would reach ${by} above the rim of the drain. Check the invert, the rim and the size.`,
  'pipe-does-not-fall': ({ by }) =>
    `The outlet lies ${by} above the invert or level with it, so no water runs to it. Check both heights, or find a lower outlet.`,
  'ends-at-one-place': ({ first, second }) =>
    `"${first}" and "${second}" lie at one place, so nothing runs from one to the other. Check where they are.`,
  'no-way-down': ({ slope, own }) =>
    `The slab falls ${own} there by itself, so a transition of ${slope} never comes down to the walk as it is. Write a steeper one, or choose another way.`,
  'way-too-long': ({ length, run }) =>
    `This takes ${length} of the slab, and it is ${run} long there. Choose a steeper transition, a shorter panel or another way.`,
  'grind-what-is-low': ({ by }) =>
    `The walk lies ${by} lower than it should, and grinding takes off more. Write another way, such as way: replace`,
  'steps-do-not-rise': ({ from, to, by }) =>
    `Steps go up, and "${to}" lies ${by} below "${from}" or level with it. Change the two ends over, or check their heights.`,
  'treads-rise-too-much': ({ treads, rise }) =>
    `The treads alone would rise ${treads}, and the whole flight rises ${rise}. Write a fall such as 1/8 in per ft.`,
  'steps-of-nothing': () =>
    'One riser up to something that is there has no tread and no landing, so nothing is poured. Write how deep the step is as its landing, or take the steps away.',
  'steps-without-room': ({ run, room }) =>
    `Treads and landing are ${run} along the ground, and there is room for ${room}. Make treads or landing shorter, or turn the steps.`,
  'foot-said-twice': () =>
    'What changes at this foot is said, and the heights tell it too. Take one of the two away: foot, or foot-ends.',
  'foot-missing': () =>
    'What changes at the foot of this flight is missing. Write foot: { left: 1/2 in, middle: 1/2 in, right: 1/2 in }, or foot-ends with the two ends of its lowest step, where heights tell it.',
  'foot-off-slabs': () =>
    'No slab with heights lies at this foot, so what changes there is not known. Give the slab there three points of the heights, not in a line, check where the foot is, or write foot instead.',
  'foot-without-old': ({ slab }) =>
    `What is there now under "${slab}" is not known, so neither is what changes at this foot. Give what goes there three points of the heights, kind: existing, or write foot instead.`,
  'foot-above-tread': ({ rise, riser }) =>
    `The new surface would rise ${rise} here, and the lowest step is ${riser} high: the tread would lie below it. Check both.`,
  'thickest-below-thickness': ({ thickest, thickness }) =>
    `At its thickest it is ${thickest}, less than its thickness of ${thickness}. Change one of the two.`,
  'thickened-edge-not-deeper': ({ depth, thickness }) =>
    `A thickened edge of ${depth} in is no deeper than its slab of ${thickness} in. Its depth is from the top of the slab to the bottom of the edge.`,
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
  'fabric-without-base': ({ slab }) =>
    `Fabric lies below the base, and "${slab}" has none. Write its base, or take the fabric away.`,
  'roll-lap-too-long': ({ lap, roll }) =>
    `A lap of ${lap} uses up the roll of ${roll}. Make it shorter, or buy larger rolls.`,
  'mesh-lap-too-long': ({ lap, sheet }) => `A lap of ${lap} uses up the sheet of ${sheet}. Make it shorter.`,
  'edge-joints-disagree': ({ how, other, slab, edge }) =>
    `This edge is ${how}, and the same edge is ${other} as edge ${edge} of "${slab}". An edge has one joint; bars across an isolated one would tear it. Change one of the two.`,
  'cover-too-thick': ({ cover, mat, thickness }) =>
    `A cover of ${cover} and bars or wires of ${mat} one on the other do not go into a slab of ${thickness}. Write a smaller cover, or make the slab thicker.`,
  'bar-lap-too-long': ({ lap, stock }) =>
    `A lap of ${lap} uses up the bar of ${stock}. Make it shorter, or buy longer bars.`,
  'no-payload': ({ trailer, allowsLb, emptyLb, reserveLb }) =>
    `The trailer "${trailer}" can carry nothing: ${allowsLb} lb are allowed, it weighs ${emptyLb} lb empty, and ${reserveLb} lb are kept free. Check its ratings and its weight.`,
  'no-trailer': () => 'Something has to be hauled, and no trailer comes to this job. Name at least one.',
  'no-place-for-stream': ({ stream }) =>
    `No place takes "${stream}". Add it below "accepts" of a place that does.`,
  'place-lets-nobody-in': ({ place, arrives, lastLoad }) =>
    `"${place}" takes its last load at ${lastLoad}, and the first trip of a day arrives at ${arrives}. Start the day earlier, or check its hours.`,
  'places-closed': ({ stream, places, on }) =>
    `Work starts on ${on}, when every place that takes "${stream}" is closed: ${places}. Start on another day, or add a place.`,
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
