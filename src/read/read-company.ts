import type { LocatedProblem, Origins } from '../problems/index.ts';
import { checkSection } from './check-section.ts';
import { missingSections, readFolder, unknownSections } from './read-folder.ts';
import { checkSections, type JobInput, originsOf, requiredOf } from './read-job.ts';
import { COMPANY_SECTIONS, type CompanySections, type Section } from './schema/sections.ts';
import { type MapEntry, type MapNode, mergeTrees } from './tree.ts';

/** What the company folder says, checked; a section is left out where it could not be read. */
export type CompanyInput = {
  readonly folder: string;
  readonly files: readonly string[];
  readonly sections: Partial<CompanySections>;
  readonly origins: Origins;
  readonly problems: readonly LocatedProblem[];
  /** The sections as they stand, to be overridden by a job. */
  readonly root: MapNode;
};

const COMPANY_KEYS: readonly string[] = Object.keys(COMPANY_SECTIONS);

/** Reads the company folder: any of its files may hold any section, each section once. */
export function readCompany(folder: string): CompanyInput {
  const read = readFolder(folder, { from: 'company', sections: COMPANY_KEYS, mainFile: null });
  const { root } = read;
  const problems = [...read.problems, ...unknownSections(root.entries, COMPANY_KEYS, 'company-file')];
  if (read.isWhole) {
    const wanted = { required: requiredOf(COMPANY_SECTIONS), known: COMPANY_KEYS };
    problems.push(...missingSections(root, wanted, { file: folder, ownFiles: false }));
  }
  const checked = checkSections(root, COMPANY_SECTIONS);
  return {
    folder,
    files: read.files,
    sections: checked.sections,
    origins: originsOf(root, COMPANY_KEYS, companyPath),
    problems: [...problems, ...checked.problems],
    root,
  };
}

/** The company as one job has it: maps merged by key, everything else replaced. */
export function overrideCompany(
  company: CompanyInput,
  job: JobInput,
): Omit<CompanyInput, 'problems'> & {
  /** Only those that stand in the files of the job. */
  readonly problems: readonly LocatedProblem[];
} {
  const { overrides } = job;
  if (overrides === null) return { ...company, problems: [] };
  const problems = [...unknownSections(overrides.entries, COMPANY_KEYS, 'overrides')];
  const sections: Record<string, unknown> = { ...company.sections };
  const entries = new Map(company.root.entries);
  for (const [name, entry] of overrides.entries) {
    const section: Section | undefined = Object.hasOwn(COMPANY_SECTIONS, name)
      ? COMPANY_SECTIONS[name as keyof CompanySections]
      : undefined;
    if (section === undefined || entry.node.isBroken) continue;
    const merged = merge(entries.get(name), entry);
    entries.set(name, merged);
    const checked = checkSection(merged.node, section.schema());
    if (checked.value === undefined) delete sections[name];
    else sections[name] = checked.value;
    problems.push(...checked.problems.filter(({ spot }) => job.files.includes(spot.file)));
  }
  const root = { ...company.root, entries };
  return {
    ...company,
    sections,
    origins: originsOf(root, COMPANY_KEYS, companyPath),
    problems,
    root,
  };
}

function merge(below: MapEntry | undefined, above: MapEntry): MapEntry {
  return below === undefined ? above : { ...above, node: mergeTrees(below.node, above.node) };
}

/** The company's own particulars (`company.name`) stand beside its sections (`company.pricing`). */
function companyPath(section: string): string {
  return section === 'company' ? 'company' : `company.${section}`;
}
