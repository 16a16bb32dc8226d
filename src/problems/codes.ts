import type { Measure, Thing } from './things.ts';

type Nothing = Readonly<Record<never, never>>;
type Written = { readonly value: string; readonly forms: readonly string[] };

/** A unit missing is told apart by what was measured: `length-without-unit`. */
type WithoutUnit = { readonly [M in Measure as `${M}-without-unit`]: Written };

/**
 * Every problem the input can have: its permanent code and the parts of its message.
 * The texts are in `src/words/problems-<language>.ts`, one small function a code.
 */
export type ProblemParts = WithoutUnit &
  CorePartsByCode & {
    // The folder and its files
    readonly 'no-folder': Nothing;
    readonly 'no-jobs': Nothing;
    readonly 'unknown-job': { readonly name: string; readonly nearest: string | null };
    readonly 'folder-name': { readonly name: string };
    readonly 'no-yaml': Nothing;
    readonly 'other-file': {
      readonly name: string;
      readonly nearest: string | null;
      readonly known: readonly string[];
    };
    readonly 'folder-not-read': { readonly name: string };
    readonly 'not-a-plain-file': Nothing;
    readonly 'file-too-large': { readonly size: string; readonly most: string };
    readonly 'unreadable-file': { readonly reason: string };
    readonly 'not-utf8': Nothing;
    readonly 'empty-file': Nothing;
    readonly 'section-twice': { readonly section: string; readonly where: string };
    readonly 'section-elsewhere': { readonly section: string; readonly file: string };

    // YAML
    readonly 'not-yaml': { readonly reason: string };
    readonly 'tab-indent': Nothing;
    readonly indent: Nothing;
    readonly 'colon-in-text': Nothing;
    readonly 'colon-without-space': { readonly text: string };
    readonly 'text-after-quote': Nothing;
    readonly 'quote-not-closed': Nothing;
    readonly 'bracket-not-closed': Nothing;
    readonly 'first-character': { readonly character: string };
    readonly 'more-than-one-document': Nothing;
    readonly 'duplicate-key': { readonly key: string; readonly line: string };
    readonly 'tag-refused': { readonly tag: string };
    readonly 'merge-key-refused': Nothing;
    readonly 'unknown-anchor': { readonly name: string };
    readonly 'too-many-values': { readonly most: string };
    readonly 'too-deep': { readonly most: string };
    readonly 'key-not-text': Nothing;
    readonly 'cut-off-by-hash': { readonly kept: string };
    readonly 'number-split-by-comma': { readonly number: string };
    readonly 'text-split-by-comma': { readonly text: string };
    readonly 'empty-value': { readonly key: string };

    // Keys and shapes
    readonly 'unknown-key': {
      readonly key: string;
      readonly thing: Thing;
      readonly nearest: string | null;
      readonly known: readonly string[];
    };
    readonly 'missing-key': { readonly key: string; readonly thing: Thing; readonly example: string | null };
    readonly 'missing-section': { readonly section: string; readonly file: string | null };
    readonly 'bad-id': { readonly id: string };
    readonly 'not-a-corner-number': { readonly key: string };
    readonly 'keys-expected': { readonly known: readonly string[] };
    readonly 'list-expected': Nothing;
    readonly 'one-value-expected': { readonly forms: readonly string[] };
    readonly 'list-length': { readonly count: string; readonly wanted: string };

    // Values
    readonly 'unknown-unit': Written & { readonly measure: Measure };
    readonly 'wrong-kind': Written & { readonly measure: Measure };
    readonly 'not-a-number': Written;
    readonly 'not-dollars': Written;
    readonly 'not-a-date': Written;
    readonly 'not-a-time-of-day': Written;
    readonly 'not-yes-no': Written;
    readonly 'not-a-count': Written;
    readonly 'not-whole-days': Written;
    readonly 'stray-quote': Written;
    readonly 'not-above-zero': { readonly value: string };
    readonly 'too-small': { readonly value: string; readonly least: string };
    readonly 'too-large': { readonly value: string; readonly most: string };
    readonly 'not-a-choice': {
      readonly value: string;
      readonly choices: readonly string[];
      readonly nearest: string | null;
    };
    readonly 'character-not-in-font': { readonly character: string; readonly code: string };
    readonly 'control-character': { readonly code: string };
    readonly 'text-too-long': { readonly count: string; readonly most: string };

    // What does not fit together
    readonly 'unknown-id': {
      readonly id: string;
      readonly thing: Thing;
      readonly nearest: string | null;
      readonly known: readonly string[];
    };
    readonly 'named-twice': { readonly id: string };
    readonly 'no-slab': Nothing;
    readonly 'nobody-named': Nothing;
    readonly 'no-outline': { readonly thing: Thing; readonly known: readonly string[] };
    readonly 'two-outlines': { readonly thing: Thing; readonly first: string; readonly second: string };
    readonly 'too-few-corners': { readonly count: string };
    readonly 'too-few-sides': { readonly count: string };
    readonly 'first-side-turns': Nothing;
    readonly 'side-without-turn': { readonly side: string };
    readonly 'corner-not-fixed': {
      readonly corner: string;
      readonly named: string;
      readonly known: readonly string[];
    };
    readonly 'corner-named-twice': { readonly named: string };
    readonly 'line-empty': Nothing;
    readonly 'piece-unclear': { readonly piece: string; readonly known: readonly string[] };
    readonly 'piece-lacks': { readonly piece: string; readonly key: string; readonly example: string };
    readonly 'piece-extra': { readonly piece: string; readonly key: string };
    readonly 'turn-not-between-straights': { readonly piece: string };
    readonly 'not-with-strip': { readonly key: string };
    readonly 'no-such-corner': { readonly corner: string; readonly count: string };
    readonly 'no-such-edge': { readonly edge: string; readonly count: string };
    readonly 'corner-rounded-twice': {
      readonly corner: string;
      readonly first: string;
      readonly second: string;
    };
    readonly 'corner-beside-arc': { readonly corner: string; readonly edge: string };
    readonly 'edge-is-arc': { readonly edge: string };
    readonly 'bend-unclear': { readonly known: readonly string[] };
    readonly 'bend-without-side': { readonly key: string };
    readonly 'bend-with-side': Nothing;
    readonly 'no-pace-for-method': {
      readonly method: string;
      readonly row: string;
      readonly example: string;
    };
    readonly 'no-pace-for-chip': Nothing;
    readonly 'no-geotextile-supplier': Nothing;
    readonly 'too-many-drivers': {
      readonly drivers: number;
      readonly list: 'crew' | 'trailers';
      readonly count: number;
    };
    readonly 'no-sealant': Nothing;
    readonly 'machine-on-no-trailer': {
      readonly machine: string;
      readonly weight: string;
      readonly length: string;
      readonly trailers: string;
    };
    readonly 'haul-not-in-time': {
      readonly haulBy: string;
      readonly days: string;
      readonly trips: string;
      readonly lastOn: string;
      /** Trips a day by place. */
      readonly perDay: string;
    };
    readonly 'haul-by-before-start': { readonly startsOn: string };
    readonly 'lift-without-machine': Nothing;
    readonly 'machine-without-lift': { readonly machine: string };
    readonly 'earth-without-height': Nothing;
    readonly 'ground-beside-slab': Nothing;
    readonly 'public-point-not-fixed': { readonly kind: string };
    readonly 'slab-down-from-existing': Nothing;
    readonly 'floor-not-fixed': { readonly kind: string };
    readonly 'floor-of-two': { readonly id: string };
    readonly 'bend-at-existing': Nothing;
    readonly 'same-point-twice': { readonly id: string };
    readonly 'panel-price-without-share': Nothing;
    readonly 'owner-share-without-price': Nothing;
    readonly 'steps-lack-end': { readonly key: string };
    readonly 'riser-from-heights': Nothing;
    readonly 'reinforcement-unclear': Nothing;
    readonly 'bars-without-spacing': Nothing;
    readonly 'spacing-without-bars': Nothing;
    readonly 'only-with-bars': { readonly key: string };
    readonly 'only-with-mesh': { readonly key: string };
    readonly 'no-glass-fibre-supplier': Nothing;
    readonly 'no-mesh-rolls': Nothing;
    readonly 'tied-across-isolated': { readonly edge: string; readonly stands: string };
    readonly 'public-without-detail': Nothing;
    readonly 'no-dowel-supplier': Nothing;
    readonly 'no-pace-for-drill': Nothing;
    readonly 'tendons-not-ruled-out': { readonly into: string };
    readonly 'drill-into-tendons': Nothing;
    readonly 'tendons-known-by': Nothing;
    readonly 'thickness-or-walls': Nothing;
    readonly 'thickness-and-walls': Nothing;
    readonly 'only-with-thickness': { readonly key: string };
    readonly 'only-with-walls': { readonly key: string };
    readonly 'walls-of-asphalt': Nothing;
    readonly 'walls-not-sawn': Nothing;
    readonly 'edit-of-walls': { readonly edit: string; readonly id: string };
    readonly 'thickest-of-measured': Nothing;
    readonly 'coating-not-on-concrete': { readonly material: string };
    readonly 'coating-without-thickness': { readonly coating: string };
    readonly 'coating-thickness-without-layer': Nothing;
    readonly 'edit-unclear': { readonly known: readonly string[] };
    readonly 'edit-lacks': { readonly edit: string; readonly key: string; readonly example: string };
    readonly 'edit-extra': { readonly edit: string; readonly key: string };
    readonly 'height-missing': Nothing;
    readonly 'height-twice': { readonly station: string; readonly where: string };
    readonly 'note-unclear': { readonly known: readonly string[] };
    readonly 'notes-without-start': { readonly station: string };
    readonly 'backsight-on-unknown': {
      readonly station: string;
      /** Station of the last foresight before it; empty where there is none. */
      readonly last: string;
      readonly known: readonly string[];
    };
    readonly 'foresight-before-backsight': Nothing;
    readonly 'finish-sighted': { readonly station: string };
    readonly 'closing-error-without-notes': Nothing;
    readonly 'heights-mixed': { readonly signed: string; readonly plain: string; readonly first: string };
    readonly 'stood-on-missing': Nothing;
    readonly 'stood-on-of-finish': Nothing;
    readonly 'stood-on-walls': { readonly id: string };
    readonly 'fixed-on-dirt': Nothing;
    readonly 'fixed-on-what-goes': { readonly id: string };
    readonly 'surcharge-not-accepted': {
      readonly stream: string;
      readonly nearest: string | null;
      readonly known: readonly string[];
    };
    readonly 'base-not-sold': Nothing;
    readonly 'closes-before-opening': { readonly from: string; readonly to: string };
    readonly 'last-load-outside-hours': {
      readonly lastLoad: string;
      readonly from: string;
      readonly to: string;
    };
    readonly 'sheeting-without-price': { readonly method: string };
    readonly 'time-not-after': { readonly from: string; readonly to: string };
    readonly 'rule-twice': { readonly code: string; readonly where: string };
    readonly 'limit-kind': { readonly value: string; readonly forms: readonly string[] };
  };

