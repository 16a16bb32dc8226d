import { expect, test } from 'vitest';
import { remember } from '../../src/calculate/remember.ts';

test('a topic runs once for the same parts, and again when one part is another object', () => {
  let runs = 0;
  const part = { value: 1 };
  const topic = remember((input: { part: { value: number }; other: number }) => {
    runs += 1;
    return input.part.value + input.other;
  });
  expect(topic({ part, other: 2 })).toBe(3);
  expect(topic({ part, other: 2 })).toBe(3);
  expect(runs).toBe(1);
  expect(topic({ part: { value: 1 }, other: 2 })).toBe(3);
  expect(runs).toBe(2);
  expect(topic({ part, other: 2 })).toBe(3);
  expect(runs).toBe(2);
});
