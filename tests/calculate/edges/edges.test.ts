import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barsAlong, calcEdges, jointSteel } from '../../../src/calculate/edges/index.ts';
import { num } from '../../../src/calculate/figure.ts';
import type { EdgeJoint, Slab } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { fig } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, asTaped, at, byId, propertyRuns, rectangle, TAPE_LIMITS, tapedIn } from '../slabs.ts';

function edges(...slabs: readonly Slab[]) {
  const outline = calcOutline({ slabs: byId(...slabs), existing: {}, limits: TAPE_LIMITS });
  expect(outline.problems).toEqual([]);
  const { slabs: outlines, edges: numbered } = outline.data;
  // Each slab has 30 ft of joints within.
  const joints = Object.fromEntries(slabs.map(({ id }) => [id, { length: fig(30, 'ft') }]));
  return calcEdges({ slabs: byId(...slabs), shapes: outline.figures, outlines, edges: numbered, joints });
}

function joint(edge: number, how: EdgeJoint['how'], changed: Partial<EdgeJoint> = {}): EdgeJoint {
  return { edge, how, into: null, postTensioned: null, knownBy: null, detail: null, ...changed };
}

/** 40 by 18 ft; the house along edge 4, old concrete along edge 2. */
const shape = rectangle(480, 216, {
  edges: [
    { edge: 4, kind: 'house' },
    { edge: 2, kind: 'stays' },
  ],
});

