/** Job folders, the company folder and rule sets as checked input, every value with its place. */
export { COMPANY_FOLDER, isJobName, listJobs } from './job-names.ts';
export { parseLimit } from './limit.ts';
export { type CompanyInput, overrideCompany, readCompany } from './read-company.ts';
export { type JobInput, readJob } from './read-job.ts';
export { type RulesInput, readRules } from './rules.ts';
export type { BuildSection, SlabInput } from './schema/build.ts';
export type { PlacesSection } from './schema/dump-places.ts';
export type {
  FormsSection,
  MachinesSection,
  TowVehicleSection,
  TrailersSection,
  YardSection,
} from './schema/equipment.ts';
export type { HeightsSection, LevelNoteInput } from './schema/heights.ts';
export type { BendInput, OutlineInput, SimpleBaseInput, StripInput } from './schema/outline.ts';
export type { PlacingSection } from './schema/placing.ts';
export type { PlanSection } from './schema/plan.ts';
export type { PourSection } from './schema/pour.ts';
export type { EditInput, PriceSection } from './schema/price.ts';
export type { PricingSection } from './schema/pricing.ts';
export type { ProductionSection } from './schema/production.ts';
export type { RuleChangesSection } from './schema/rules.ts';
export type { CompanySections, JobSections } from './schema/sections.ts';
export type { ExistingInput, SiteSection } from './schema/site.ts';
export type { SuppliersSection } from './schema/suppliers.ts';
export { sourceLines } from './source-lines.ts';
