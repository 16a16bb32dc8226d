import { bandAreaSqIn, type EdgeLine, type NumberedEdge, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatNumber, sqInToSqFt } from '../../units/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Slab, ThickenedEdge } from '../job.ts';
import { inputsByName, sumExpression, sumOf, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { edgeLines } from './edge-lines.ts';
import { thickenedCuFt } from './volume.ts';

export { thickenedCuFt } from './volume.ts';

/** Edges of one section, taken together, so that a corner between two of them counts once. */
export type ThickenedFigures = {
  /** Of the flat bottom [sq ft]. */
  readonly bottom: Figure;
  /** Half way up the taper [sq ft]. */
  readonly middle: Figure;
  /** At the underside of the slab [sq ft]. */
  readonly top: Figure;
  /** Below the slab [cu ft]. */
  readonly volume: Figure;
};

export type ThickenedSlab = {
  /** By the number of its first edge. */
  readonly edges: Readonly<Record<string, ThickenedFigures>>;
  /** [cu ft] */
  readonly volume: Figure;
};

/** Only slabs with a thickened edge. */
export type ThickenedResult = TopicResult<
  Readonly<Record<string, ThickenedSlab>>,
  Readonly<Record<never, never>>
>;

type EdgedSlab = Pick<Slab, 'id' | 'thicknessIn' | 'thickenedEdges'>;

/** What thickened edges take below the underside of their slab: of concrete as of the ground dug for it. */
export function calcThickened(input: {
  readonly slabs: Readonly<Record<string, EdgedSlab>>;
  readonly outlines: Readonly<Record<string, Outline>>;
  readonly edges: Readonly<Record<string, readonly NumberedEdge[]>>;
}): ThickenedResult {
  const thick = Object.values(input.slabs).filter(({ thickenedEdges }) => thickenedEdges.length > 0);
  return {
    figures: Object.fromEntries(
      thick.map((slab) => {
        const outline = thingNamed(input.outlines, slab.id, 'outline');
        const edges = thingNamed(input.edges, slab.id, 'edges');
        return [slab.id, slabFigures(slab, outline, edges)];
      }),
    ),
    data: {},
    problems: thick.flatMap(depthProblems),
  };
}

function slabFigures(slab: EdgedSlab, outline: Outline, edges: readonly NumberedEdge[]): ThickenedSlab {
  const figures = Object.fromEntries(
    edgeSections(slab.thickenedEdges).map((section) => {
      const lines = edgeLines(edges, new Set(section.numbers));
      return [`edge-${section.numbers[0]}`, sectionFigures(slab, section.edge, outline, lines)];
    }),
  );
  const inputs = inputsByName(
    Object.fromEntries(Object.entries(figures).map(([id, { volume }]) => [id, volume])),
    'CuFt',
  );
  const volume = figure({
    value: sumOf(inputs),
    unit: 'cu ft',
    decimals: 2,
    formula: sumExpression(inputs),
    inputs,
  });
  return { edges: figures, volume };
}

export type EdgeSection = { readonly edge: ThickenedEdge; readonly numbers: readonly number[] };

/** Edges with the same depth, width and taper are one section. */
export function edgeSections(edges: readonly ThickenedEdge[]): readonly EdgeSection[] {
  const key = ({ depthIn, widthIn, taperIn }: ThickenedEdge) => `${depthIn} ${widthIn} ${taperIn}`;
  return [...new Set(edges.map(key))].flatMap((one) => {
    const alike = edges.filter((edge) => key(edge) === one);
    const [edge] = alike;
    return edge === undefined ? [] : [{ edge, numbers: alike.map((like) => like.edge) }];
  });
}

function sectionFigures(
  slab: EdgedSlab,
  edge: ThickenedEdge,
  outline: Outline,
  lines: readonly EdgeLine[],
): ThickenedFigures {
  const at = (key: string) => `build.slabs.${slab.id}.thickened-edges.${edge.edge}.${key}`;
  const widthIn = given(at('width'), edge.widthIn, 'in');
  const taperIn = given(at('taper'), edge.taperIn, 'in');
  const band = (share: number, where: string) =>
    figure({
      value: sqInToSqFt(bandAreaSqIn(outline, lines, edge.widthIn + share * edge.taperIn)),
      unit: 'sq ft',
      decimals: 2,
      formula: { method: `area of the slab within the width ${where} of these edges` },
      inputs: { widthIn, taperIn },
    });
  const bottom = band(0, 'of the flat bottom');
  const middle = band(1 / 2, 'and half the taper');
  const top = band(1, 'and the taper');
  const extraIn = Math.max(0, edge.depthIn - slab.thicknessIn);
  const values = { bottomSqFt: num(bottom), middleSqFt: num(middle), topSqFt: num(top) };
  return {
    bottom,
    middle,
    top,
    volume: figure({
      value: thickenedCuFt({ extraIn, ...values }),
      unit: 'cu ft',
      decimals: 2,
      formula: 'max(0, depthIn - thicknessIn) / 12 * (bottomSqFt + 4 * middleSqFt + topSqFt) / 6',
      inputs: {
        depthIn: given(at('depth'), edge.depthIn, 'in'),
        thicknessIn: given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in'),
        bottomSqFt: bottom,
        middleSqFt: middle,
        topSqFt: top,
      },
      source: 'prismoidal formula (from memory)',
    }),
  };
}

function depthProblems(slab: EdgedSlab): readonly CoreProblem[] {
  return slab.thickenedEdges
    .filter(({ depthIn }) => !(depthIn > slab.thicknessIn))
    .map(({ edge, depthIn }) => ({
      code: 'thickened-edge-not-deeper',
      path: `build.slabs.${slab.id}.thickened-edges.${edge}.depth`,
      parts: { depth: formatNumber(depthIn, 2), thickness: formatNumber(slab.thicknessIn, 2) },
    }));
}
