import { calcSafety } from '../../src/calculate/safety/index.ts';
import { respiratorApf } from '../../src/calculate/safety/silica.ts';
import { SILICA_TABLE, type SilicaRowName, silicaRow } from '../../src/calculate/safety/silica-table.ts';
import { washWaterGal } from '../../src/calculate/safety/wash-water.ts';
import { galToL } from '../../src/units/index.ts';
import { crewOf, existing, fig, machine, production, row, someWork } from '../calculate/crew/a-plan.ts';
import { aSlab } from '../calculate/slabs.ts';
import { runChecks } from './load.ts';

const ASSESS = 'not on the table: assess exposure under paragraph (d)';

type Column = { row: SilicaRowName; place: 'outdoors' | 'indoors'; hours: number };

/** One person at a breaker and a handheld saw on one day, or one machine alone. */
function shift(given: {
  breakerHr: number;
  sawHr: number;
  breaker: Parameters<typeof machine>[0];
  cab?: 'enclosed' | 'open';
  wet?: boolean;
}) {
  const cab = given.cab ?? 'none';
  const wet = given.wet ?? true;
  const machines = {
    breaker: machine(given.breaker, { id: 'breaker', cab, wet }),
    saw: machine('cut-off-saw', { id: 'saw', wet }),
  };
  const rows = production({
    'break-out': row('break-out', '1 sq ft per h', 1, { machine: 'breaker', operator: 'ana' }),
    'saw-cut': row('saw-cut', '1 ft per h', 1, { machine: 'saw', operator: 'ana' }),
  });
  const work = someWork();
  const crew = crewOf({
    production: rows,
    shapes: { ...work.shapes, existing: { 'old-drive': { area: fig(given.breakerHr, 'sq ft') } } },
    tearOut: {
      hollow: {},
      posts: {},
      'old-steps': {},
      soil: {},
      total: { 'saw-cut': fig(given.sawHr, 'ft') },
    },
  });
  return calcSafety({
    existing,
    hollow: {},
    slabs: { drive: aSlab() },
    plan: { crew: ['ana', 'ben', 'cal'], startsOn: '2026-05-04' },
    production: rows,
    machines: { ...machines, 'walk-behind-saw': machine('walk-behind-saw') },
    tasks: crew.figures.tasks,
    days: crew.data.days,
    supply: 'truck',
  }).data.silica;
}

runChecks('safety', {
  'rows of the table': () => new Set(SILICA_TABLE.map(({ row: name }) => name.split(',')[0])).size,
  respirator: ({ row: name, place, hours }: Column) =>
    respiratorApf(silicaRow(name), { hours, place }) ?? ASSESS,
  'respirators of one person': ({ breakerHr, sawHr }: { breakerHr: number; sawHr: number }) => {
    const silica = shift({ breakerHr, sawHr, breaker: 'jackhammer' });
    return ['break-out', 'saw-cut'].map((task) => silica.find((one) => one.task === task)?.apf ?? ASSESS);
  },
  'breaker on a machine': ({ cab }: { cab: 'enclosed' | 'open' }) => {
    const task = shift({ breakerHr: 2, sawHr: 1, breaker: 'loader-with-breaker', cab }).find(
      (one) => one.task === 'break-out',
    );
    return task?.apf == null ? [ASSESS, ...(task?.missing ?? [])] : [task.apf, ...task.controls];
  },
  'handheld saw': ({ water }: { water: boolean }) => {
    const task = shift({ breakerHr: 1, sawHr: 2, breaker: 'jackhammer', wet: water }).find(
      (one) => one.task === 'saw-cut',
    );
    return task?.apf ?? ASSESS;
  },
  'wash water': ({ people, days, unit }: { people: number; days: number; unit: 'gal' | 'L' }) =>
    [5, 7].map((galPerPersonDay) => {
      const needGal = washWaterGal({ peopleCount: people, dayCount: days, galPerPersonDay });
      return unit === 'gal' ? needGal : galToL(needGal);
    }),
});
