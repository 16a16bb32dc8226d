import { summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { describeJob, describeJobsPage, describeSiteWalk } from '../../src/describe/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { Renderer } from './render.ts';

/** The pages of one job in some language, by name; with the jobs page and the blank site-walk sheet. */
export function pagesIn(
  prepared: PreparedJob,
  words: Words,
  renderer: Renderer,
): ReadonlyMap<string, string> {
  const views = describeJob(prepared, words);
  const { company } = prepared.job;
  const siteWalk = describeSiteWalk(
    { company: company.name, companyLines: [company.address, company.phone], paper: company.paper },
    words,
  );
  const office = (
    kind: 'work-order' | 'materials' | 'safety' | 'calculation' | 'binder' | 'site-walk',
    view: Parameters<Renderer['document']>[0]['view'],
  ) => [kind, renderer.document({ kind, folder: 'office', name: kind, view })] as const;
  return new Map<string, string>([
    [
      'proposal',
      renderer.document({ kind: 'proposal', folder: 'homeowner', name: 'proposal', view: views.proposal }),
    ],
    office('work-order', views.workOrder),
    office('materials', views.materials),
    office('safety', views.safety),
    office('calculation', views.calculation),
    office('binder', views.binder),
    office('site-walk', siteWalk),
    ['jobs', renderer.jobsPage(describeJobsPage([summaryOf(prepared)], words))],
  ]);
}
