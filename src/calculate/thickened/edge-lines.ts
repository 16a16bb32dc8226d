import type { EdgeLine, NumberedEdge } from '../../geometry/index.ts';

/**
 * The lines along some of the edges of a ring: edges that follow one another are one line. What lies
 * between two of them, the curve of a rounded corner or a piece joined on, goes with them.
 *
 * @param edges The whole ring, in its order.
 * @param taken Numbers of the edges.
 */
export function edgeLines(edges: readonly NumberedEdge[], taken: ReadonlySet<number>): readonly EdgeLine[] {
  const chosen = edges.map(({ number }, index) =>
    number === null ? isBetweenTaken(edges, index, taken) : taken.has(number),
  );
  if (!chosen.includes(true)) return [];
  if (!chosen.includes(false)) return [{ points: joined(edges), isClosed: true }];
  const start = chosen.findIndex((one, index) => one && !chosen.at(index - 1));
  const turned = edges.map((_, index) => (start + index) % edges.length);
  const runs: NumberedEdge[][] = [];
  let open = false;
  for (const index of turned) {
    const edge = edges[index];
    if (edge === undefined || chosen[index] !== true) {
      open = false;
      continue;
    }
    if (open) runs.at(-1)?.push(edge);
    else runs.push([edge]);
    open = true;
  }
  return runs.map((run) => ({ points: withEnd(run), isClosed: false }));
}

/** Whether the nearest edges with a number, before and after one without, are both taken. */
function isBetweenTaken(edges: readonly NumberedEdge[], index: number, taken: ReadonlySet<number>): boolean {
  const look = (step: number) => {
    for (let at = 1; at < edges.length; at += 1) {
      const number = edges.at((index + step * at) % edges.length)?.number;
      if (number !== null && number !== undefined) return number;
    }
    return null;
  };
  const [before, after] = [look(-1), look(1)];
  return before !== null && after !== null && taken.has(before) && taken.has(after);
}

function joined(run: readonly NumberedEdge[]) {
  return run.flatMap(({ points }) => points.slice(0, -1));
}

function withEnd(run: readonly NumberedEdge[]) {
  return [...joined(run), ...(run.at(-1)?.points.slice(-1) ?? [])];
}
