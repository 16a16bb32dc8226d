import { arcOf, type Edge, edgeLengthIn, edgesOf, type Outline, type Point } from '../../geometry/index.ts';

/**
 * How a form goes on at one of its ends: along the same tangent, past an outside or a re-entrant
 * corner, or not at all, where house, old concrete or a joint stands.
 */
export type Join = 'tangent' | 'outside' | 'inside' | 'end';

/** One straight or one curve of a formed run, in the direction of its ring: the concrete is on its left. */
export type Form = {
  readonly kind: 'straight' | 'curve';
  readonly lengthIn: number;
  /** The smallest radius along it [in]; null on a straight. */
  readonly radiusIn: number | null;
  readonly from: Point;
  readonly to: Point;
  readonly before: Join;
  readonly after: Join;
};

/** Forms end to end; closed where the whole ring is formed. */
export type FormedRun = { readonly isClosed: boolean; readonly forms: readonly Form[] };

/** Turns below this are the same line to a board: 1/16 in over 5 ft. */
const STRAIGHT_ON_RAD = 0.001;

/**
 * The formed edges of an outline as runs: as long as edge follows edge, round each ring, the holes
 * too. Edges on one line are one straight, arcs that meet smoothly are one curve.
 *
 * @param outline As `calculate/outline` closes it: the outer ring anticlockwise, the holes clockwise.
 */
export function formedRuns(outline: Outline): readonly FormedRun[] {
  return outline.rings.flatMap((ring) => {
    const edges = edgesOf(ring);
    if (edges.every(({ from }) => from.edge === 'formed')) return [runOf(startedAtJoin(edges), true)];
    return edges.flatMap((edge, index) => {
      const starts = edge.from.edge === 'formed' && edges.at(index - 1)?.from.edge !== 'formed';
      if (!starts) return [];
      const onwards = [...edges.slice(index), ...edges.slice(0, index)];
      const length = onwards.findIndex(({ from }) => from.edge !== 'formed');
      return [runOf(onwards.slice(0, length), false)];
    });
  });
}

/** The edges of a closed run from one that does not go on from the last, where there is such a one. */
function startedAtJoin(edges: readonly Edge[]): readonly Edge[] {
  const start = edges.findIndex((edge, index) => !goesOn(edges.at(index - 1) ?? edge, edge));
  return start === -1 ? edges : [...edges.slice(start), ...edges.slice(0, start)];
}

function runOf(edges: readonly Edge[], isClosed: boolean): FormedRun {
  const groups = edges.reduce<Edge[][]>((made, edge) => {
    const last = made.at(-1)?.at(-1);
    if (last !== undefined && goesOn(last, edge)) made.at(-1)?.push(edge);
    else made.push([edge]);
    return made;
  }, []);
  const joinAt = (index: number): Join => {
    const after = groups.at(index % groups.length)?.[0];
    const before = groups.at(index - 1)?.at(-1);
    const isEnd = !isClosed && (index === 0 || index === groups.length);
    return isEnd || before === undefined || after === undefined ? 'end' : joinOf(before, after);
  };
  const forms = groups.map((group, index) => formOf(group, joinAt(index), joinAt(index + 1)));
  return { isClosed, forms };
}

function formOf(edges: readonly Edge[], before: Join, after: Join): Form {
  const [first, last] = [edges[0], edges.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('a form needs an edge');
  const radiiIn = edges.flatMap(({ from, to }) => (from.bulge === 0 ? [] : [arcOf(from, to).radiusIn]));
  return {
    kind: radiiIn.length > 0 ? 'curve' : 'straight',
    lengthIn: edges.reduce((sumIn, edge) => sumIn + edgeLengthIn(edge), 0),
    radiusIn: radiiIn.length > 0 ? Math.min(...radiiIn) : null,
    from: { xIn: first.from.xIn, yIn: first.from.yIn },
    to: { xIn: last.to.xIn, yIn: last.to.yIn },
    before,
    after,
  };
}

function goesOn(before: Edge, after: Edge): boolean {
  const isSameKind = (before.from.bulge === 0) === (after.from.bulge === 0);
  return isSameKind && joinOf(before, after) === 'tangent';
}

function joinOf(before: Edge, after: Edge): Join {
  const rad = directionRad(after, 'start') - directionRad(before, 'end');
  const turnRad = Math.atan2(Math.sin(rad), Math.cos(rad));
  if (Math.abs(turnRad) < STRAIGHT_ON_RAD) return 'tangent';
  return turnRad > 0 ? 'outside' : 'inside';
}

/** The chord's direction, turned by half the sweep: back at the start, on at the end. */
function directionRad({ from, to }: Edge, where: 'start' | 'end'): number {
  const chordRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn);
  const halfSweepRad = 2 * Math.atan(from.bulge);
  return where === 'start' ? chordRad - halfSweepRad : chordRad + halfSweepRad;
}
