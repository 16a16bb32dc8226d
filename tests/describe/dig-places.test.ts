import { expect, test } from 'vitest';
import { digPlaces } from '../../src/describe/work-order/dig-places.ts';

const onCircle = (count: number) =>
  Object.fromEntries(
    Array.from({ length: count }, (_, index) => {
      const turnRad = (2 * Math.PI * index) / count;
      return [`corner-${index + 1}`, { xIn: 100 * Math.cos(turnRad), yIn: 100 * Math.sin(turnRad) }];
    }),
  );

test('nine places are all told, in their order', () => {
  const places = { ...onCircle(8), middle: { xIn: 0, yIn: 0 } };
  expect(digPlaces(places)).toEqual(Object.keys(places));
});

test('of many the middle stays, and those that lie far apart', () => {
  const places = { ...onCircle(16), middle: { xIn: 0, yIn: 0 } };
  const told = digPlaces(places);
  expect(told).toHaveLength(9);
  expect(told).toContain('middle');
  // Every second corner: no two neighbours.
  const numbers = told.flatMap((name) => /\d+/.exec(name)?.map(Number) ?? []);
  expect(new Set(numbers.map((number) => number % 2)).size).toBe(1);
});
