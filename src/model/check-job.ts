import { parseDate } from '../units/index.ts';
import { checkEdgeJoints } from './check-edge-joints.ts';
import { checkEdits } from './check-edits.ts';
import { checkExisting } from './check-existing.ts';
import { checkFlight } from './check-flights.ts';
import { checkGeotextile } from './check-geotextile.ts';
import { checkHeights } from './check-heights.ts';
import { checkMethods } from './check-methods.ts';
import { checkOutline } from './check-outline.ts';
import { checkPour } from './check-pour.ts';
import { checkPublicWalks } from './check-public-walks.ts';
import { checkReinforcement } from './check-reinforcement.ts';
import { checkSealant } from './check-sealant.ts';
import { checkSteps } from './check-steps.ts';
import { checkSurfaceLines } from './check-surface-lines.ts';
import { checkWalls } from './check-walls.ts';
import { childrenOf } from './paths.ts';
import { checkId, checkIds, checkNamedOnce, type Finder, textAt } from './problems-found.ts';

/**
 * What no single value shows: outlines, references and keys that belong together.
 *
 * All of it is asked of what stands in the files, not of what could be read: a slab whose
 * thickness is wrong still has a form board that may not exist, and both show at once.
 */
export function checkJob(finder: Finder): void {
  for (const id of childrenOf('site.existing', finder.origins)) {
    checkOutline(finder, `site.existing.${id}`, 'existing');
    checkExisting(finder, `site.existing.${id}`);
  }
  checkMethods(finder);
  checkNamedOnce(finder, 'build.mix.additives');
  checkIds(finder, 'site.access.chute-reaches', { thing: 'slab', below: 'build.slabs' });
  if (finder.origins.has('build')) checkBuild(finder);
  if (finder.origins.has('heights')) checkHeights(finder);
  checkWalls(finder);
  checkPublicWalks(finder);
  checkSurfaceLines(finder);
  if (finder.origins.has('plan')) checkPlan(finder);
  checkPour(finder);
  checkEdgeJoints(finder);
  checkEdits(finder);
  checkGeotextile(finder);
  checkSealant(finder);
}

function checkBuild(finder: Finder): void {
  const slabs = childrenOf('build.slabs', finder.origins);
  if (slabs.length === 0) finder.add('build.slabs', 'no-slab', {});
  for (const id of slabs) {
    const path = `build.slabs.${id}`;
    checkOutline(finder, path, 'slab');
    checkReinforcement(finder, `${path}.reinforcement`);
    checkId(finder, `${path}.board`, { thing: 'board', below: 'company.forms.boards' });
    checkId(finder, `${path}.curve-form`, {
      thing: 'form-strip',
      below: 'company.forms.strips',
      mayBeNone: finder.origins.has('company.forms'),
    });
  }
  for (const id of childrenOf('site.flights', finder.origins)) checkFlight(finder, `site.flights.${id}`);
  for (const id of childrenOf('build.steps', finder.origins)) checkSteps(finder, `build.steps.${id}`);
}

function checkPlan(finder: Finder): void {
  if (childrenOf('plan.crew', finder.origins).length === 0) finder.add('plan.crew', 'nobody-named', {});
  checkIds(finder, 'plan.crew', { thing: 'person', below: 'company.labor.people' });
  checkIds(finder, 'plan.trailers', { thing: 'trailer', below: 'company.trailers' });
  checkDrivers(finder);
  checkHaulBy(finder);
}

/** Each driver is one of the crew and pulls a trailer of his own. */
function checkDrivers({ origins, add }: Finder): void {
  const drivers = Number(textAt('plan.drivers', origins) ?? '1');
  if (!Number.isInteger(drivers)) return;
  for (const list of ['crew', 'trailers'] as const) {
    const count = childrenOf(`plan.${list}`, origins).length;
    if (drivers > Math.max(1, count)) add('plan.drivers', 'too-many-drivers', { drivers, list, count });
  }
}

/** Of dates that could be read; each other one has a problem of its own. */
function checkHaulBy({ origins, add }: Finder): void {
  const dateAt = (path: string) => {
    const parsed = parseDate(textAt(path, origins) ?? '');
    return parsed.ok ? parsed.value : null;
  };
  const [startsOn, haulByOn] = [dateAt('plan.starts-on'), dateAt('plan.haul-by')];
  if (startsOn !== null && haulByOn !== null && haulByOn < startsOn)
    add('plan.haul-by', 'haul-by-before-start', { startsOn });
}

/** The machines and people that the production rows of the company name. */
export function checkProduction(finder: Finder): void {
  for (const task of childrenOf('company.production', finder.origins)) {
    const path = `company.production.${task}`;
    checkId(finder, `${path}.machine`, { thing: 'machine', below: 'company.machines' });
    checkId(finder, `${path}.operator`, { thing: 'person', below: 'company.labor.people' });
  }
}
