import { num } from '../../calculate/figure.ts';
import { cuFtToCuYd } from '../../units/index.ts';
import type { Made } from '../made.ts';
import { orderedVolume, soldVolume } from '../parts/ordered.ts';
import type { FactView, MaterialsView } from '../views.ts';
import { moneyOf, truckCostTable } from './concrete-cost.ts';
import { volumeTable } from './concrete-volume.ts';
import { orderScript } from './order-script.ts';
import { otherWays, placingTable } from './placing.ts';

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
    placing: placingTable(made),
    script: isTruck ? orderScript(made) : null,
  };
}

function truckFacts(made: Made): readonly FactView[] {
  const { job, results, show, words } = made;
  const say = words.materials.concrete;
  const { truck, bags } = results.concrete.figures;
  const loads = results.concrete.data.loadsCuYd.map((load) => soldVolume(load, made)).join(' + ');
  const isMore = num(truck.order) > num(truck.least);
  const others = otherWays(made);
  return [
    { label: say.order, value: orderedVolume(num(truck.order), made) },
    ...(isMore
      ? [
          {
            label: say.whyMore,
            value: say.whyMoreValue(
              orderedVolume(num(truck.least), made),
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
    ...(others === null ? [] : [others]),
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
