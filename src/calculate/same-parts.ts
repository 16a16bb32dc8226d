import { Decimal } from 'decimal.js';

/** Of so many parts the first ones are forgotten; a job with its company has a few thousand. */
const KEPT_PARTS = 100_000;

/**
 * Makes one object of parts that say the same: where a job was read anew and little of it changed, the rest is
 * the objects of before, so that whatever remembers by identity knows them again.
 *
 * @returns A function of plain data (records, lists, texts, numbers, exact numbers) that gives data of the same
 *   content; what is not plain stays as it is. Nothing that is given is changed.
 */
export function sameParts(): <T>(data: T) => T {
  const known = new Map<string, object>();
  const numbers = new WeakMap<object, number>();
  let count = 0;

  function numbered<T extends object>(thing: T): T {
    if (!numbers.has(thing)) numbers.set(thing, count++);
    return thing;
  }

  function keyOf(value: unknown): string {
    if ((typeof value === 'object' && value !== null) || typeof value === 'function') {
      return `#${numbers.get(numbered(value))}`;
    }
    return typeof value === 'string'
      ? JSON.stringify(value)
      : `${typeof value} ${Object.is(value, -0) ? '-0' : value}`;
  }

  function one<T extends object>(key: string, make: () => T): T {
    const before = known.get(key);
    if (before !== undefined) return before as T;
    if (known.size >= KEPT_PARTS) known.clear();
    const made = numbered(make());
    known.set(key, made);
    return made;
  }

  function part<T>(value: T): T {
    if (typeof value !== 'object' || value === null || numbers.has(value)) return value;
    // Two kinds of decimals round in two ways.
    if (value instanceof Decimal) return one(`decimal ${keyOf(value.constructor)} ${value}`, () => value);
    if (Array.isArray(value)) {
      const items: unknown[] = value.map(part);
      return one(`[${items.map(keyOf).join()}]`, () => items as object) as T;
    }
    if (Object.getPrototypeOf(value) !== Object.prototype) return value;
    const entries = Object.entries(value).map(([name, child]) => [name, part(child)] as const);
    const key = entries.map(([name, child]) => `${JSON.stringify(name)}:${keyOf(child)}`).join();
    return one(`{${key}}`, () => Object.fromEntries(entries) as object) as T;
  }

  return part;
}
