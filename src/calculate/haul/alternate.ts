/**
 * Loads in an order in which as few as may be follow one on the same trailer; those of each trailer keep
 * theirs. Where one trailer has too many, its first ones follow each other: what lies below comes last.
 *
 * From the end: each time the trailer that has most loads left and does not carry the next one.
 */
export function alternating<T extends { readonly trailer: string }>(loads: readonly T[]): readonly T[] {
  const left = new Map<string, { readonly load: T; readonly index: number }[]>();
  for (const [index, load] of loads.entries())
    left.set(load.trailer, [...(left.get(load.trailer) ?? []), { load, index }]);
  const ordered: T[] = [];
  for (let next: string | null = null; ordered.length < loads.length; ) {
    const free = [...left.values()].filter((some) => some.length > 0);
    const others = free.filter((some) => some[0]?.load.trailer !== next);
    const [most] = (others.length > 0 ? others : free).sort(
      (one, other) => other.length - one.length || (other.at(-1)?.index ?? 0) - (one.at(-1)?.index ?? 0),
    );
    const last = most?.pop();
    if (last === undefined) throw new RangeError('loads were lost');
    ordered.unshift(last.load);
    next = last.load.trailer;
  }
  return ordered;
}
