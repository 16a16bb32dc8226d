import type { BuildSection, JobInput, PlanSection, ProductionSection } from '../read/index.ts';
import { checkEdits } from './check-edits.ts';
import { checkOutline } from './check-outline.ts';
import { childrenOf } from './paths.ts';
import { checkId, checkIds, type Finder } from './problems-found.ts';

/** What no single value shows: outlines, references and keys that belong together. */
export function checkJob(finder: Finder, { site, build, plan, price }: JobInput['sections']): void {
  for (const id of Object.keys(site?.existing ?? {})) checkOutline(finder, `site.existing.${id}`, 'existing');
  if (build !== undefined) checkBuild(finder, build);
  if (plan !== undefined) checkPlan(finder, plan);
  if (price !== undefined) checkEdits(finder, price);
}

function checkBuild(finder: Finder, build: BuildSection): void {
  if (childrenOf('build.slabs', finder.origins).length === 0) finder.add('build.slabs', 'no-slab', {});
  for (const [id, slab] of Object.entries(build.slabs)) {
    const path = `build.slabs.${id}`;
    checkOutline(finder, path, 'slab');
    checkReinforcement(finder, `${path}.reinforcement`);
    checkId(finder, `${path}.board`, slab.board, { thing: 'board', below: 'company.forms.boards' });
  }
}

function checkReinforcement({ origins, add }: Finder, path: string): void {
  if (!origins.has(path)) return;
  const [hasMesh, hasBars, hasSpacing] = ['mesh', 'bars', 'spacing'].map((key) =>
    origins.has(`${path}.${key}`),
  );
  if (hasMesh === hasBars) add(path, 'reinforcement-unclear', {});
  else if (hasBars && !hasSpacing) add(path, 'bars-without-spacing', {});
  else if (!hasBars && hasSpacing) add(`${path}.spacing`, 'spacing-without-bars', {});
}

function checkPlan(finder: Finder, plan: PlanSection): void {
  if (childrenOf('plan.crew', finder.origins).length === 0) finder.add('plan.crew', 'nobody-named', {});
  checkIds(finder, 'plan.crew', plan.crew, { thing: 'person', below: 'company.labor.people' });
  checkIds(finder, 'plan.trailers', plan.trailers, { thing: 'trailer', below: 'company.trailers' });
}

/** The machines and people that the production rows of the company name. */
export function checkProduction(finder: Finder, production: ProductionSection): void {
  for (const [task, row] of Object.entries(production)) {
    const path = `company.production.${task}`;
    if (row.machine !== undefined)
      checkId(finder, `${path}.machine`, row.machine, { thing: 'machine', below: 'company.machines' });
    if (row.operator !== undefined)
      checkId(finder, `${path}.operator`, row.operator, { thing: 'person', below: 'company.labor.people' });
  }
}
