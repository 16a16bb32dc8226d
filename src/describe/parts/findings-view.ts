import type { Finding } from '../../calculate/findings/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import type { FindingView } from '../views.ts';
import { goneLabel } from './gone-thing.ts';
import { limitWords, valueWords } from './limit-words.ts';

/** What is common practice or the company's own was not read anywhere, and is not from memory either. */
const HAS_NO_SOURCE = /^(common practice|definition|the company)/;

const ORDER = { stop: 0, fix: 1, note: 2 } as const;

/** Findings as they look in every document: worst first, then by code and place. */
export function findingsView(job: Job, findings: readonly Finding[], words: Words): readonly FindingView[] {
  const orderKey = ({ severity, code, where }: Finding) => `${ORDER[severity]} ${code} ${where}`;
  return [...findings]
    .sort((one, other) => (orderKey(one) < orderKey(other) ? -1 : 1))
    .map((finding) => findingView(job, finding, words));
}

function findingView(job: Job, finding: Finding, words: Words): FindingView {
  const say = words.findings;
  const value = valueWords(finding.value, finding, job.unitSystem);
  const limit = limitWords(finding, job.unitSystem);
  const sentences: Readonly<Record<string, (parts: { value: string; limit: string }) => string>> =
    say.sentences;
  const sentence = Object.hasOwn(sentences, finding.code) ? sentences[finding.code] : undefined;
  return {
    severity: finding.severity,
    severityWord: say.severities[finding.severity],
    place: placeText(job, finding, words),
    sentence: (sentence ?? say.other)({ value, limit }),
    limit: (finding.direction === 'at-most' ? say.limitAtMost : say.limitAtLeast)(limit, value),
    source:
      finding.seen || HAS_NO_SOURCE.test(finding.source) ? finding.source : say.fromMemory(finding.source),
    acknowledged: finding.acknowledged === null ? null : say.acknowledged(finding.acknowledged),
  };
}

/** The names a pattern matched, as labels where they are things of the job. */
function placeText(job: Job, { where, figureId }: Pick<Finding, 'where' | 'figureId'>, words: Words): string {
  if (where === 'job') return words.findings.wholeJob;
  const { slabs, steps } = job.build;
  // Steps that stay and parts of walls may have the id of something that is built.
  const apart = figureId.startsWith('flights.stays.')
    ? job.site.flights
    : figureId.startsWith('clearances.')
      ? job.walls
      : { ...tiedThings(job, figureId), ...beyondThings(job, figureId, words) };
  // What a slab is for stands before it, and the label says it.
  const names = where.split('.').slice(/^grades\.\w+\.\w/.test(figureId) && where.includes('.') ? 1 : 0);
  return names
    .map(
      (id) =>
        apart[id]?.label ??
        slabs[id]?.label ??
        steps[id]?.label ??
        goneLabel(job, id) ??
        job.tieIns.keepDry[id]?.label ??
        job.profiles[id]?.label ??
        job.company.trailers[id]?.label ??
        streamName(id, words) ??
        spotName(id, words) ??
        pairName(job, id, words) ??
        id,
    )
    .join(', ');
}

/** Where a profile goes on past its last slab, by the point whose slope changes there: the one before. */
function beyondThings(
  { profiles }: Job,
  figureId: string,
  words: Words,
): Readonly<Record<string, { readonly label: string }>> {
  const [, id = ''] = /^profiles\.([\w-]+)\.beyond\./.exec(figureId) ?? [];
  const names = [
    words.workOrder.profiles.lastEdge,
    ...(profiles[id]?.beyond ?? []).map(({ label }) => label),
  ];
  return Object.fromEntries(names.map((label, index) => [`point-${index + 1}`, { label }]));
}

/** What new slabs meet, by the kind that the figure is of. */
function tiedThings(
  { tieIns, site }: Job,
  figureId: string,
): Readonly<Record<string, { readonly label: string }>> {
  const [, kind = ''] = /^(?:tie-ins|fixtures)\.([\w-]+)\./.exec(figureId) ?? [];
  const things: Readonly<Record<string, Readonly<Record<string, { readonly label: string }>>>> = {
    'public-walks': tieIns.publicWalks,
    drains: tieIns.drains,
    garages: tieIns.garages,
    'under-slab': site.underSlab,
  };
  return things[kind] ?? {};
}

/** Two slabs that share a joint. */
function pairName({ build: { slabs } }: Job, id: string, words: Words): string | undefined {
  for (const [one, slab] of Object.entries(slabs)) {
    const other = id.startsWith(`${one}-to-`) ? slabs[id.slice(one.length + 4)] : undefined;
    if (other !== undefined) return words.findings.both(slab.label, other.label);
  }
  return undefined;
}

/** A turn of a walk, a point of an outline or a formed curve, by its number. */
function spotName(id: string, words: Words): string | undefined {
  const [, what, number] = /^(turn|point|curve)-(\d+)$/.exec(id) ?? [];
  if (number === undefined) return undefined;
  return words.findings[what === 'turn' || what === 'curve' ? what : 'point'](number);
}

function streamName(id: string, words: Words): string | undefined {
  const names: Readonly<Record<string, string>> = words.materials.streamNames;
  return Object.hasOwn(names, id) ? names[id] : undefined;
}
