import type { Company, MethodTask, ProductionRow, TaskId } from '../calculate/job.ts';
import type { CompanySections, PricingSection, ProductionSection } from '../read/index.ts';
import { SHIPPED } from './constants.ts';
import { placesOf } from './dump-places.ts';
import { formsOf, machinesOf, towVehicleOf, trailersOf, yardOf } from './equipment.ts';
import { placingOf } from './placing.ts';
import { inCoreUnit, inCoreUnitOrNull, mapThings } from './quantity.ts';
import { suppliersOf } from './suppliers.ts';

const MIN_PER_HR = 60;

export function companyOf(input: CompanySections): Company {
  const { company, labor, allowances, safety } = input;
  return {
    name: company.name,
    address: company.address,
    phone: company.phone,
    email: company.email,
    licence: company.licence,
    insurance: company.insurance,
    paper: company.paper,
    labor: {
      burdenRatio: inCoreUnit(labor.burden),
      dayHr: inCoreUnit(labor.day),
      dayStartsHr:
        labor['day-starts'] === undefined ? SHIPPED.dayStartsHr : labor['day-starts'].minutes / MIN_PER_HR,
      people: mapThings(labor.people, (id, { label, wage }) => ({ id, label, wage })),
    },
    machines: machinesOf(input.machines),
    trailers: trailersOf(input.trailers),
    towVehicle: towVehicleOf(input['tow-vehicle']),
    loadReserveLb: inCoreUnit(input['load-reserve']),
    loadingHr: inCoreUnit(input['loading-time']),
    swapHr: inCoreUnitOrNull(input['swap-time']),
    yard: yardOf(input.yard),
    places: placesOf(input.places),
    suppliers: suppliersOf(input.suppliers),
    forms: formsOf(input.forms),
    allowances: {
      baseUnevennessIn: inCoreUnit(allowances['base-unevenness']),
      spillRatio: inCoreUnit(allowances.spill),
      formBulgeIn: inCoreUnitOrNull(allowances['form-bulge']) ?? SHIPPED.formBulgeIn,
      baseMarginIn: inCoreUnit(allowances['base-margin']),
      closingErrorIn: inCoreUnitOrNull(allowances['closing-error']) ?? SHIPPED.closingErrorIn,
      joiningGapIn: inCoreUnitOrNull(allowances['joining-gap']) ?? SHIPPED.joiningGapIn,
    },
    production: productionOf(input.production),
    placing: placingOf(input.placing),
    pricing: pricingOf(input.pricing),
    safety: {
      firstAidPerson: safety['first-aid-person'],
      kitPlace: safety['kit-place'],
      calls: safety.calls,
    },
  };
}

function productionOf(input: ProductionSection): Company['production'] {
  const made = (task: TaskId, written: ProductionSection['break-out']): ProductionRow => {
    const { pace, people, machine = null, operator = null } = written;
    return { task, pace, people, machine, operator };
  };
  const row = (task: Exclude<TaskId, MethodTask>) => made(task, input[task]);
  const rowIfGiven = (task: MethodTask) => {
    const written = input[task];
    return written === undefined ? {} : { [task]: made(task, written) };
  };
  return {
    'set-up': row('set-up'),
    'saw-cut': row('saw-cut'),
    'break-out': row('break-out'),
    ...rowIfGiven('break-out-by-hand'),
    ...rowIfGiven('saw-and-lift'),
    ...rowIfGiven('chip'),
    ...rowIfGiven('drill'),
    dig: row('dig'),
    base: row('base'),
    form: row('form'),
    reinforce: row('reinforce'),
    place: row('place'),
    finish: row('finish'),
    cure: row('cure'),
    'saw-joints': row('saw-joints'),
    strip: row('strip'),
    backfill: row('backfill'),
    clean: row('clean'),
  };
}

function pricingOf(input: PricingSection): Company['pricing'] {
  return {
    overheadRatio: inCoreUnit(input.overhead),
    marginRatio: inCoreUnit(input.margin),
    taxRatio: inCoreUnit(input.tax),
    taxOn: input['tax-on'],
    minimumChargeUsd: input['minimum-charge'],
    payments: input.payments.map(({ label, share }) => ({ label, shareRatio: inCoreUnit(share) })),
    validDays: input['valid-for'],
    warranty: input.warranty,
    clauses: Object.values(input.clauses ?? {}).map(({ question, answer }) => ({ question, answer })),
  };
}
