import type { Origin, Origins } from '../problems/index.ts';
import { Usd } from '../units/index.ts';
import { childrenOf } from './paths.ts';
import { textAt } from './problems-found.ts';

/**
 * What holds where a job or a company says nothing. Constants alone: whatever follows from
 * another value is a figure of the core, so that an edit cannot leave a stale value behind.
 */
export const SHIPPED = {
  revision: 1,
  stage: 'bid',
  units: 'us',
  ruleSets: ['general'],
  material: 'concrete',
  steel: 'none',
  breakOut: 'breaker',
  soilStuckIn: 0,
  reinforcement: { kind: 'none' },
  meshFrom: 'sheets',
  barMaterial: 'steel',
  barCorners: 'crossed',
  noticeDays: 1,
  treadSlope: 0,
  taperIn: 0,
  flyAshRatio: 0,
  slagRatio: 0,
  wayExtraIn: 0,
  formBulgeIn: 0,
  geotextile: false,
  publicWay: false,
  jointCut: 'wet-sawn',
  jointsProposed: 'rest',
  jointsSealed: false,
  minimumUsd: new Usd(0),
  mixedLoads: false,
  driverCount: 1,
  openOn: [1, 2, 3, 4, 5, 6, 7],
  dayStartsHr: 7,
  bent: 'across-grain',
  trapezoidOffsetIn: 0,
  triangleSide: 'left',
  edge: 'formed',
  stoodOn: 'stays',
  turnedRad: 0,
  // What a tape drawn tight by two people is good for around a yard: common practice, no source.
  closingErrorIn: 2,
  joiningGapIn: 1,
} as const;

/** The origins of the constants that a job takes, by job path. */
export function shippedOrigins(origins: Origins): ReadonlyMap<string, Origin> {
  const shipped = new Map<string, Origin>();
  const add = (path: string, text: string) => {
    if (!origins.has(path)) shipped.set(path, { spot: null, text, from: 'shipped' });
  };
  add('job.revision', String(SHIPPED.revision));
  add('job.stage', SHIPPED.stage);
  add('job.units', SHIPPED.units);
  add('job.rule-sets', `[${SHIPPED.ruleSets.join(', ')}]`);
  add('plan.drivers', String(SHIPPED.driverCount));
  add('build.mix.fly-ash', '0 %');
  add('build.mix.slag', '0 %');
  add('site.access.way-extra', `${SHIPPED.wayExtraIn} in`);
  add('company.labor.day-starts', `${SHIPPED.dayStartsHr}:00`);
  for (const id of childrenOf('site.existing', origins)) {
    add(`site.existing.${id}.material`, SHIPPED.material);
    add(`site.existing.${id}.steel`, SHIPPED.steel);
    add(`site.existing.${id}.break-out`, SHIPPED.breakOut);
    if (!origins.has(`site.existing.${id}.walls`))
      add(`site.existing.${id}.soil-stuck`, `${SHIPPED.soilStuckIn} in`);
  }
  for (const id of childrenOf('site.old-steps', origins)) {
    add(`site.old-steps.${id}.material`, SHIPPED.material);
    add(`site.old-steps.${id}.steel`, SHIPPED.steel);
  }
  for (const id of childrenOf('build.slabs', origins)) {
    const steel = `build.slabs.${id}.reinforcement`;
    add(steel, SHIPPED.reinforcement.kind);
    if (origins.has(`${steel}.mesh`)) add(`${steel}.from`, SHIPPED.meshFrom);
    if (origins.has(`${steel}.bars`)) {
      add(`${steel}.material`, SHIPPED.barMaterial);
      add(`${steel}.corners`, SHIPPED.barCorners);
    }
    add(`build.slabs.${id}.geotextile`, 'no');
    add(`build.slabs.${id}.public-way`, 'no');
    add(`build.slabs.${id}.joints.cut`, SHIPPED.jointCut);
    for (const edge of childrenOf(`build.slabs.${id}.thickened-edges`, origins))
      add(`build.slabs.${id}.thickened-edges.${edge}.taper`, `${SHIPPED.taperIn} in`);
  }
  for (const id of childrenOf('heights.points', origins)) {
    if (textAt(`heights.points.${id}.kind`, origins) === 'fixed')
      add(`heights.points.${id}.stood-on`, SHIPPED.stoodOn);
  }
  for (const id of childrenOf('build.steps', origins))
    add(`build.steps.${id}.tread-fall`, `${SHIPPED.treadSlope} in per ft`);
  for (const path of outlinePaths(origins)) addOutline(path, origins, add);
  add('company.allowances.form-bulge', `${SHIPPED.formBulgeIn} in`);
  add('company.allowances.closing-error', `${SHIPPED.closingErrorIn} in`);
  add('company.allowances.joining-gap', `${SHIPPED.joiningGapIn} in`);
  for (const id of childrenOf('company.forms.strips', origins)) {
    add(`company.forms.strips.${id}.bent`, SHIPPED.bent);
  }
  for (const id of childrenOf('company.places', origins)) {
    add(`company.places.${id}.minimum`, '$0');
    add(`company.places.${id}.mixed-loads`, 'no');
    if (origins.has(`company.places.${id}.base`)) add(`company.places.${id}.base.minimum`, '$0');
  }
  return shipped;
}

/** Every outline of a job, and the parts that are left out of one or joined to it. */
function outlinePaths(origins: Origins): readonly string[] {
  const below = (path: string) => childrenOf(path, origins).map((id) => `${path}.${id}`);
  return ['site.existing', 'build.slabs']
    .flatMap(below)
    .flatMap((path) => [path, ...below(`${path}.cut-outs`), ...below(`${path}.added`)]);
}

function addOutline(path: string, origins: Origins, add: (path: string, text: string) => void): void {
  add(`${path}.turned`, `${SHIPPED.turnedRad} deg`);
  if (origins.has(`${path}.trapezoid`)) add(`${path}.trapezoid.offset`, `${SHIPPED.trapezoidOffsetIn} in`);
  for (const index of childrenOf(`${path}.triangles.corners`, origins)) {
    add(`${path}.triangles.corners.${index}.side`, SHIPPED.triangleSide);
  }
  if (!origins.has(`${path}.strip`)) return;
  for (const end of STRIP_SIDES) add(`${path}.strip.${end}`, SHIPPED.edge);
}

const STRIP_SIDES = ['start', 'end', 'left', 'right'] as const;
