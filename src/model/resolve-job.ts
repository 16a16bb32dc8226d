import type { Job } from '../calculate/job.ts';
import type { Rule } from '../calculate/rule.ts';
import type { LocatedProblem, Origin, Origins } from '../problems/index.ts';
import {
  type CompanyInput,
  type CompanySections,
  type JobInput,
  type JobSections,
  overrideCompany,
  type RulesInput,
} from '../read/index.ts';
import { buildOf } from './build.ts';
import { checkJob, checkProduction } from './check-job.ts';
import { checkPlaces } from './check-places.ts';
import { companyOf } from './company.ts';
import { SHIPPED, shippedOrigins } from './constants.ts';
import { lidsOf } from './fixtures.ts';
import { heightsOf } from './heights.ts';
import { pourOf } from './pour.ts';
import { priceOf } from './price.ts';
import { aFinder } from './problems-found.ts';
import { profilesOf } from './profiles.ts';
import { rulesOf } from './rules.ts';
import { siteOf } from './site.ts';
import { tieInsOf } from './tie-ins.ts';
import { wallsOf } from './walls.ts';

export type ResolvedJob = {
  /** Null where anything is wrong with the job, the company or the rules. */
  readonly job: Job | null;
  readonly origins: Origins;
  /** Those of the job, and of what it makes of the company; not those that `readCompany` and `readRules` gave. */
  readonly problems: readonly LocatedProblem[];
};

/**
 * One job with every reference followed and every constant filled in, and where each value came from.
 *
 * @param id Name of the job in the output; its folder's name as a rule.
 */
export function resolveJob(
  input: JobInput,
  company: CompanyInput,
  rules: RulesInput,
  id: string = input.id,
): ResolvedJob {
  const own = overrideCompany(company, input);
  const written = new Map<string, Origin>([...input.origins, ...own.origins]);
  const finder = aFinder(written, input.folder);
  checkJob(finder);
  checkProduction(finder);
  checkPlaces(finder);
  const names = input.sections.job?.['rule-sets'] ?? (written.has('job.rule-sets') ? [] : SHIPPED.ruleSets);
  const jobRules = rulesOf(finder, names, rules, own.sections.rules);
  const origins = new Map([...written, ...shippedOrigins(written)]);

  const problems = [...input.problems, ...own.problems, ...finder.found];
  const isSound = [problems, company.problems, rules.problems].every((list) => list.length === 0);
  return { job: isSound ? jobOf(id, allOf(input), allOfCompany(own), jobRules) : null, origins, problems };
}

function jobOf(id: string, sections: JobSections, company: CompanySections, rules: readonly Rule[]): Job {
  const { job, site, build, heights, plan, pour, price } = sections;
  return {
    id,
    number: job.number,
    label: job.label,
    client: { name: job.client.name, phone: job.client.phone ?? null, email: job.client.email ?? null },
    address: job.address,
    preparedOn: job['prepared-on'],
    revision: job.revision ?? SHIPPED.revision,
    stage: job.stage ?? SHIPPED.stage,
    unitSystem: job.units ?? SHIPPED.units,
    rules,
    acknowledged: (job.acknowledged ?? []).map(({ finding, where, reason }) => ({ finding, where, reason })),
    site: siteOf(site),
    build: buildOf(build),
    heights: heightsOf(heights),
    walls: wallsOf(heights),
    profiles: profilesOf(heights),
    lids: lidsOf(heights),
    tieIns: tieInsOf(heights),
    plan: {
      startsOn: plan['starts-on'],
      crew: plan.crew,
      trailers: plan.trailers,
      driverCount: plan.drivers ?? SHIPPED.driverCount,
      haulByOn: plan['haul-by'] ?? null,
      poursOn: plan['pours-on'] ?? null,
    },
    pour: pourOf(pour),
    price: priceOf(price),
    company: companyOf(company),
  };
}

/** @throws {RangeError} If a section is not there although no problem said so. */
function allOf({ sections }: JobInput): JobSections {
  const { job, site, build, heights, plan, pour, price } = sections;
  if (!job || !site || !build || !plan)
    throw new RangeError(`a section of the job is missing: ${Object.keys(sections).join(', ')}`);
  return { job, site, build, heights, plan, pour, price };
}

/** @throws {RangeError} If a section is not there although no problem said so. */
function allOfCompany({ sections }: Pick<CompanyInput, 'sections'>): CompanySections {
  const missing = (
    [
      'company',
      'labor',
      'production',
      'allowances',
      'machines',
      'trailers',
      'tow-vehicle',
      'load-reserve',
      'loading-time',
      'forms',
      'places',
      'suppliers',
      'pricing',
      'safety',
    ] as const
  ).filter((name) => sections[name] === undefined);
  if (missing.length > 0) throw new RangeError(`sections of the company are missing: ${missing.join(', ')}`);
  return sections as CompanySections;
}
