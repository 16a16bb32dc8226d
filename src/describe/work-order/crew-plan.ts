import type { Made } from '../made.ts';
import { planDrawing } from '../parts/plan-drawing.ts';
import type { FiguredDrawing } from '../views.ts';

type Drawn = Parameters<typeof planDrawing>[0];

/** A plan as the crew gets it: as wide as the page, north where it was taken, no photo points unless given. */
export function crewPlan(
  drawn: Pick<Drawn, 'id' | 'heading' | 'areas'> & Partial<Pick<Drawn, 'photoPoints' | 'falls'>>,
  { job, show, words }: Made,
): FiguredDrawing {
  return planDrawing({
    photoPoints: [],
    ...drawn,
    northDeg: job.site.northDeg,
    paper: job.company.paper,
    width: 'page',
    system: job.unitSystem,
    show,
    words,
  });
}
