/**
 * Where things stand along a line that want to stand at some places and have to keep apart: moved up the line
 * as far as the ones before need, and back from its end where there is no room left.
 *
 * @param wanted In order along the line.
 * @param apart  From one to the next, at the least.
 * @param most   The end of the line; what does not fit between is left before its start.
 */
export function spreadApart(wanted: readonly number[], apart: number, most: number): readonly number[] {
  const placed: number[] = [];
  for (const at of wanted) placed.push(Math.max(at, (placed.at(-1) ?? -Infinity) + apart));
  let limit = most;
  for (let index = placed.length - 1; index >= 0; index -= 1) {
    const at = Math.min(placed[index] ?? limit, limit);
    placed[index] = at;
    limit = at - apart;
  }
  return placed;
}
