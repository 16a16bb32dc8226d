import { num } from '../../calculate/figure.ts';
import { cuFtToCuYd } from '../../units/index.ts';
import { showDate } from '../show/index.ts';
import type { FactView, ListView, MaterialsView } from '../views.ts';
import { moneyOf, truckCostTable } from './concrete-cost.ts';
import { volumeTable } from './concrete-volume.ts';
import type { Made } from './made.ts';

/** Net, named allowances, order with its fees, and what to say to the plant; or the bags. */
export function concreteView(made: Made): MaterialsView['concrete'] {
  const { results, show, words } = made;
  const say = words.materials.concrete;
  const isTruck = results.concrete.data.supply === 'truck';
  return {
    heading: say.heading,
    volume: volumeTable(made),
    facts: [
      ...(isTruck ? truckFacts(made) : bagFacts(made)),
      { label: say.strengthFloor, value: show.strength(num(results.concrete.figures['strength-floor'])) },
    ],
    cost: isTruck ? truckCostTable(made) : null,
    script: isTruck ? script(made) : null,
  };
}

function truckFacts({ job, results, show, words }: Made): readonly FactView[] {
  const say = words.materials.concrete;
  const { truck, bags } = results.concrete.figures;
  const loads = results.concrete.data.loadsCuYd.map((load) => show.volume(load)).join(' + ');
  const isMore = num(truck.order) > num(truck.least);
  return [
    { label: say.order, value: show.volume(num(truck.order)) },
    ...(isMore
      ? [
          {
            label: say.whyMore,
            value: say.whyMoreValue(
              show.volume(num(truck.least)),
              moneyOf(truck['least-cost']),
              moneyOf(truck.cost),
            ),
          },
        ]
      : []),
    { label: say.loads, value: loads },
    {
      label: say.leftover,
      value: say.leftoverValue(
        show.volume(num(truck['left-over'])),
        job.site.access.leftOver ?? say.leftoverNowhere,
      ),
    },
    { label: say.why, value: say.whyTruck(moneyOf(truck.cost), moneyOf(bags.cost)) },
  ];
}

function bagFacts({ job, results, show, words }: Made): readonly FactView[] {
  const say = words.materials.concrete;
  const { truck, bags, total } = results.concrete.figures;
  const { bagged } = job.company.suppliers;
  const count = num(bags.count);
  const leftCuYd = Math.max(0, cuFtToCuYd(count * bagged.yieldCuFt) - num(total.needed));
  return [
    { label: say.bags, value: say.bagsValue(show.count(count), show.weight(bagged.weightLb)) },
    { label: say.leftover, value: show.volume(leftCuYd) },
    { label: say.why, value: say.whyBags(moneyOf(bags.cost), moneyOf(truck.cost)) },
  ];
}

function script({ job, results, show, words }: Made): ListView {
  const { script: say, scriptHeading } = words.materials.concrete;
  const pour = results.crew.data.days.find(({ kind, phase }) => kind === 'work' && phase === 'pour');
  const loads = results.concrete.data.loadsCuYd.map((load) => show.volume(load)).join(' + ');
  const { mix } = job.build;
  const { truckStands, washout } = job.site.access;
  return {
    heading: scriptHeading,
    items: [
      say.who(job.company.name, job.address),
      ...(pour === undefined ? [] : [say.when(showDate(pour.on, words.common))]),
      say.mix(
        show.strength(mix.strengthPsi),
        show.percent(mix.airRatio),
        show.size(mix.slumpIn),
        show.size(mix.aggregateIn),
      ),
      say.order(show.volume(num(results.concrete.figures.truck.order)), loads),
      say.limit,
      say.water,
      washout === null ? say.stands(truckStands) : say.washout(truckStands, washout),
    ],
  };
}
