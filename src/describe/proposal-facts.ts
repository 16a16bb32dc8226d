import { num } from '../calculate/figure.ts';
import type { JobResults } from '../calculate/index.ts';
import type { EdgeJointKind, Job, Slab } from '../calculate/job.ts';
import { thingNamed } from '../calculate/parts.ts';
import { addDaysOn } from '../units/index.ts';
import { frameFactsOf } from './parts/frame-facts.ts';
import { isCountedTooMild } from './parts/mild-days.ts';
import { slabArea } from './parts/plan-areas.ts';
import { sawDayOn } from './parts/saw-day.ts';
import { slabWater, waterArrows } from './parts/slab-water.ts';
import type { ProposalFacts } from './proposal/index.ts';
import { publicWalkFacts } from './public-walk-facts.ts';

/**
 * Takes from a job and its results what the homeowner may be told. The type it fills has public
 * text, sizes and prices only; this is the one place where the office's data and the homeowner's
 * document meet.
 */
export function proposalFactsOf(job: Job, results: JobResults): ProposalFacts {
  const { company, site, build } = job;
  const { pricing } = company;
  return {
    frame: frameFactsOf(job),
    unitSystem: job.unitSystem,
    company: {
      licence: company.licence,
      insurance: company.insurance,
      warranty: pricing.warranty,
      clauses: pricing.clauses,
    },
    slabs: Object.values(build.slabs).map((slab) => slabFacts(slab, job, results)),
    steps: Object.values(results.flights.data.steps),
    flights: flightFacts(job, results),
    drains: Object.values(job.tieIns.drains).map(({ label, pipe }) => ({ label, to: pipe?.to ?? null })),
    garages: Object.values(job.tieIns.garages).map(({ label, lipIn }) => ({ label, lipIn })),
    publicWalks: publicWalkFacts(job, results),
    mix: { strengthPsi: num(results.concrete.figures.mix.strength), exposure: build.mix.exposure },
    removal: {
      things: Object.values(site.existing).map((thing) => ({
        label: thing.label,
        areaSqFt: num(thingNamed(results.outline.figures.existing, thing.id, 'thing').area),
        thicknessIn: thing.thicknessIn,
        thickestIn: thing.thicknessIs === 'measured' ? null : loadThicknessIn(thing.id, results),
        coating: thing.coating?.kind ?? null,
      })),
      hollow: Object.values(site.hollow).map(({ label, walls, footing, fill }) => ({
        label,
        wallIn: walls.thicknessIn,
        heightIn: walls.heightIn,
        hasFooting: footing !== null,
        fill: fill?.material ?? null,
      })),
      posts: Object.values(site.posts).map(({ label, count }) => ({ label, count })),
      oldSteps: Object.values(site.oldSteps).map(({ label, riserCount, widthIn }) => ({
        label,
        riserCount,
        widthIn,
      })),
      green: Object.values(site.green).map(({ label, looseCuYd }) => ({ label, looseCuYd })),
      chip: Object.values(site.chip).map(({ label, areaSqFt, thicknessIn }) => ({
        label,
        areaSqFt,
        thicknessIn,
      })),
      soilUnder: Object.values(build.slabs)
        .filter(({ id }) => results.tearOut.figures.soil[id] !== undefined)
        .map(({ label }) => label),
      totalLb: num(results.tearOut.figures.total.weight),
    },
    stays: site.stays,
    prices: priceFacts(results),
    payments: results.price.data.payments.map(({ label, price }, index) => ({
      label,
      shareRatio: pricing.payments[index]?.shareRatio ?? 0,
      amount: price,
    })),
    hidden: Object.values(job.price.hidden).flatMap(({ id, label }) => {
      const difference = results.hidden.data[id];
      return difference === undefined ? [] : [{ label, difference }];
    }),
    notIncluded: job.price.notIncluded,
    access: site.access,
    calendar: calendarFacts(job, results),
    validUntil: addDaysOn(job.preparedOn, pricing.validDays),
  };
}

