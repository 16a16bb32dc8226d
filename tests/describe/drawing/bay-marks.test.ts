import { describe, expect, test } from 'vitest';
import { boxesOverlap, textBox } from '../../../src/describe/drawing/boxes.ts';
import {
  type Drawing,
  drawPlan,
  type PathPrimitive,
  type PlanView,
  type Primitive,
  type TextPrimitive,
} from '../../../src/describe/drawing/index.ts';
import { anArea, aPlan, rectangle, samplePlans } from './sample-plans.ts';

const plan = (name: string) => samplePlans[name] as PlanView;
const baysOf = (drawing: Drawing): readonly Primitive[] =>
  drawing.layers.find(({ name }) => name === 'bays')?.primitives ?? [];
const textsOf = (drawing: Drawing): readonly TextPrimitive[] =>
  baysOf(drawing).filter((one) => one.kind === 'text');

type Circle = { readonly xIn: number; readonly yIn: number; readonly radiusIn: number };

function circlesOf(drawing: Drawing): readonly Circle[] {
  return baysOf(drawing)
    .filter((one): one is PathPrimitive => one.kind === 'path')
    .map(({ parts: [first, half] }) => {
      if (first?.kind !== 'move' || half?.kind !== 'arc') throw new Error('a circle is two arcs');
      return { xIn: (first.xIn + half.xIn) / 2, yIn: first.yIn, radiusIn: half.radiusIn };
    });
}

/** The circle that stands round a text. */
function circleRound(text: TextPrimitive, drawing: Drawing): Circle | undefined {
  return circlesOf(drawing).find(({ xIn, yIn, radiusIn }) =>
    textBox(text).every((corner) => Math.hypot(corner.xIn - xIn, corner.yIn - yIn) < radiusIn),
  );
}

/** Where on the ground a place of the paper lies [ft]. */
function groundFt(drawing: Drawing, at: { readonly xIn: number; readonly yIn: number }) {
  const ftPerIn = 1 / (12 * drawing.scale.paperInPerIn);
  return { x: (at.xIn - drawing.origin.xIn) * ftPerIn, y: (drawing.origin.yIn - at.yIn) * ftPerIn };
}

