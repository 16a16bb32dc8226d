import type { Figure } from '../../calculate/figure.ts';
import { num } from '../../calculate/figure.ts';
import { formatMoney, type Rate, Usd } from '../../units/index.ts';
import type { Made } from '../made.ts';
import { soldVolume } from '../parts/ordered.ts';
import { end, row, start, totalRow } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** What the plant bills, line by line. */
export function truckCostTable(made: Made): TableView {
  const { job, results, words } = made;
  const say = words.materials.concrete.cost;
  const { truck } = results.concrete.figures;
  const { price, fuelFee, saturdayFee } = job.company.suppliers.concrete;
  const line = (what: string, how: string, amount: Figure | undefined) =>
    amount === undefined || new Usd(amount.value).isZero() ? [] : [row(what, how, moneyOf(amount))];
  return {
    caption: say.caption,
    columns: [start(say.line), start(say.how), end(say.amount)],
    rows: [
      ...line(
        say.concrete,
        say.times(soldVolume(num(truck.order), made), rateWords(price, say)),
        truck.concrete,
      ),
      ...line(
        say.additives,
        job.build.mix.additives.map((one) => words.common.additives[one]).join(', '),
        truck.additives,
      ),
      ...line(say.shortLoad, '', truck['short-load-fee']),
      ...line(say.fuel, fuelFee === null ? '' : rateWords(fuelFee, say), truck['fuel-fee']),
      ...line(say.saturday, saturdayFee === null ? '' : rateWords(saturdayFee, say), truck['saturday-fee']),
      ...line(say.wait, waitHow(made), truck['wait-fee']),
      totalRow(say.total, '', moneyOf(truck.cost)),
    ],
  };
}

function waitHow({ job, results, show, words }: Made): string {
  const say = words.materials.concrete.cost;
  const { 'wait-per-yard': perYard } = results.concrete.figures.delivery;
  const { waitFee } = job.company.suppliers.concrete;
  if (perYard === undefined || waitFee === null) return '';
  return say.waitHow(show.minutes(num(perYard)), rateWords(waitFee, say));
}

type RateSay = Made['words']['materials']['concrete']['cost'];

/** @throws {RangeError} If concrete is not sold by the unit, which reading refuses. */
function rateWords({ amountUsd, perUnit }: Rate, say: RateSay): string {
  if (perUnit !== 'load' && perUnit !== 'yd3' && perUnit !== 'm3' && perUnit !== 'cu ft' && perUnit !== 'h')
    throw new RangeError(`concrete is not sold by the ${perUnit}`);
  return say.per(formatMoney(amountUsd), perUnit);
}

export function moneyOf({ value }: Figure): string {
  return formatMoney(new Usd(value));
}
