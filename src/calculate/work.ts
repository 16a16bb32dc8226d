import type { CoreProblem } from '../problems/index.ts';
import { mmToIn, weekdayOf } from '../units/index.ts';
import type { TaskFigures } from './crew/index.ts';
import { type Figure, figure } from './figure.ts';
import { CHALK_STEPS } from './haul/index.ts';
import type { Job } from './job.ts';
import { shapeParts, type Topics } from './topics.ts';

/** The results of all topics of one job, without what compares it with other jobs. */
export type Work = NonNullable<ReturnType<typeof calcWork>['work']>;

/** As weekdays are numbered from Monday. */
const SATURDAY = 6;

/** Between two offsets of a curve: a foot, or a quarter of a metre. */
const OFFSET_STEP_IN = { us: 12, metric: mmToIn(250) } as const;
/** What a square corner is taped in: feet, or tenths of a metre. */
const SQUARE_UNIT_IN = { us: 12, metric: mmToIn(100) } as const;

/**
 * Runs the topics in their order. Where an outline cannot be closed nothing can be computed from
 * it: its problems come back and no work.
 */
export function calcWork(job: Job, topics: Topics) {
  const { site, build, plan, company } = job;
  const { slabs, mix } = build;
  const { suppliers } = company;

  const { closingErrorIn, joiningGapIn } = company.allowances;
  const limits = topics.tapeLimits({ closingErrorIn, joiningGapIn });
  const outline = topics.outline({
    slabs: topics.slabShapes(shapeParts(slabs)),
    existing: topics.existingShapes(shapeParts({ ...site.existing, ...site.hollow })),
    limits,
  });
  if (outline.problems.length > 0) return { work: null, problems: outline.problems };
  const shapes = outline.figures;
  const outlines = outline.data.slabs;
  const layout = topics.layout({
    shapes,
    outlines,
    corners: outline.data.corners,
    lies: outline.data.lies,
    stepIn: OFFSET_STEP_IN[job.unitSystem],
    unitIn: SQUARE_UNIT_IN[job.unitSystem],
  });

  const levels = topics.levels({
    heights: job.heights,
    existing: site.existing,
    plans: outline.data.plans,
    corners: layout.data.corners,
  });
  const tieIns = topics.tieIns({
    tieIns: job.tieIns,
    heights: job.heights,
    points: levels.figures.points,
    slabs,
    plans: outline.data.plans,
    corners: layout.data.corners,
  });
  const grades = topics.grades({
    heights: job.heights,
    points: levels.figures.points,
    tied: tieIns.data.surface,
    outlets: tieIns.data.outlets,
    keepDry: job.tieIns.keepDry,
    slabs,
    existing: site.existing,
    plans: outline.data.plans,
    corners: layout.data.corners,
  });

  const thickened = topics.thickened({ slabs, outlines, edges: outline.data.edges });
  const tearOut = topics.tearOut({
    existing: site.existing,
    hollow: site.hollow,
    posts: site.posts,
    oldSteps: site.oldSteps,
    green: site.green,
    chip: site.chip,
    slabs,
    shapes,
    outlines: outline.data.existing,
    dug: grades.data.soil,
    thickened: thickened.figures,
  });
  const breaking = topics.breaking({
    existing: site.existing,
    tearOut: tearOut.figures,
    shapes,
    outlines: outline.data.existing,
    production: company.production,
    machines: company.machines,
  });
  const flights = topics.flights({
    flights: site.flights,
    steps: build.steps,
    points: levels.figures.points,
    graded: grades.data.slabs,
  });
  const { steps } = flights.data;
  const fixtures = topics.fixtures({
    lids: job.lids,
    underSlab: site.underSlab,
    slabs,
    plans: outline.data.plans,
    corners: layout.data.corners,
    graded: grades.data.slabs,
  });
  const clearances = topics.clearances({ walls: job.walls, slabs, graded: grades.data.slabs });
  const profiles = topics.profiles({ profiles: job.profiles, graded: grades.data.slabs });
  const base = topics.base({
    slabs,
    shapes,
    posts: tearOut.figures.posts,
    allowances: company.allowances,
    supplier: suppliers.base,
    geotextile: suppliers.geotextile,
    machines: company.machines,
    baseMachine: company.production.base.machine,
  });
  const forms = topics.forms({ slabs, shapes, outlines, forms: company.forms });
  const joints = topics.joints({ slabs, shapes, outlines, lies: outline.data.lies, mix });
  const edges = topics.edges({
    slabs,
    shapes,
    outlines,
    edges: outline.data.edges,
    joints: joints.figures.slabs,
  });
  const reinforcement = topics.reinforcement({
    slabs,
    shapes,
    outlines,
    joints: joints.figures.slabs,
    jointLines: joints.data.lines,
    suppliers,
  });
  const laborRate = topics.laborRate({ plan, labor: company.labor });
  const laborUsdPerHr = laborRate.figures['labor-cost-per-hour'];
  const concrete = topics.concrete({
    slabs,
    steps,
    shapes,
    thickened: thickened.figures,
    mix,
    allowances: company.allowances,
    supplier: suppliers.concrete,
    bagged: suppliers.bagged,
    laborUsdPerHr,
    plans: outline.data.plans.slabs,
    access: site.access,
    placing: company.placing,
    placePace: company.production.place.pace,
    poursOnSaturday: plan.poursOn !== null && weekdayOf(plan.poursOn) === SATURDAY,
  });
  const haul = topics.haul({
    tearOut: tearOut.figures,
    cargo: tearOut.data.cargo,
    shapes,
    chalk: CHALK_STEPS[job.unitSystem],
    base: base.figures,
    baseSupplier: suppliers.base,
    baseRoomLb: site.baseRoomLb,
    trailers: topics.trailersOf({ all: company.trailers, ids: plan.trailers }),
    towVehicle: company.towVehicle,
    loadReserveLb: company.loadReserveLb,
    loadingHr: company.loadingHr,
    swapHr: company.swapHr,
    driverCount: plan.driverCount,
    places: company.places,
    day: topics.workingDay({
      firstOn: plan.startsOn,
      startsHr: company.labor.dayStartsHr,
      lengthHr: company.labor.dayHr,
    }),
    haulByOn: plan.haulByOn,
    yard: company.yard,
    machines: company.machines,
    production: company.production,
    brokenBy: topics.brokenBy(site),
    laborUsdPerHr,
  });
  const { supply } = concrete.data;
  const strength = topics.strength({ pour: job.pour, strengthPsi: concrete.figures.mix.strength });
  const crew = topics.crew({
    shapes,
    tearOut: tearOut.figures,
    breaking: breaking.figures,
    base: base.figures,
    forms: forms.figures,
    joints: joints.figures,
    edges: edges.figures,
    concrete: concrete.figures,
    haul: topics.hauled(haul.figures),
    existing: site.existing,
    hollow: site.hollow,
    oldSteps: site.oldSteps,
    chip: site.chip,
    slabs,
    steps,
    plan,
    labor: company.labor,
    production: company.production,
    supply,
    waits: strength.figures.waits,
  });
  const curing = topics.curing({
    pour: job.pour,
    slabs,
    areas: shapes.slabs,
    curedSqFt: quantityOf(crew.figures.tasks.cure),
    sundries: suppliers.sundries,
  });
  const cost = topics.cost({
    base: base.figures,
    forms: forms.figures,
    reinforcement: reinforcement.figures,
    concrete: concrete.figures,
    edges: edges.figures,
    crew: crew.figures,
    haul: haul.figures,
    laborUsdPerHr,
    firstPhasesShareDay: crew.data.firstPhasesShareDay,
    supply,
    production: company.production,
    machines: company.machines,
    towVehicle: company.towVehicle,
    suppliers,
    ownForms: company.forms,
    otherCosts: job.price.otherCosts,
    curing: curing.figures,
  });
  const price = topics.price({ cost: cost.figures, pricing: company.pricing });
  const safety = topics.safety({
    existing: site.existing,
    hollow: site.hollow,
    slabs,
    plan,
    production: company.production,
    machines: company.machines,
    tasks: crew.figures.tasks,
    days: crew.data.days,
    supply,
  });

  const work = {
    outline,
    layout,
    levels,
    tieIns,
    grades,
    thickened,
    tearOut,
    breaking,
    flights,
    clearances,
    profiles,
    fixtures,
    base,
    forms,
    joints,
    edges,
    reinforcement,
    laborRate,
    concrete,
    haul,
    strength,
    crew,
    curing,
    cost,
    price,
    safety,
  };
  const problems: CoreProblem[] = Object.values(work).flatMap((topic) => topic.problems);
  return { work, problems };
}

/** The area to cure; none where nothing is poured. */
function quantityOf(task: TaskFigures | undefined): Figure {
  return task?.quantity ?? figure({ value: 0, unit: 'sq ft', decimals: 0, formula: '0', inputs: {} });
}
