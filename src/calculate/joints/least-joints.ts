import { edgeLengthIn, edgesOf, outlinePerimeterIn } from '../../geometry/index.ts';
import { ceilCount } from '../../units/index.ts';
import type { PanelShape } from './panel-shape.ts';

/**
 * What no layout can be below that keeps a limit, however clever: so many panels, lines and inches of joint.
 *
 * A panel of sides up to s has an area up to s², and its outline is no shorter than that of the circle of its
 * area, 2 sqrt(pi A): over all panels 2 sqrt(pi) A / s at the least, of which each joint counts twice. It lies
 * along no more of a straight edge than its diagonal, sqrt(2) s, and of an arc pi / 2 times that; a line ends
 * in two places, and n lines make no more than 1 + n + n (n - 1) / 2 panels of one. Derived.
 */
export function leastOf(
  shapes: readonly PanelShape[],
  limitIn: number,
): { readonly panelCount: number; readonly lineCount: number; readonly lengthIn: number } {
  let [panelCount, lineCount, lengthIn] = [0, 0, 0];
  for (const { outline, areaSqIn } of shapes) {
    const panels = ceilCount(areaSqIn / limitIn ** 2);
    const ends = outline.rings
      .flatMap((ring) => edgesOf(ring))
      .reduce((sum, edge) => {
        const mostIn = Math.SQRT2 * limitIn * (edge.from.bulge === 0 ? 1 : Math.PI / 2);
        return sum + ceilCount(edgeLengthIn(edge) / mostIn) - 1;
      }, 0);
    const crossing = Math.ceil((Math.sqrt(8 * Math.max(1, panels) - 7) - 1) / 2 - 1e-9);
    panelCount += Math.max(1, panels);
    // Lines that run through several of the shapes are one.
    lineCount = Math.max(lineCount, Math.ceil(ends / 2), crossing);
    lengthIn += Math.max(
      0,
      (2 * Math.sqrt(Math.PI) * areaSqIn) / limitIn / 2 - outlinePerimeterIn(outline) / 2,
    );
  }
  return { panelCount, lineCount, lengthIn };
}