function slabFacts(slab: Slab, job: Job, results: JobResults): ProposalFacts['slabs'][number] {
  const shape = thingNamed(results.outline.figures.slabs, slab.id, 'slab');
  const joints = thingNamed(results.joints.figures.slabs, slab.id, 'slab');
  const layout = thingNamed(results.layout.figures.slabs, slab.id, 'slab');
  const apart = thingNamed(results.edges.data.apart, slab.id, 'slab');
  const { slabOfLid, slabsOver } = results.fixtures.data;
  const joined = thingNamed(results.edges.data.joints, slab.id, 'slab').filter(
    ({ into }) => into !== 'new-slab',
  );
  const isJoined = (asked: EdgeJointKind) => joined.some(({ how }) => how === asked);
  return {
    id: slab.id,
    label: slab.label,
    use: slab.use,
    finish: slab.finish,
    areaSqFt: num(shape.area),
    thicknessIn: slab.thicknessIn,
    baseIn: slab.baseIn,
    hasFabric: slab.geotextile,
    fall: slab.fall,
    reinforcement: slab.reinforcement,
    panelCount: num(joints.panels),
    longestPanelIn: num(joints['panel-length']),
    curveRadiiIn: Object.values(layout.curves ?? {}).map(({ radius }) => num(radius)),
    alongHouseFt: apart.houseFt,
    alongStaysFt: apart.staysFt,
    joinedBy: { dowels: isJoined('dowelled'), ties: isJoined('tied') },
    note: slab.note,
    lids: Object.values(job.lids).flatMap(({ id, label }) => (slabOfLid[id] === slab.id ? [label] : [])),
    pipes: Object.values(job.site.underSlab).flatMap(({ id, label }) =>
      slabsOver[id]?.includes(slab.id) === true ? [label] : [],
    ),
    plan: slabArea(results, slab),
    falls: waterArrows(slab, results),
    water: slabWater(slab, results),
  };
}

function flightFacts(job: Job, results: JobResults): ProposalFacts['flights'] {
  return Object.values(job.site.flights)
    .map(({ id, label, risersIn }) => {
      const { risers } = thingNamed(results.flights.figures.stays, id, 'flight');
      const thenIn = Object.values(risers).map(num);
      const [nowIn = 0] = risersIn;
      return { label, nowIn, leastIn: Math.min(...thenIn), mostIn: Math.max(...thenIn) };
    })
    .filter(({ nowIn, leastIn, mostIn }) => leastIn !== nowIn || mostIn !== nowIn);
}

/** What hauling is planned for. */
function loadThicknessIn(id: string, results: JobResults): number {
  return num(thingNamed(results.tearOut.figures.existing, id, 'thing')['load-thickness']);
}

function priceFacts(results: JobResults): ProposalFacts['prices'] {
  const { lines, minimumChargeAddition, tax, total } = results.price.data;
  return {
    groups: lines.filter(({ price }) => price.gt(0)).map(({ group, price }) => ({ group, amount: price })),
    minimum: minimumChargeAddition.gt(0) ? minimumChargeAddition : null,
    tax: tax.gt(0) ? tax : null,
    total,
  };
}

function calendarFacts(job: Job, results: JobResults): ProposalFacts['calendar'] {
  const { days, openings } = results.crew.data;
  const waitsUntil = results.pourDay?.data.waitsUntil;
  const work = days.filter(({ kind }) => kind === 'work');
  const lastOn = work.at(-1)?.on ?? job.plan.startsOn;
  return {
    startsOn: work[0]?.on ?? job.plan.startsOn,
    finishesOn: lastOn,
    walkOn: openings?.walkOn ?? lastOn,
    driveOn: openings?.driveOn ?? lastOn,
    curing:
      waitsUntil === undefined ? null : { method: results.curing.data.method, untilOn: waitsUntil.cure },
    sawOn: sawDayOn(results),
    heavyOn: waitsUntil?.heavy ?? null,
    sealOn: waitsUntil?.seal ?? null,
    isEstimated: results.strength.data.isEstimated,
    isTooMild: isCountedTooMild(results),
    hasDriveway: Object.values(job.build.slabs).some(({ use }) => use === 'driveway'),
    days: days.map(({ on, kind, phase }) => ({ on, phase: kind === 'cure' ? 'cure' : phase })),
  };
}
