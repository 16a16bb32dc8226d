import { expect, test } from 'vitest';
import { remember, rememberByValue } from '../../src/calculate/remember.ts';

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

test('a function remembered by value runs once for alike inputs, and forgets the oldest', () => {
  let runs = 0;
  const double = rememberByValue(({ value }: { readonly value: number }) => {
    runs += 1;
    return value * 2;
  }, 2);
  expect([double({ value: 1 }), double({ value: 1 }), double({ value: 2 })]).toEqual([2, 2, 4]);
  expect(runs).toBe(2);
  expect([double({ value: 3 }), double({ value: 2 }), double({ value: 1 })]).toEqual([6, 4, 2]);
  expect(runs).toBe(4);
});

test('a topic forgets the input that was asked for longest ago, and keeps what is asked for', () => {
  let runs = 0;
  const topic = remember((input: { value: number }) => {
    runs += 1;
    return { twice: input.value * 2 };
  });
  const first = topic({ value: 0 });
  for (let value = 1; value <= 100; value += 1) {
    expect(topic({ value }).twice).toBe(2 * value);
    expect(topic({ value: 0 })).toBe(first);
  }
  expect(runs).toBe(101);
  topic({ value: 1 });
  expect(runs).toBe(102);
});
