import type nunjucks from 'nunjucks';
import type { Drawing } from '../describe/drawing/index.ts';
import { plainView } from './strict-view.ts';
import { drawingToSvg } from './svg.ts';
import { markup } from './text-filters.ts';

/**
 * A drawing as SVG. Its ids get the name of its place in front, since a binder shows the same
 * drawing in two of its parts and hatches and titles are found by id.
 *
 * @param place Where on the page: letters, digits and hyphens, starting with a letter.
 */
export function drawn(drawing: Drawing, place: string): nunjucks.runtime.SafeString {
  const plain = plainView(drawing);
  return markup(drawingToSvg({ ...plain, id: `${place}-${plain.id}` }));
}
