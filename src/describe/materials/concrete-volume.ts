import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, totalRow } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

type VolumePart = { readonly what: string; readonly how: string; readonly volumeCuYd: number };

/** Net and allowances, part by part, and what is needed: the lines add up as shown. */
export function volumeTable(made: Made): TableView {
  const { show, words } = made;
  const say = words.materials.concrete.volume;
  const parts = [...netParts(made), ...allowanceParts(made)];
  const texts = show.volumes(parts.map(({ volumeCuYd }) => volumeCuYd));
  const { needed } = made.results.concrete.figures.total;
  return {
    caption: say.caption,
    columns: [start(say.part), start(say.how), end(say.amount)],
    rows: [
      ...parts.map(({ what, how }, index) => row(what, how, texts[index] ?? '')),
      totalRow(say.needed, '', show.volume(num(needed))),
    ],
  };
}

function netParts({ job, results, show, words }: Made): readonly VolumePart[] {
  const say = words.materials.concrete.volume;
  const { slabs, steps } = results.concrete.figures;
  return [
    ...Object.values(job.build.slabs).map((slab) => {
      const { net, depth } = thingNamed(slabs, slab.id, 'slab');
      const area = show.area(num(thingNamed(results.outline.figures.slabs, slab.id, 'shape').area));
      const size = show.size(num(depth));
      const flat = slab.probedIn === null ? say.slab(area, size) : say.probed(area, size);
      const thickened = results.thickened.figures[slab.id];
      return {
        what: slab.label,
        how: thickened === undefined ? flat : say.withEdges(flat, show.volume(num(thickened.volume) / 27)),
        volumeCuYd: num(net),
      };
    }),
    ...Object.values(results.flights.data.steps).map(({ id, label, riserCount }) => ({
      what: label,
      how: say.steps(riserCount),
      volumeCuYd: num(thingNamed(steps, id, 'steps').net),
    })),
  ];
}

function allowanceParts({ job, results, show, words }: Made): readonly VolumePart[] {
  const say = words.materials.concrete.volume;
  const { baseUnevennessIn, spillRatio, formBulgeIn } = job.company.allowances;
  const { unevenness, spill, bulge, pump } = results.concrete.figures.total;
  return [
    {
      what: say.unevenness,
      how: say.unevennessHow(show.size(baseUnevennessIn)),
      volumeCuYd: num(unevenness),
    },
    { what: say.spill, how: say.spillHow(show.percent(spillRatio)), volumeCuYd: num(spill) },
    ...(bulge === undefined
      ? []
      : [{ what: say.bulge, how: say.bulgeHow(show.fine(formBulgeIn)), volumeCuYd: num(bulge) }]),
    ...(pump === undefined ? [] : [{ what: say.pump, how: say.pumpHow, volumeCuYd: num(pump) }]),
  ];
}
