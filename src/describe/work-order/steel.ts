import { num } from '../../calculate/figure.ts';
import type { Slab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { type BarStock, barLapIn, barTable, type CutPiece } from '../../calculate/reinforcement/index.ts';
import type { Made } from '../made.ts';
import { steelPlanAreas } from '../parts/steel-plan-areas.ts';
import { barSupplier, chairsText, steelAmount, steelWhat } from '../parts/steel-words.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { FiguredDrawing, TableView, WorkOrderView } from '../views.ts';
import { crewPlan } from './crew-plan.ts';

/** Mesh and bars by slab; null where no slab has steel. */
export function steelTable(made: Made): TableView | null {
  const { job, results, show, words } = made;
  const { steel: say } = words;
  const rows = Object.values(job.build.slabs).flatMap((slab) => {
    const figures = results.reinforcement.figures.slabs[slab.id];
    if (figures === undefined) return [];
    const ties = 'ties' in figures ? show.count(num(figures.ties)) : '';
    return [
      row(
        slab.label,
        steelWhat(slab, made),
        layoutText(slab, made),
        steelAmount(figures, made),
        chairsText(figures, made),
        ties,
      ),
    ];
  });
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.what), start(say.layout), end(say.amount), end(say.chairs), end(say.ties)],
    rows,
  );
}

function layoutText(slab: Slab, made: Made): string {
  const { job, results, show, words } = made;
  const { steel: say } = words;
  const { reinforcement: steel } = slab;
  const figures = results.reinforcement.figures.slabs[slab.id];
  if (figures === undefined || steel.kind === 'none') return '';
  const cover = show.size(num(figures.cover));
  const diagonals = num(figures.diagonals);
  const extra = diagonals === 0 ? [] : [say.diagonals(diagonals)];
  if (steel.kind === 'mesh' || !('laps' in figures))
    return [say.meshLayout(show.size(job.company.suppliers.mesh.lapIn), cover), ...extra].join(say.and);
  const { lapDiameters } = barSupplier(steel, job.company);
  const { diameterIn } = barTable[steel.material][steel.size];
  const lap = show.size(barLapIn({ lapDiameters, diameterIn }));
  const bent = num(figures['bent-pieces']);
  const bentText = steel.material === 'steel' ? say.bentHere(bent, lap) : say.bentOrdered(bent, lap);
  return [
    say.barsLayout(num(figures['bars-along']), num(figures['bars-across']), cover),
    ...(num(figures.laps) === 0 ? [] : [say.lap(lap)]),
    ...extra,
    ...(bent === 0 ? [] : [bentText]),
  ].join(say.and);
}

/** Where each bar lies, and what is cut out of what; null where no bar is. */
export function barsView(made: Made): WorkOrderView['bars'] {
  const cutList = cutListTable(made);
  const cutPlan = cutPlanTable(made);
  if (cutList === null || cutPlan === null) return null;
  return { plan: barPlan(made), notes: notes(made), cutList, cutPlan };
}

function barPlan(made: Made): FiguredDrawing {
  const { job, results, words } = made;
  const areas = steelPlanAreas(job, results);
  return crewPlan({ id: 'work-order-bars', heading: words.common.drawing.barPlan, areas }, made);
}

function notes({ job, results, words }: Made): readonly string[] {
  const { plan: say } = words.steel;
  const slabs = Object.values(job.build.slabs);
  const onJoints = slabs.flatMap((slab) => {
    const figures = results.reinforcement.figures.slabs[slab.id];
    const count = figures !== undefined && 'laps-on-joints' in figures ? num(figures['laps-on-joints']) : 0;
    return count === 0 ? [] : [say.onJoint(count, slab.label)];
  });
  const hasGlassFibre = slabs.some(
    ({ reinforcement: steel }) => steel.kind === 'bars' && steel.material === 'glass-fibre',
  );
  return [say.how, ...onJoints, ...(hasGlassFibre ? [say.glassFibre] : [])];
}

/** Every length that is cut, and where it goes. */
function cutListTable(made: Made): TableView | null {
  const { results, show, words } = made;
  const { cutList: say, bar } = words.steel;
  return tableOrNull(
    say.caption,
    [start(say.bar), end(say.length), end(say.count), start(say.places)],
    Object.values(results.reinforcement.data.stock).flatMap(({ material, size, pieces }) =>
      pieces.map((piece) =>
        row(
          bar[material](size),
          show.length(piece.lengthIn),
          show.count(piece.count),
          placesText(piece, made),
        ),
      ),
    ),
  );
}

function placesText({ places }: CutPiece, { job, words }: Made): string {
  const { cutList: say, and } = words.steel;
  const slabs = [...new Set(places.map(({ slab }) => slab))];
  return slabs
    .map((id) => {
      const own = places.filter(({ slab }) => slab === id);
      const what = own.map(({ as, count }) => say.as[as](count)).join(and);
      return say.place(thingNamed(job.build.slabs, id, 'slab').label, what);
    })
    .join(say.andPlace);
}

/** Which stock bar gives which pieces. */
function cutPlanTable(made: Made): TableView | null {
  const { results, words } = made;
  const { cutPlan: say } = words.steel;
  return tableOrNull(
    say.caption,
    [start(say.bar), end(say.take), end(say.stock), start(say.cuts), end(say.left)],
    Object.entries(results.reinforcement.data.stock).flatMap(([key, stock]) => cutPlanRows(key, stock, made)),
  );
}

function cutPlanRows(key: string, { material, size, plan }: BarStock, made: Made): TableView['rows'] {
  const { results, show, words } = made;
  const { cutPlan: say, bar } = words.steel;
  const figures = thingNamed(results.reinforcement.figures.stock, key, 'stock');
  const told = plan.isLeast ? say.least : say.found;
  const note = told(show.run(num(figures['bought-length'])), show.percent(num(figures['left-over'])));
  const last = plan.bars.length - 1;
  return plan.bars.map(({ stockIn, count, cuts, leftIn }, index) => ({
    ...row(
      bar[material](size),
      show.count(count),
      show.length(stockIn),
      cuts.map((cut) => say.cut(cut.count, show.length(cut.lengthIn))).join(say.andCut),
      leftIn === 0 ? say.nothing : show.length(leftIn),
    ),
    note: index === last ? note : null,
  }));
}
