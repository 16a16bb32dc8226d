import type { Slab } from '../../calculate/job.ts';
import { edgeSections } from '../../calculate/thickened/index.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

/** How the thickened edges of a slab are dug, a sentence for each section. */
export function thickenedWords(slab: Slab, show: Show, words: Words): readonly string[] {
  const say = words.workOrder.slabs;
  return edgeSections(slab.thickenedEdges).map(({ edge, numbers }) => {
    const [edges, depth, width] = [say.edges(numbers), show.size(edge.depthIn), show.size(edge.widthIn)];
    return edge.taperIn === 0
      ? say.thickened(edges, depth, width)
      : say.tapered(edges, depth, width, show.size(edge.taperIn));
  });
}
