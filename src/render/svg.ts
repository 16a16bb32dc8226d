import type { Drawing, Layer, PathPart, Primitive } from '../describe/drawing/index.ts';

const pointsPerIn = 72;
const pointsPerMm = 72 / 25.4;

/** The smallest text the house style allows on paper. */
const leastTextPt = 8;

/**
 * A drawing as one `<svg>`, in black only, sized in inches with one viewBox unit to the point.
 * Every id starts with the drawing's own, so that several stand on one page; fonts come from the page,
 * by the classes `drawing__text` and `drawing__text--bold`.
 *
 * @throws {RangeError} If the id is not letters, digits and hyphens, a number is not finite, or a text is
 *                      under 8 pt.
 */
export function drawingToSvg(drawing: Drawing): string {
  const { id } = drawing;
  if (!/^[A-Za-z][A-Za-z0-9-]*$/.test(id)) {
    throw new RangeError(`a drawing's id must be letters, digits and hyphens, got ${JSON.stringify(id)}`);
  }
  const width = points(drawing.widthIn);
  const height = points(drawing.heightIn);
  return [
    `<svg class="drawing" id="${id}" xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${id}-title" ` +
      `width="${decimal(drawing.widthIn)}in" height="${decimal(drawing.heightIn)}in" viewBox="0 0 ${width} ${height}">`,
    `<title id="${id}-title">${escaped(drawing.title)}</title>`,
    patterns(id),
    ...drawing.layers.filter((layer) => layer.primitives.length > 0).map((layer) => layerToSvg(layer, id)),
    '</svg>',
  ].join('\n');
}

function layerToSvg(layer: Layer, id: string): string {
  const primitives = layer.primitives.map((primitive) => primitiveToSvg(primitive, id));
  return `<g class="drawing__layer drawing__layer--${layer.name}" id="${id}-${layer.name}">\n${primitives.join('\n')}\n</g>`;
}

function primitiveToSvg(primitive: Primitive, id: string): string {
  switch (primitive.kind) {
    case 'path':
      return `<path d="${pathData(primitive.parts)}" fill="none" ${stroke(primitive)} stroke-linejoin="miter"/>`;
    case 'line': {
      const { from, to } = primitive;
      return `<line x1="${points(from.xIn)}" y1="${points(from.yIn)}" x2="${points(to.xIn)}" y2="${points(to.yIn)}" ${stroke(primitive)}/>`;
    }
    case 'hatch': {
      const fill = primitive.pattern === 'none' ? 'none' : `url(#${id}-hatch-${primitive.pattern})`;
      return `<path d="${pathData(primitive.parts)}" fill="${fill}" fill-rule="evenodd"/>`;
    }
    case 'dot':
      return `<circle cx="${points(primitive.xIn)}" cy="${points(primitive.yIn)}" r="${points(primitive.radiusIn)}" fill="#000"/>`;
    case 'text': {
      if (!(primitive.sizePt >= leastTextPt)) {
        throw new RangeError(`text on a drawing must be ${leastTextPt} pt or more, got ${primitive.sizePt}`);
      }
      const x = points(primitive.xIn);
      const y = points(primitive.yIn);
      const turn =
        primitive.turnDeg === 0 ? '' : ` transform="rotate(${decimal(primitive.turnDeg)} ${x} ${y})"`;
      const bold = primitive.weight === 700 ? ' drawing__text--bold' : '';
      return (
        `<text class="drawing__text${bold}" x="${x}" y="${y}" font-size="${decimal(primitive.sizePt)}" ` +
        `text-anchor="${primitive.anchor}" fill="#000"${turn}>${escaped(primitive.text)}</text>`
      );
    }
  }
}

function pathData(parts: readonly PathPart[]): string {
  return parts
    .map((part) => {
      switch (part.kind) {
        case 'move':
          return `M${points(part.xIn)} ${points(part.yIn)}`;
        case 'line':
          return `L${points(part.xIn)} ${points(part.yIn)}`;
        case 'arc': {
          const radius = points(part.radiusIn);
          const flags = `${Math.abs(part.bulge) > 1 ? 1 : 0} ${part.bulge < 0 ? 1 : 0}`;
          return `A${radius} ${radius} 0 ${flags} ${points(part.xIn)} ${points(part.yIn)}`;
        }
        case 'close':
          return 'Z';
      }
    })
    .join('');
}

/** What is drawn and what is left out in turn [pt]. */
const dashes = { 'dash-dot': '9 2.5 1.2 2.5', dashed: '7 4' } as const;

function stroke(line: { readonly weightMm: number; readonly dash: 'solid' | keyof typeof dashes }): string {
  const dash = line.dash === 'solid' ? '' : ` stroke-dasharray="${dashes[line.dash]}"`;
  return `stroke="#000" stroke-width="${decimal(line.weightMm * pointsPerMm)}"${dash}`;
}

/** Goes: slanted lines. New: dots. Base: sparse stones. All drawn in thin black, so that grey printing loses nothing. */
function patterns(id: string): string {
  const thin = decimal(0.18 * pointsPerMm);
  return [
    '<defs>',
    `<pattern id="${id}-hatch-goes" patternUnits="userSpaceOnUse" width="6" height="6" patternTransform="rotate(45)">` +
      `<line x1="0" y1="0" x2="0" y2="6" stroke="#000" stroke-width="${thin}"/></pattern>`,
    `<pattern id="${id}-hatch-new" patternUnits="userSpaceOnUse" width="8" height="8">` +
      '<circle cx="2" cy="2" r="0.45" fill="#000"/><circle cx="6" cy="6" r="0.45" fill="#000"/></pattern>',
    `<pattern id="${id}-hatch-base" patternUnits="userSpaceOnUse" width="14" height="10">` +
      `<g fill="none" stroke="#000" stroke-width="${thin}"><path d="M2 3.2l1.2-1.7 1.5.5.2 1.5-1.6.7z"/>` +
      '<path d="M9 8.2l.8-1.5 1.7.3.1 1.5-1.4.5z"/></g></pattern>',
    '</defs>',
  ].join('');
}

function points(lengthIn: number): string {
  return decimal(lengthIn * pointsPerIn);
}

/** Three decimals at most, never an exponent. */
function decimal(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing takes finite numbers only, got ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}

function escaped(text: string): string {
  // Control characters have no place in XML, not even escaped.
  return [...text]
    .filter((character) => character >= ' ' || character === '\n' || character === '\t')
    .filter((character) => character !== '\uFFFE' && character !== '\uFFFF')
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
