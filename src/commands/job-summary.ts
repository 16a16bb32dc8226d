import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describeJobsPage, type JobsPageFacts } from '../describe/index.ts';
import type { JobsPageView } from '../describe/views.ts';
import { addDaysOn } from '../units/index.ts';
import { en } from '../words/index.ts';
import type { PreparedJob } from './prepare.ts';

const DOCUMENTS = [
  ['proposal', 'homeowner'],
  ['work-order', 'office'],
  ['materials', 'office'],
  ['safety', 'office'],
  ['calculation', 'office'],
  ['binder', 'office'],
] as const;

/** What the jobs page says of one job; kept beside its documents for builds of other jobs. */
export function summaryOf({ job, results }: PreparedJob): JobsPageFacts {
  const open = results.findings.filter(({ acknowledged }) => acknowledged === null);
  const countOf = (severity: 'stop' | 'fix' | 'note') =>
    open.filter((finding) => finding.severity === severity).length;
  return {
    id: job.id,
    number: job.number,
    label: job.label,
    stage: job.stage,
    place: job.address,
    nextOn: nextOn({ job, results }),
    findings: { stop: countOf('stop'), fix: countOf('fix'), note: countOf('note') },
    documents: DOCUMENTS.map(([kind, folder]) => ({
      kind,
      html: `${job.id}/${folder}/${kind}.html`,
      pdf: `${job.id}/${folder}/${kind}.pdf`,
    })),
  };
}

function nextOn({ job, results }: Pick<PreparedJob, 'job' | 'results'>): string | null {
  const { days } = results.crew.data;
  const work = days.filter(({ kind }) => kind === 'work');
  switch (job.stage) {
    case 'bid':
      return addDaysOn(job.preparedOn, job.company.pricing.validDays);
    case 'signed':
    case 'scheduled':
      return work[0]?.on ?? null;
    case 'working':
      return work.find(({ phase }) => phase === 'pour')?.on ?? null;
    case 'done':
      return work.at(-1)?.on ?? null;
    case 'paid':
      return null;
  }
}

/** Summaries of jobs built before and not now; a damaged one is left out, its job is built again soon. */
export async function readSummaries(
  outputDir: string,
  without: readonly string[],
): Promise<readonly JobsPageFacts[]> {
  const entries = await readdir(outputDir, { withFileTypes: true });
  const ids = entries
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .map(({ name }) => name);
  const read = ids
    .filter((id) => !without.includes(id))
    .map(async (id) => {
      try {
        const kept: unknown = JSON.parse(
          await readFile(join(outputDir, id, 'office', 'summary.json'), 'utf8'),
        );
        return isSummary(kept) && kept.id === id ? [kept] : [];
      } catch {
        return [];
      }
    });
  return (await Promise.all(read)).flat();
}

/** Written by another version, it may lack what this one shows. */
function isSummary(kept: unknown): kept is JobsPageFacts {
  const keys = ['id', 'number', 'label', 'stage', 'place', 'nextOn', 'findings', 'documents'];
  return typeof kept === 'object' && kept !== null && keys.every((key) => key in kept);
}

export function jobsPageOf(summaries: readonly JobsPageFacts[]): JobsPageView {
  return describeJobsPage(summaries, en);
}
