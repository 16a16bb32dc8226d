import { num } from '../../calculate/figure.ts';
import { cuFtToCuYd, formatMoney, Usd } from '../../units/index.ts';
import { showDate } from '../show/index.ts';
import type { FactView, ListView, MaterialsView } from '../views.ts';
import type { Made } from './made.ts';

/** Net, named allowances, order, and what to say to the plant; or the bags. */
export function concreteView(made: Made): MaterialsView['concrete'] {
  const { results, show, words } = made;
  const say = words.materials.concrete;
  const { total } = results.concrete.figures;
  const isTruck = results.concrete.data.supply === 'truck';
  return {
    heading: say.heading,
    facts: [
      { label: say.net, value: show.volume(num(total.net)) },
      { label: say.unevenness, value: show.volume(num(total.unevenness)) },
      { label: say.spill, value: show.volume(num(total.spill)) },
      { label: say.needed, value: show.volume(num(total.needed)) },
      ...(isTruck ? truckFacts(made) : bagFacts(made)),
      { label: say.strengthFloor, value: show.strength(num(results.concrete.figures['strength-floor'])) },
    ],
    script: isTruck ? script(made) : null,
  };
}

function truckFacts({ results, show, words }: Made): readonly FactView[] {
  const say = words.materials.concrete;
  const { truck, bags, total } = results.concrete.figures;
  const loads = results.concrete.data.loadsCuYd.map((load) => show.volume(load)).join(' + ');
  const feeUsd = new Usd(truck['short-load-fee'].value);
  return [
    { label: say.order, value: show.volume(num(truck.order)) },
    { label: say.loads, value: loads },
    ...(feeUsd.gt(0) ? [{ label: say.shortLoad, value: formatMoney(feeUsd) }] : []),
    { label: say.leftover, value: show.volume(num(truck.order) - num(total.needed)) },
    { label: say.why, value: say.whyTruck(money(truck.cost.value), money(bags.cost.value)) },
  ];
}

function bagFacts({ job, results, show, words }: Made): readonly FactView[] {
  const say = words.materials.concrete;
  const { truck, bags, total } = results.concrete.figures;
  const { bagged } = job.company.suppliers;
  const count = num(bags.count);
  return [
    { label: say.bags, value: say.bagsValue(show.count(count), show.weight(bagged.weightLb)) },
    { label: say.leftover, value: show.volume(cuFtToCuYd(count * bagged.yieldCuFt) - num(total.needed)) },
    { label: say.why, value: say.whyBags(money(bags.cost.value), money(truck.cost.value)) },
  ];
}

function script({ job, results, show, words }: Made): ListView {
  const { script: say, scriptHeading } = words.materials.concrete;
  const pour = results.crew.data.days.find(({ kind, phase }) => kind === 'work' && phase === 'pour');
  const loads = results.concrete.data.loadsCuYd.map((load) => show.volume(load)).join(' + ');
  const { mix } = job.build;
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
      say.washout(job.site.access.truckStands),
    ],
  };
}

function money(value: Parameters<typeof formatMoney>[0] | number): string {
  return formatMoney(new Usd(value));
}