/** A height as read, what it is or was read as before, and how far apart they are. */
type HeightMiss = {
  readonly station: string;
  readonly read: string;
  readonly other: string;
  readonly miss: string;
  readonly allowed: string;
};

/** What the core may find, on a job that reads well; it gives every part as text. */
type CorePartsByCode = {
  readonly 'outline-crosses-itself': { readonly first: string; readonly second: string };
  readonly 'outline-without-area': Nothing;
  readonly 'corner-does-not-fit': {
    readonly corner: string;
    readonly wanted: string;
    readonly available: string;
    /** Radius of the largest single arc that fits. */
    readonly mostRadius: string;
  };
  readonly 'corner-runs-straight-on': { readonly corner: string };
  readonly 'first-turn-too-large': { readonly corner: string; readonly turn: string; readonly most: string };
  readonly 'sides-do-not-close': {
    readonly error: string;
    /** Degrees, from along, to the left. */
    readonly direction: string;
    /** Percent of the length of all sides. */
    readonly share: string;
    readonly allowed: string;
  };
  readonly 'four-sides-impossible': { readonly edge: string; readonly least: string; readonly most: string };
  readonly 'diagonals-disagree': {
    readonly miss: string;
    readonly computed: string;
    /** Number of the edge that would explain it, `diagonal` or `other-diagonal`; empty where none does. */
    readonly culprit: string;
    readonly wouldBe: string;
  };
  readonly 'triangle-impossible': {
    readonly corner: string;
    readonly first: string;
    readonly second: string;
    readonly least: string;
    readonly most: string;
  };
  readonly 'strip-too-tight': { readonly piece: string; readonly radius: string; readonly least: string };
  readonly 'strip-setback-too-long': { readonly piece: string; readonly back: string; readonly most: string };
  readonly 'strip-straight-too-short': {
    readonly piece: string;
    readonly length: string;
    readonly least: string;
  };
  readonly 'strip-width-on-arc': { readonly piece: string };
  readonly 'radius-too-small': { readonly edge: string; readonly radius: string; readonly least: string };
  readonly 'bend-point-on-edge': { readonly edge: string };
  readonly 'cut-out-outside': { readonly cutOut: string; readonly by: string };
  readonly 'cut-outs-overlap': { readonly first: string; readonly second: string };
  readonly 'added-does-not-touch': {
    readonly piece: string;
    /** Empty where no edge of the piece runs along one of the shape. */
    readonly miss: string;
    readonly allowed: string;
  };
  readonly 'joint-line-outside': Nothing;
  readonly 'levels-do-not-close': HeightMiss;
  readonly 'sights-disagree': HeightMiss;
  readonly 'finish-outside-slabs': { readonly slab: string; readonly by: string };
  readonly 'heights-disagree': { readonly first: string; readonly second: string; readonly by: string };
  readonly 'surface-short-of-points': { readonly slab: string; readonly known: string };
  readonly 'slabs-overlap': { readonly first: string; readonly second: string; readonly area: string };
  readonly 'slabs-miss': {
    readonly first: string;
    readonly second: string;
    readonly miss: string;
    readonly allowed: string;
  };
  readonly 'walls-do-not-fit': { readonly thickness: string };
  readonly 'walls-on-bent-outline': Nothing;
  readonly 'footing-does-not-fit': { readonly width: string };
  readonly 'wall-without-surface': { readonly slab: string };
  readonly 'wall-off-slab': { readonly slab: string; readonly by: string };
  readonly 'profile-off-slabs': Nothing;
  readonly 'tie-in-off-slab': { readonly slab: string; readonly by: string };
  readonly 'fall-against-heights': {
    readonly first: string;
    readonly second: string;
    readonly run: string;
    readonly stated: string;
    readonly drop: string;
    readonly by: string;
    readonly slope: string;
  };
  readonly 'fall-against-climb': {
    readonly first: string;
    readonly second: string;
    readonly run: string;
    readonly stated: string;
    readonly rise: string;
    readonly by: string;
  };
  readonly 'bends-cross': { readonly first: string; readonly second: string };
  readonly 'lid-off-slabs': { readonly slab: string; readonly by: string };
  readonly 'lid-without-surface': { readonly slab: string };
  readonly 'pipe-under-no-slab': Nothing;
  readonly 'drain-off-slab': { readonly slab: string; readonly by: string };
  readonly 'invert-above-rim': { readonly by: string };
  readonly 'pipe-does-not-fall': { readonly by: string };
  readonly 'ends-at-one-place': { readonly first: string; readonly second: string };
  readonly 'no-way-down': { readonly slope: string; readonly own: string };
  readonly 'way-too-long': { readonly length: string; readonly run: string };
  readonly 'grind-what-is-low': { readonly by: string };
  readonly 'steps-do-not-rise': { readonly from: string; readonly to: string; readonly by: string };
  readonly 'treads-rise-too-much': { readonly treads: string; readonly rise: string };
  readonly 'steps-of-nothing': Nothing;
  readonly 'steps-without-room': { readonly run: string; readonly room: string };
  readonly 'foot-said-twice': Nothing;
  readonly 'foot-missing': Nothing;
  readonly 'foot-off-slabs': Nothing;
  readonly 'foot-without-old': { readonly slab: string };
  readonly 'foot-above-tread': { readonly rise: string; readonly riser: string };
  readonly 'thickest-below-thickness': { readonly thickest: string; readonly thickness: string };
  readonly 'thickened-edge-not-deeper': { readonly depth: string; readonly thickness: string };
  readonly 'truck-below-increment': { readonly truck: string; readonly increment: string };
  readonly 'starts-on-weekend': { readonly on: string; readonly weekday: string };
  readonly 'wage-not-per-hour': { readonly unit: string };
  readonly 'pace-unit': { readonly task: string; readonly unit: string; readonly wanted: string };
  readonly 'rate-unit': { readonly unit: string; readonly wanted: string };
  readonly 'acknowledgement-without-finding': { readonly finding: string; readonly where: string };
  readonly 'fabric-without-base': { readonly slab: string };
  readonly 'roll-lap-too-long': { readonly lap: string; readonly roll: string };
  readonly 'mesh-lap-too-long': { readonly lap: string; readonly sheet: string };
  readonly 'edge-joints-disagree': {
    readonly how: string;
    readonly other: string;
    readonly slab: string;
    readonly edge: string;
  };
  readonly 'cover-too-thick': { readonly cover: string; readonly mat: string; readonly thickness: string };
  readonly 'bar-lap-too-long': { readonly lap: string; readonly stock: string };
  readonly 'no-payload': {
    readonly trailer: string;
    readonly limit: string;
    readonly allowsLb: string;
    readonly emptyLb: string;
    readonly reserveLb: string;
  };
  readonly 'no-trailer': Nothing;
  readonly 'no-place-for-stream': { readonly stream: string };
  readonly 'place-lets-nobody-in': {
    readonly place: string;
    readonly arrives: string;
    readonly lastLoad: string;
  };
  readonly 'places-closed': {
    readonly stream: string;
    readonly places: string;
    readonly on: string;
  };
  readonly 'overhead-and-margin-take-all': { readonly overhead: string; readonly margin: string };
  readonly 'payments-not-whole': { readonly sum: string };
};

export type ProblemCode = keyof ProblemParts;

/** One sentence or a few for each code. A code without one does not compile. */
export type ProblemTexts = { readonly [C in ProblemCode]: (parts: ProblemParts[C]) => string };

/** The texts of the problems and the line that closes a list of them. */
export type ProblemWords = {
  readonly texts: ProblemTexts;
  readonly closing: (counts: { readonly problemCount: number; readonly fileCount: number }) => string;
};
