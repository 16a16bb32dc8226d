import { COMMON_PRACTICE, constant, type FigureInput, type FigureUnit, given } from '../figure.ts';
import type { Company, Machine } from '../job.ts';

/** How a base is compacted, as inputs of figures. */
export type Compactor = {
  /** The most in one lift, compacted [in]. */
  readonly mostIn: FigureInput;
  readonly widthIn: FigureInput;
  readonly overlapIn: FigureInput;
  readonly travelFtPerHr: FigureInput;
  readonly efficiency: FigureInput;
  /** Times over a lift in each of two directions. */
  readonly passesEachWay: FigureInput;
};

/** Of a small vibratory plate where its machine does not say it. */
const USUAL = {
  mostIn: constant(
    'most in one lift',
    4,
    'in',
    'Utah Division of Facilities Construction and Management, Paving program, dfcm.utah.gov/paving-program: road base, no more than 4 in compacted at a time (seen)',
  ),
  // 18 to 24 in.
  widthIn: constant('width of a plate', 20, 'in', COMMON_PRACTICE),
  // 2 to 4 in.
  overlapIn: constant('overlap of two strips', 3, 'in', COMMON_PRACTICE),
  // 60 to 80 ft a minute.
  travelFtPerHr: constant('travel of a plate', 4200, 'ft/h', COMMON_PRACTICE),
  efficiency: constant(
    '50 min of each hour',
    50 / 60,
    'ratio',
    'expertsmind.com, "Calculate roller production", worked example: 50 min an hour (seen)',
  ),
  // 2 to 4; a crew goes on until the base no longer sinks.
  passesEachWay: constant('passes in each direction', 2, 'each', COMMON_PRACTICE),
} as const;

/**
 * The plate compactor of a company: the machine of the base if it is one, else the first it has.
 * Without one, a small plate as is usual.
 */
export function compactorOf(from: {
  readonly machines: Company['machines'];
  /** Id of the machine that the base is made with; null for none. */
  readonly baseMachine: string | null;
}): Compactor {
  const plates = Object.values(from.machines).filter(({ kind }) => kind === 'plate-compactor');
  const machine = plates.find(({ id }) => id === from.baseMachine) ?? plates[0];
  if (machine === undefined) return USUAL;
  const own = (key: keyof Machine['plate'], name: string, unit: FigureUnit): FigureInput | null => {
    const value = machine.plate[key];
    return value === null ? null : given(`company.machines.${machine.id}.${name}`, value, unit);
  };
  return {
    mostIn: own('liftIn', 'lift', 'in') ?? USUAL.mostIn,
    widthIn: own('widthIn', 'plate-width', 'in') ?? USUAL.widthIn,
    overlapIn: USUAL.overlapIn,
    travelFtPerHr: own('travelFtPerHr', 'travel', 'ft/h') ?? USUAL.travelFtPerHr,
    efficiency: USUAL.efficiency,
    passesEachWay: own('passesEachWay', 'passes', 'each') ?? USUAL.passesEachWay,
  };
}
