import type * as z from 'zod';
import type { Quantity } from '../../units/index.ts';
import { type BuildSection, buildSection } from './build.ts';
import { type CompanySection, companySection } from './company.ts';
import { type PlacesSection, placesSection } from './dump-places.ts';
import {
  type AllowancesSection,
  allowancesSection,
  type FormsSection,
  formsSection,
  loadingTimeSection,
  loadReserveSection,
  type MachinesSection,
  machinesSection,
  type SafetySection,
  safetySection,
  swapTimeSection,
  type TowVehicleSection,
  type TrailersSection,
  towVehicleSection,
  trailersSection,
  type YardSection,
  yardSection,
} from './equipment.ts';
import { type HeightsSection, heightsSection } from './heights.ts';
import { type JobSection, jobSection } from './job.ts';
import { type LaborSection, laborSection } from './labor.ts';
import { type PlacingSection, placingSection } from './placing.ts';
import { type PlanSection, planSection } from './plan.ts';
import { type PourSection, pourSection } from './pour.ts';
import { type PriceSection, priceSection } from './price.ts';
import { type PricingSection, pricingSection } from './pricing.ts';
import { type ProductionSection, productionSection } from './production.ts';
import { type RuleChangesSection, ruleChangesSection } from './rules.ts';
import { type SiteSection, siteSection } from './site.ts';
import { type SuppliersSection, suppliersSection } from './suppliers.ts';

/** The sections of a job, as read. */
export type JobSections = {
  readonly job: JobSection;
  readonly site: SiteSection;
  readonly build: BuildSection;
  readonly heights: HeightsSection | undefined;
  readonly plan: PlanSection;
  readonly pour: PourSection | undefined;
  readonly price: PriceSection | undefined;
};

/** The sections of the company folder, as read. */
export type CompanySections = {
  readonly company: CompanySection;
  readonly labor: LaborSection;
  readonly production: ProductionSection;
  readonly placing: PlacingSection | undefined;
  readonly allowances: AllowancesSection;
  readonly machines: MachinesSection;
  readonly trailers: TrailersSection;
  readonly 'tow-vehicle': TowVehicleSection;
  readonly 'load-reserve': Quantity<'weight'>;
  readonly 'loading-time': Quantity<'duration'>;
  readonly 'swap-time': Quantity<'duration'> | undefined;
  readonly yard: YardSection | undefined;
  readonly forms: FormsSection;
  readonly places: PlacesSection;
  readonly suppliers: SuppliersSection;
  readonly pricing: PricingSection;
  readonly safety: SafetySection;
  readonly rules: RuleChangesSection | undefined;
};

export type Section = { readonly schema: () => z.ZodType; readonly isRequired: boolean };

const required = (schema: () => z.ZodType): Section => ({ schema, isRequired: true });
const optional = (schema: () => z.ZodType): Section => ({ schema, isRequired: false });

export const JOB_SECTIONS: { readonly [K in keyof JobSections]: Section } = {
  job: required(jobSection),
  site: required(siteSection),
  build: required(buildSection),
  heights: optional(heightsSection),
  plan: required(planSection),
  pour: optional(pourSection),
  price: optional(priceSection),
};

/** In a job, the company's own sections under this key replace what the company folder says. */
export const OVERRIDES = 'company';

export const COMPANY_SECTIONS: { readonly [K in keyof CompanySections]: Section } = {
  company: required(companySection),
  labor: required(laborSection),
  production: required(productionSection),
  placing: optional(placingSection),
  allowances: required(allowancesSection),
  machines: required(machinesSection),
  trailers: required(trailersSection),
  'tow-vehicle': required(towVehicleSection),
  'load-reserve': required(loadReserveSection),
  'loading-time': required(loadingTimeSection),
  'swap-time': optional(swapTimeSection),
  yard: optional(yardSection),
  forms: required(formsSection),
  places: required(placesSection),
  suppliers: required(suppliersSection),
  pricing: required(pricingSection),
  safety: required(safetySection),
  rules: optional(ruleChangesSection),
};
