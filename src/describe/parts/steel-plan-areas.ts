import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Lies } from '../../calculate/outline/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { type LaidBar, lapLines } from '../../calculate/reinforcement/index.ts';
import type { Line } from '../../geometry/index.ts';
import { onPlan, slabArea } from './plan-areas.ts';
import type { PlanArea } from './plan-drawing.ts';

/** The slabs that have bars in them, with every bar where it lies. */
export function steelPlanAreas(job: Job, results: JobResults): readonly PlanArea[] {
  const { laid } = results.reinforcement.data;
  return Object.values(job.build.slabs).flatMap((slab) => {
    const layout = laid[slab.id];
    if (layout === undefined || layout.bars.length + layout.corners.length === 0) return [];
    const lies = thingNamed(results.outline.data.lies, slab.id, 'slab');
    const { bars, corners } = layout;
    const isExtra = ({ way }: LaidBar) => way === 'diagonal';
    return [
      {
        ...slabArea(results, slab),
        bars: {
          lines: drawn(bars.filter((bar) => !isExtra(bar)).map(lineOf), lies),
          extra: drawn([...bars.filter(isExtra).map(lineOf), ...corners.flatMap(({ legs }) => legs)], lies),
          laps: drawn(bars.flatMap(lapLines), lies),
        },
      },
    ];
  });
}

function drawn(lines: readonly Line[], lies: Lies): readonly Line[] {
  return lines.map((line) => onPlan(line, lies));
}

function lineOf({ from, to }: LaidBar): Line {
  return { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
}