describe('the marks of load bays', () => {
  const drawing = drawPlan(plan('load bays'));

  test('each number stands large, in a circle, within its bay; its area below', () => {
    for (const [index, number] of ['2', '3', '4', '5'].entries()) {
      const text = textsOf(drawing).find((one) => one.text === number);
      const circle = text && circleRound(text, drawing);
      if (circle === undefined) throw new Error(`no circle round ${number}`);
      expect(text?.sizePt).toBe(16);
      const { x, y } = groundFt(drawing, circle);
      expect(x).toBeGreaterThan(9 * index);
      expect(x).toBeLessThan(9 * index + 9);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(18);
      const area = textsOf(drawing).find(
        (one) => one.text === '162 sq ft' && Math.abs(one.xIn - circle.xIn) < 1e-9,
      );
      expect(area?.yIn).toBeGreaterThan(circle.yIn + circle.radiusIn);
    }
    expect(circlesOf(drawing)).toHaveLength(5);
  });

  test('lines are dashed, from edge to edge', () => {
    const lines = baysOf(drawing).filter((one) => one.kind === 'line' && one.dash === 'dashed');
    const ends = lines.map(
      (one) => one.kind === 'line' && [one.from, one.to].map((at) => groundFt(drawing, at)),
    );
    expect(ends).toEqual(
      [9, 18, 27].map((x) => [
        { x: expect.closeTo(x, 9), y: expect.closeTo(0, 9) },
        { x: expect.closeTo(x, 9), y: expect.closeTo(18, 9) },
      ]),
    );
  });

  test('a bay too thin for a mark has it outside, with a leader to a dot in the bay', () => {
    const text = textsOf(drawing).find((one) => one.text === '1');
    const circle = text && circleRound(text, drawing);
    if (circle === undefined) throw new Error('the brick edge has a mark');
    expect(groundFt(drawing, circle).y).toBeGreaterThan(18.7);
    const [dot, ...others] = baysOf(drawing).filter((one) => one.kind === 'dot');
    expect(others).toEqual([]);
    if (dot?.kind !== 'dot') throw new Error('a leader ends in a dot');
    expect(groundFt(drawing, dot)).toEqual({ x: expect.closeTo(10, 9), y: expect.closeTo(18.35, 9) });
    const leader = baysOf(drawing).find((one) => one.kind === 'line' && one.dash === 'solid');
    if (leader?.kind !== 'line') throw new Error('the dot has a leader');
    expect(leader.to).toEqual({ xIn: dot.xIn, yIn: dot.yIn });
    const offIn = Math.hypot(leader.from.xIn - circle.xIn, leader.from.yIn - circle.yIn);
    expect(offIn).toBeCloseTo(circle.radiusIn, 9);
  });

  test('the letter of a corner stands within a quarter inch of it, inside', () => {
    for (const [letter, y] of [
      ['A', 0],
      ['B', 18],
    ] as const) {
      const text = textsOf(drawing).find((one) => one.text === letter);
      if (text === undefined) throw new Error(`no letter ${letter}`);
      const { paperInPerIn } = drawing.scale;
      const awayIn = Math.hypot(
        text.xIn - drawing.origin.xIn,
        text.yIn - (drawing.origin.yIn - y * 12 * paperInPerIn),
      );
      expect(awayIn, letter).toBeLessThan(0.3);
      const at = groundFt(drawing, text);
      expect(at.x).toBeGreaterThan(0);
      expect(at.y).toBeGreaterThan(0);
      expect(at.y).toBeLessThan(18);
    }
  });

  test('numbers of narrow bays are told apart by their leaders', () => {
    const narrow = drawPlan(plan('bays narrower than their marks'));
    const numbers = ['8', '9', '10', '11'];
    expect(textsOf(narrow).map(({ text }) => text)).toEqual(expect.arrayContaining([...numbers, 'A', 'B']));
    for (const text of textsOf(narrow).filter((one) => numbers.includes(one.text))) {
      expect(circleRound(text, narrow), text.text).toBeDefined();
    }
    const dots = baysOf(narrow).flatMap((one) => (one.kind === 'dot' ? [groundFt(narrow, one).x] : []));
    expect(dots.some((x) => x < 1)).toBe(true);
    expect(dots.some((x) => x > 38.5)).toBe(true);
  });

  test('no radius is written among bays', () => {
    const marks = [{ number: '1', area: '300 sq ft', at: { xIn: 120, yIn: 60 } }];
    const rounded = (samplePlans['rounded corners'] as PlanView).areas.map((area) => ({
      ...area,
      bays: { lines: [], marks, hooks: [] },
    }));
    const another = drawPlan(aPlan({ areas: rounded }));
    const texts = another.layers.flatMap(({ primitives }) =>
      primitives.flatMap((one) => (one.kind === 'text' ? [one.text] : [])),
    );
    expect(texts.filter((text) => text.startsWith('R '))).toEqual([]);
    expect(texts).toContain('20′');
  });

  test('where no scale has room for all of them, some are left out and the plan is drawn', () => {
    const marks = Array.from({ length: 80 }, (_, index) => ({
      number: `${index + 1}`,
      area: '1 sq ft',
      at: { xIn: 6 + 12 * index, yIn: 6 },
    }));
    const areas = [
      anArea({
        label: 'Kerb',
        outline: rectangle(80, 1),
        role: 'goes',
        bays: { lines: [], marks, hooks: [] },
      }),
    ];
    const crowded = drawPlan(aPlan({ areas, sheet: { widthIn: 2, heightIn: 2 } }));
    const numbers = textsOf(crowded).filter(({ text }) => /^\d+$/.test(text));
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers.length).toBeLessThan(80);
    const boxes = textsOf(crowded).map((text) => textBox(text));
    for (const [index, box] of boxes.entries()) {
      expect(boxes.slice(index + 1).some((other) => boxesOverlap(box, other))).toBe(false);
    }
    expect(crowded.layers.find(({ name }) => name === 'existing-goes')?.primitives).toHaveLength(2);
  });

  test('refuses a character outside the font in a number, an area, a letter', () => {
    const at = { xIn: 60, yIn: 60 };
    const none = { lines: [], marks: [], hooks: [] };
    for (const bays of [
      { ...none, marks: [{ number: '⅜', area: '1', at }] },
      { ...none, marks: [{ number: '1', area: '⅜', at }] },
      { ...none, hooks: [{ text: '⅜', at }] },
    ]) {
      expect(() => drawPlan(aPlan({ areas: [anArea({ bays })] }))).toThrow(/U\+215C/);
    }
  });
});