describe('calcEdges', () => {
  test('nothing said: isolated at the house and old concrete, free elsewhere', () => {
    const made = edges(aSlab({ shape }));
    expect(at(made.data.joints, 'drive').map(({ edge, how, into }) => `${edge} ${how} ${into}`)).toEqual([
      '1 free new-slab',
      '2 isolated old-slab',
      '3 free new-slab',
      '4 isolated house',
    ]);
    expect(num(made.figures.total.isolation)).toBeCloseTo(36, 9);
    expect(made.figures.edges).toEqual({});
    expect(
      num(made.figures.total.dowels) + num(made.figures.total.ties) + num(made.figures.total.holes),
    ).toBe(0);
  });

  test('by hand: 18 ft of dowels drilled into old concrete, 40 ft of ties cast in, and the strip less', () => {
    const made = edges(
      aSlab({
        shape,
        thicknessIn: 6,
        edgeJoints: [joint(2, 'dowelled'), joint(1, 'tied'), joint(3, 'isolated')],
      }),
    );
    const own = at(made.figures.edges, 'drive');
    expect(num(at(own, 'edge-2').length)).toBeCloseTo(18, 9);
    expect(own['edge-2']?.bars && num(own['edge-2'].bars)).toBe(18); // every 12 in
    expect(own['edge-2']?.holes && num(own['edge-2'].holes)).toBe(18);
    expect(own['edge-1']?.bars && num(own['edge-1'].bars)).toBe(16); // 480 / 30
    expect(own['edge-1']?.holes).toBeUndefined();
    expect(num(made.figures.total.dowels)).toBe(18);
    expect(num(made.figures.total.ties)).toBe(16);
    expect(num(made.figures.total.holes)).toBe(18);
    // House 18 ft and, instead of old concrete, the 40 ft that are asked for.
    expect(num(made.figures.total.isolation)).toBeCloseTo(18 + 40, 9);
  });

  // The strip at old concrete has no sealant where dowels stand instead of it.
  test('regression: sealed are the joints and the soft strips that there are', () => {
    const sealed = (...edgeJoints: readonly EdgeJoint[]) => {
      const slab = aSlab({ shape, thicknessIn: 6, edgeJoints });
      const made = edges({ ...slab, joints: { ...slab.joints, sealed: true } });
      return num(made.figures.total.sealed);
    };
    expect(sealed()).toBeCloseTo(30 + 36, 9);
    expect(sealed(joint(2, 'dowelled'))).toBeCloseTo(30 + 18, 9);
    expect(sealed(joint(3, 'isolated'))).toBeCloseTo(30 + 36 + 40, 9);
    expect(num(edges(aSlab({ shape })).figures.total.sealed)).toBe(0);
  });

  test('an edge is what is left of it between rounded corners', () => {
    const rounded = rectangle(480, 216, {
      rounded: [{ corner: 1, by: { kind: 'setback', setbackIn: 36 } }],
      edges: [{ edge: 1, kind: 'stays' }],
      turnedRad: 0.4,
    });
    const made = edges(aSlab({ shape: rounded, edgeJoints: [joint(1, 'keyed')] }));
    expect(num(at(at(made.figures.edges, 'drive'), 'edge-1').length)).toBeCloseTo(37, 6);
    expect(num(made.figures.total.isolation)).toBeCloseTo(0, 6);
  });

  test('a circle is one edge; a strip has none with a number', () => {
    const round = edges(
      aSlab({ shape: asTaped({ kind: 'circle', diameterIn: 120 }), edgeJoints: [joint(1, 'isolated')] }),
    );
    expect(num(round.figures.total.isolation)).toBeCloseTo(Math.PI * 10, 9);
    expect(at(round.data.joints, 'drive').length).toBe(1);
  });

  const left = aSlab({ id: 'left', shape: rectangle(240, 216, { at: { xIn: 0, yIn: 0 } }) });
  const right = aSlab({ id: 'right', shape: rectangle(240, 216, { at: { xIn: 240, yIn: 0 } }) });

  test('two slabs that tie the same edge have its bars once', () => {
    const made = edges(
      { ...left, edgeJoints: [joint(2, 'tied')] },
      { ...right, edgeJoints: [joint(4, 'tied')] },
    );
    expect(made.problems).toEqual([]);
    expect(num(made.figures.total.ties)).toBe(8); // 216 / 30
    expect(at(made.data.joints, 'right').find(({ edge }) => edge === 4)?.barCount).toBe(0);
  });

  test('ties across what the other slab isolates are a problem at the later of the two', () => {
    const made = edges(
      { ...left, edgeJoints: [joint(2, 'isolated')] },
      { ...right, edgeJoints: [joint(4, 'tied')] },
    );
    expect(made.problems).toEqual([
      {
        code: 'edge-joints-disagree',
        path: 'build.slabs.right.edge-joints.4.how',
        parts: { how: 'tied', other: 'isolated', slab: 'left', edge: '2' },
      },
    ]);
    // Other edges of the two do not touch.
    expect(
      edges({ ...left, edgeJoints: [joint(4, 'isolated')] }, { ...right, edgeJoints: [joint(4, 'tied')] })
        .problems,
    ).toEqual([]);
  });

  testExpressions(
    'edges',
    edges(aSlab({ shape, edgeJoints: [joint(2, 'dowelled'), joint(3, 'isolated')] })).figures,
    5,
  );

  test('invariant: what is isolated and what is not are the whole rim', () => {
    const hows = fc.constantFrom<EdgeJoint['how']>('free', 'isolated', 'dowelled', 'tied', 'keyed');
    fc.assert(
      fc.property(
        tapedIn(60, 600),
        tapedIn(60, 400),
        fc.array(hows, { minLength: 4, maxLength: 4 }),
        (lengthIn, widthIn, said) => {
          const own = rectangle(lengthIn, widthIn, { edges: shape.edges });
          const made = edges(
            aSlab({ shape: own, edgeJoints: said.map((how, index) => joint(index + 1, how)) }),
          );
          const joints = at(made.data.joints, 'drive');
          const sumFt = (isIn: boolean) =>
            joints
              .filter(({ how }) => (how === 'isolated') === isIn)
              .reduce((sum, { lengthFt }) => sum + lengthFt, 0);
          expect(num(made.figures.total.isolation)).toBeCloseTo(sumFt(true), 6);
          expect(sumFt(true) + sumFt(false)).toBeCloseTo((lengthIn + widthIn) / 6, 6);
          for (const { steel, barCount, lengthFt } of joints) {
            if (steel !== null)
              expect(barCount * steel.spacingIn).toBeGreaterThanOrEqual(lengthFt * 12 - 1e-6);
          }
        },
      ),
      propertyRuns,
    );
  });
});

describe('bars across a joint', () => {
  test('refuses what is outside its range', () => {
    expect(() => jointSteel('tied', 0)).toThrow(RangeError);
    expect(() => jointSteel('dowelled', Number.NaN)).toThrow(RangeError);
    expect(() => barsAlong({ lengthIn: -1, spacingIn: 12 })).toThrow(RangeError);
  });
});
