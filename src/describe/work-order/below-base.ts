import { num } from '../../calculate/figure.ts';
import type { Made } from '../made.ts';
import type { CheckListView } from '../views.ts';

/** What comes before the base: the holes of posts, then the fabric. Its time is in that of the base. */
export function belowBase({ job, results, show, words }: Made): CheckListView['items'] {
  const say = words.crewDays;
  const posts = Object.values(job.site.posts).map(({ label }) => label);
  const fabric = results.base.figures.geotextile;
  const slabs = Object.values(job.build.slabs).filter(({ geotextile }) => geotextile);
  const holesTon = Object.values(results.base.figures.holes).reduce((sum, { tons }) => sum + num(tons), 0);
  return [
    ...(posts.length === 0
      ? []
      : [{ text: say.fillHoles(posts.join(', ')), quantity: show.tons(holesTon * 2000), isHold: false }]),
    ...(fabric === undefined
      ? []
      : [
          {
            text: say.fabric(slabs.map(({ label }) => label).join(', '), show.size(num(fabric.lap))),
            quantity: show.area(num(fabric.total.area)),
            isHold: false,
          },
        ]),
  ];
}
