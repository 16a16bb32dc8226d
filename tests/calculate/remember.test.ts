import { expect, test } from 'vitest';
import { withKeptResults } from '../../src/calculate/kept-results.ts';
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
  const double = rememberByValue(
    'double',
    ({ value }: { readonly value: number }) => {
      runs += 1;
      return value * 2;
    },
    2,
  );
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

test('what was kept is not worked out again, and what was asked for is told', () => {
  let runs = 0;
  const half = rememberByValue(
    'half',
    ({ value }: { readonly value: number }) => {
      runs += 1;
      return value % 2 === 0 ? value / 2 : null;
    },
    2,
  );
  const first = withKeptResults(new Map(), () => [
    half({ value: 4 }),
    half({ value: 5 }),
    half({ value: 4 }),
  ]);
  expect(first.given).toEqual([2, null, 2]);
  expect(first.isAnyNew).toBe(true);
  const results = new Map([
    ['{"value":4}', 2],
    ['{"value":5}', null],
  ]);
  expect(first.asked).toEqual(new Map([['half', results]]));

  const again = rememberByValue('half', () => expect.unreachable('it is known'), 2);
  const second = withKeptResults(first.asked, () => [again({ value: 5 }), again({ value: 4 })]);
  expect(second).toEqual({ given: [null, 2], asked: first.asked, isAnyNew: false });

  expect(withKeptResults(first.asked, () => half({ value: 6 }))).toEqual({
    given: 3,
    asked: new Map([['half', new Map([['{"value":6}', 3]])]]),
    isAnyNew: true,
  });
  expect(runs).toBe(3);
});

test('what is remembered in a run and was not kept counts as new: else it never would be kept', () => {
  const triple = rememberByValue('triple', ({ value }: { readonly value: number }) => 3 * value, 2);
  expect(triple({ value: 2 })).toBe(6);
  expect(withKeptResults(new Map(), () => triple({ value: 2 })).isAnyNew).toBe(true);
});

test('after a task nothing of it is known, even where it failed', () => {
  const kept = new Map([['ten', new Map([['{}', 'kept']])]]);
  const ten = () => rememberByValue('ten', () => 'made', 1)({});
  expect(withKeptResults(kept, ten).given).toBe('kept');
  expect(() =>
    withKeptResults(kept, () => {
      throw new Error('refused');
    }),
  ).toThrow('refused');
  expect(ten()).toBe('made');
});

test('a task within a task leaves what the outer one knows', () => {
  const kept = new Map([['seven', new Map([['{}', 'kept']])]]);
  const seven = () => rememberByValue('seven', () => 'made', 1)({});
  const outer = withKeptResults(kept, () => [withKeptResults(new Map(), seven).given, seven()]);
  expect(outer.given).toEqual(['made', 'kept']);
});
