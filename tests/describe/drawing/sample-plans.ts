import type { PlanArea, PlanView } from '../../../src/describe/drawing/index.ts';
import {
  moveOutline,
  type Outline,
  polygonRing,
  rectangleRing,
  reverseRing,
  roundCorners,
  turnOutline,
} from '../../../src/geometry/index.ts';

/** Whole inches in feet and inches; enough for a plan in a test. */
export function feetAndInches(lengthIn: number): string {
  const wholeIn = Math.round(lengthIn);
  const feet = Math.floor(wholeIn / 12);
  const inches = wholeIn % 12;
  if (feet === 0) return `${inches}″`;
  return inches === 0 ? `${feet}′` : `${feet}′ ${inches}″`;
}

export function rectangle(lengthFt: number, widthFt: number, atXFt = 0, atYFt = 0): Outline {
  const ring = rectangleRing({ lengthIn: lengthFt * 12, widthIn: widthFt * 12 });
  return moveOutline({ rings: [ring] }, { dxIn: atXFt * 12, dyIn: atYFt * 12 });
}

export function anArea(changes: Partial<PlanArea> = {}): PlanArea {
  return {
    label: 'Driveway',
    outline: rectangle(20, 36),
    role: 'new',
    joints: [],
    dimension: feetAndInches,
    ...changes,
  };
}

export function aPlan(changes: Partial<PlanView> = {}): PlanView {
  return {
    id: 'plan',
    title: 'Maple Court',
    areas: [anArea()],
    sheet: { widthIn: 7, heightIn: 8 },
    system: 'us',
    words: { scale: (scale) => `Scale ${scale}`, radius: (length) => `R ${length}`, lengthOf: feetAndInches },
    ...changes,
  };
}

const jointFt = (fromX: number, fromY: number, toX: number, toY: number) => ({
  fromXIn: fromX * 12,
  fromYIn: fromY * 12,
  toXIn: toX * 12,
  toYIn: toY * 12,
});

const ell = polygonRing(
  (
    [
      [0, 0],
      [24, 0],
      [24, 20],
      [12, 20],
      [12, 50],
      [0, 50],
    ] as const
  ).map(([x, y]) => ({ xIn: x * 12, yIn: y * 12 })),
);

function roundedEll(): Outline {
  const result = roundCorners(
    ell,
    new Map([
      [1, 60],
      [3, 36],
      [4, 48],
    ]),
  );
  if (!result.ok) throw new Error('these corners fit');
  return { rings: [result.ring] };
}

const planter = reverseRing([
  { xIn: 44 * 12 + 18, yIn: 23 * 12, bulge: 1, edge: 'formed' },
  { xIn: 44 * 12 - 18, yIn: 23 * 12, bulge: 1, edge: 'formed' },
]);
const patio: Outline = { rings: [...rectangle(12, 10, 38, 18).rings, planter] };

/** Plans that are hard to letter, by name. */
export const samplePlans: Readonly<Record<string, PlanView>> = {
  rectangle: aPlan(),
  'an L with joints': aPlan({
    areas: [anArea({ outline: { rings: [ell] }, joints: [jointFt(0, 20, 12, 20), jointFt(0, 35, 12, 35)] })],
    sheet: { widthIn: 4.2, heightIn: 6 },
  }),
  'rounded corners': aPlan({
    areas: [anArea({ label: 'Driveway, 4 in thick', outline: roundedEll() })],
    sheet: { widthIn: 4.2, heightIn: 6 },
  }),
  'three slabs and a house': aPlan({
    areas: [
      anArea({ joints: [jointFt(0, 12, 20, 12), jointFt(0, 24, 20, 24), jointFt(10, 0, 10, 36)] }),
      anArea({
        label: 'Front walk',
        outline: rectangle(18, 4, 20, 28),
        joints: [jointFt(24, 28, 24, 32), jointFt(28, 28, 28, 32), jointFt(32, 28, 32, 32)],
      }),
      anArea({ label: 'Patio with a planter', outline: patio }),
      anArea({ label: 'House', outline: rectangle(30, 14, 20, 32), role: 'stays' }),
    ],
  }),
  'old concrete with a stoop': aPlan({
    areas: [
      anArea({ label: 'Old driveway', outline: rectangle(18, 40), role: 'goes' }),
      anArea({ label: 'Stoop at the kitchen door', outline: rectangle(5, 4, 18, 30), role: 'goes' }),
    ],
    sheet: { widthIn: 3.4, heightIn: 4.5 },
  }),
  'a tiny panel beside a large slab': aPlan({
    areas: [
      anArea({ outline: rectangle(40, 60) }),
      anArea({ label: 'Replacement panel at the gate', outline: rectangle(1, 1.5, 44, 10) }),
    ],
    sheet: { widthIn: 3.4, heightIn: 4 },
  }),
  'a panel alone': aPlan({
    areas: [anArea({ label: 'Replacement panel at the side gate', outline: rectangle(3, 3) })],
    sheet: { widthIn: 3.4, heightIn: 3 },
  }),
  'a long thin walk': aPlan({
    areas: [
      anArea({
        label: 'Side walk',
        outline: rectangle(70, 4),
        joints: Array.from({ length: 17 }, (_, index) => jointFt(4 * index + 4, 0, 4 * index + 4, 4)),
      }),
    ],
    sheet: { widthIn: 7, heightIn: 4 },
  }),
  'a tall thin walk': aPlan({
    areas: [anArea({ label: 'Side walk along the fence', outline: rectangle(4, 70) })],
    sheet: { widthIn: 3.4, heightIn: 8 },
  }),
  'a slanted slab': aPlan({ areas: [anArea({ outline: turnOutline(rectangle(20, 12), 33) })] }),
  metric: aPlan({
    areas: [
      anArea({
        label: 'Terraza',
        outline: { rings: [rectangleRing({ lengthIn: 6000 / 25.4, widthIn: 4000 / 25.4 })] },
        dimension: (lengthIn) => `${Math.round(lengthIn * 25.4)} mm`,
      }),
    ],
    sheet: { widthIn: 7, heightIn: 8 },
    system: 'metric',
  }),
};
