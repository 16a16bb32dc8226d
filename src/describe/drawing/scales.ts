import type { Scale } from './drawing.ts';

export type UnitSystem = 'us' | 'metric';

/** Drawing scales in everyday use, largest first; common practice, no source. */
const usScales = [
  { text: '3/4″ = 1′', paperIn: 3 / 4 },
  { text: '1/2″ = 1′', paperIn: 1 / 2 },
  { text: '3/8″ = 1′', paperIn: 3 / 8 },
  { text: '1/4″ = 1′', paperIn: 1 / 4 },
  { text: '3/16″ = 1′', paperIn: 3 / 16 },
  { text: '1/8″ = 1′', paperIn: 1 / 8 },
  { text: '3/32″ = 1′', paperIn: 3 / 32 },
  { text: '1/16″ = 1′', paperIn: 1 / 16 },
  // For a long walk on a narrow page: still stated, still measurable.
  { text: '1/32″ = 1′', paperIn: 1 / 32 },
  { text: '1/64″ = 1′', paperIn: 1 / 64 },
  { text: '1/128″ = 1′', paperIn: 1 / 128 },
  { text: '1/256″ = 1′', paperIn: 1 / 256 },
  { text: '1/512″ = 1′', paperIn: 1 / 512 },
];
const metricScales = [20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000];

const usBarsFt = [1, 2, 5, 10, 20, 50, 100, 200, 500];
const metricBarsM = [0.5, 1, 2, 5, 10, 20, 50, 100, 200];

/** Exact: 1 in is 25.4 mm (international yard and pound agreement, 1959; from memory). */
const inchesPerMetre = 1000 / 25.4;

export function scalesOf(system: UnitSystem): Scale[] {
  if (system === 'us') return usScales.map(({ text, paperIn }) => ({ text, paperInPerIn: paperIn / 12 }));
  return metricScales.map((parts) => ({ text: `1:${parts}`, paperInPerIn: 1 / parts }));
}

/** The longest round length whose bar is at most so long on the paper [in on the ground]. */
export function scaleBarLengthIn(system: UnitSystem, scale: Scale, mostPaperIn: number): number {
  const lengthsIn =
    system === 'us'
      ? usBarsFt.map((feet) => feet * 12)
      : metricBarsM.map((metres) => metres * inchesPerMetre);
  const fitting = lengthsIn.filter((lengthIn) => lengthIn * scale.paperInPerIn <= mostPaperIn);
  return fitting.at(-1) ?? lengthsIn[0] ?? 12;
}
