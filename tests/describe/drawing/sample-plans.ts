import type { PlanArea, PlanView } from '../../../src/describe/drawing/index.ts';
import {
  moveOutline,
  type Outline,
  type Point,
  polygonRing,
  type Ring,
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
    tags: [],
    corners: [],
    holes: [],
    bays: { lines: [], marks: [], hooks: [] },
    dimension: feetAndInches,
    ...changes,
  };
}

export function aPlan(changes: Partial<PlanView> = {}): PlanView {
  return {
    id: 'plan',
    title: 'Maple Court',
    areas: [anArea()],
    photoPoints: [],
    falls: [],
    isPlain: false,
    northDeg: null,
    sheet: { widthIn: 7, heightIn: 8 },
    system: 'us',
    words: {
      scale: (scale) => `Scale ${scale}`,
      radius: (length) => `R ${length}`,
      lengthOf: feetAndInches,
      north: 'N',
    },
    ...changes,
  };
}

const jointFt = (
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
  tag: string | null = null,
): PlanArea['joints'][number] => ({
  line: { fromXIn: fromX * 12, fromYIn: fromY * 12, toXIn: toX * 12, toYIn: toY * 12 },
  tag,
});
const pointFt = (x: number, y: number): Point => ({ xIn: x * 12, yIn: y * 12 });
const cornersFt = (points: readonly (readonly [number, number])[]) =>
  polygonRing(points.map(([x, y]) => pointFt(x, y)));

const numbered = (ring: Ring = []): PlanArea['corners'] =>
  ring.map(({ xIn, yIn }, index) => ({ text: `${index + 1}`, at: { xIn, yIn } }));

const ell = cornersFt([
  [0, 0],
  [24, 0],
  [24, 20],
  [12, 20],
  [12, 50],
  [0, 50],
]);

function roundedEll(): Outline {
  const result = roundCorners(
    ell,
    new Map(
      (
        [
          [1, 60],
          [3, 36],
          [4, 48],
        ] as const
      ).map(([corner, setbackIn]) => [corner, { kind: 'setback', setbackIn }]),
    ),
  );
  if (!result.ok) throw new Error('these corners fit');
  return { rings: [result.ring] };
}

/** A round hole: a ring of two half circles, clockwise. */
function roundHole(centreFt: Point, diameterIn: number): Ring {
  const yIn = centreFt.yIn * 12;
  const end = (sign: 1 | -1) =>
    ({ xIn: centreFt.xIn * 12 + (sign * diameterIn) / 2, yIn, bulge: 1, edge: 'formed' }) as const;
  return reverseRing([end(1), end(-1)]);
}

const patio: Outline = {
  rings: [...rectangle(12, 10, 38, 18).rings, roundHole({ xIn: 44, yIn: 23 }, 36)],
};

/**
 * A walk 4 ft wide and 40 ft long on its centre line: straight, an arc to the left, one as long to the
 * right, straight again. Both turn a quarter, with a centre line radius of 9 ft.
 */
export const reverseCurve = ((): { outline: Outline; tags: PlanArea['tags'] } => {
  const widthFt = 4;
  const radiusFt = 9;
  const straightFt = (40 - Math.PI * radiusFt) / 2;
  const quarter = Math.tan(Math.PI / 8);
  const half = widthFt / 2;
  const firstCentre = [straightFt, radiusFt] as const;
  const secondCentre = [straightFt + 2 * radiusFt, radiusFt] as const;
  const at = (x: number, y: number, bulge = 0) => ({ ...pointFt(x, y), bulge, edge: 'formed' }) as const;
  const endX = secondCentre[0] + straightFt;
  const ring: Ring = [
    at(0, -half),
    at(straightFt, -half, quarter),
    at(straightFt + radiusFt + half, radiusFt, -quarter),
    at(secondCentre[0], 2 * radiusFt - half),
    at(endX, 2 * radiusFt - half),
    at(endX, 2 * radiusFt + half),
    at(secondCentre[0], 2 * radiusFt + half, quarter),
    at(straightFt + radiusFt - half, radiusFt, -quarter),
    at(straightFt, half),
    at(0, half),
  ];
  const tag = (text: string, centre: readonly [number, number], arcFt: number, directionDeg: number) => ({
    text,
    centre: pointFt(...centre),
    at: pointFt(
      centre[0] + arcFt * Math.cos((directionDeg * Math.PI) / 180),
      centre[1] + arcFt * Math.sin((directionDeg * Math.PI) / 180),
    ),
  });
  return {
    outline: { rings: [ring] },
    tags: [
      tag('C1 R 11′', firstCentre, radiusFt + half, -45),
      tag('C2 R 7′', secondCentre, radiusFt - half, 135),
      tag('C3 R 11′', secondCentre, radiusFt + half, 135),
      tag('C4 R 7′', firstCentre, radiusFt - half, -45),
    ],
  };
})();

const twelveCorners = cornersFt([
  [0, 0],
  [10, 0],
  [10, 4],
  [16, 4],
  [16, 0],
  [30, 0],
  [30, 12],
  [24, 12],
  [24, 18],
  [9, 18],
  [9, 15],
  [0, 15],
]);

/** Plans that are hard to letter, by name. */
export const samplePlans: Readonly<Record<string, PlanView>> = {
  rectangle: aPlan(),
  'an L with joints': aPlan({
    areas: [anArea({ outline: { rings: [ell] }, joints: [jointFt(0, 20, 12, 20), jointFt(0, 35, 12, 35)] })],
    sheet: { widthIn: 4.2, heightIn: 6 },
  }),
  'corners with their numbers': aPlan({
    areas: [
      anArea({
        outline: { rings: [ell] },
        joints: [jointFt(0, 20, 12, 20, 'J1'), jointFt(0, 35, 12, 35, 'J2')],
        corners: numbered(ell),
      }),
      // Its corners crowd those of the L.
      anArea({
        label: 'Step',
        outline: rectangle(3, 2, 12.5, 20.5),
        corners: numbered(rectangle(3, 2, 12.5, 20.5).rings[0]),
      }),
    ],
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
  'load bays': aPlan({
    areas: [
      anArea({
        label: 'Old driveway',
        outline: rectangle(36, 18),
        role: 'goes',
        bays: {
          lines: [9, 18, 27].map((x) => jointFt(x, 0, x, 18).line),
          marks: [4.5, 13.5, 22.5, 31.5].map((x, index) => ({
            number: `${index + 2}`,
            area: '162 sq ft',
            at: pointFt(x, 9),
          })),
          hooks: [
            { text: 'A', at: pointFt(0, 0) },
            { text: 'B', at: pointFt(0, 18) },
          ],
        },
      }),
      anArea({
        label: 'Brick edge',
        outline: rectangle(12, 0.7, 4, 18),
        role: 'goes',
        bays: { lines: [], marks: [{ number: '1', area: '8 sq ft', at: pointFt(10, 18.35) }], hooks: [] },
      }),
    ],
  }),
  'bays narrower than their marks': aPlan({
    areas: [
      anArea({
        label: 'Old walk along the fence',
        outline: rectangle(40, 3),
        role: 'goes',
        bays: {
          lines: [1, 20, 38.5].map((x) => jointFt(x, 0, x, 3).line),
          marks: [0.5, 10.5, 29.25, 39.25].map((x, index) => ({
            number: `${index + 8}`,
            area: '57 sq ft',
            at: pointFt(x, 1.5),
          })),
          hooks: [
            { text: 'A', at: pointFt(0, 0) },
            { text: 'B', at: pointFt(0, 3) },
          ],
        },
      }),
    ],
    sheet: { widthIn: 7, heightIn: 4 },
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
  'a walk with a reverse curve': aPlan({
    areas: [
      anArea({
        label: 'Garden walk',
        ...reverseCurve,
        joints: [jointFt(4, -2, 4, 2, 'J1'), jointFt(25, 16, 25, 20, 'J2')],
      }),
    ],
    northDeg: 30,
  }),
  'a reverse curve on half a page': aPlan({
    areas: [anArea({ label: 'Garden walk', ...reverseCurve })],
    northDeg: 200,
    sheet: { widthIn: 3.4, heightIn: 3.2 },
  }),
  'a drive with a slanting end': aPlan({
    areas: [
      anArea({
        outline: {
          rings: [
            cornersFt([
              [0, 0],
              [40, -7],
              [40, 14],
              [0, 16],
            ]),
          ],
        },
        joints: [
          jointFt(10, -1.75, 10, 15.5, 'J1'),
          jointFt(20, -3.5, 20, 15, 'J2'),
          jointFt(30, -5.25, 30, 14.5, 'J3'),
          jointFt(0, 8, 40, 3.5, 'J4'),
        ],
      }),
    ],
    photoPoints: [
      { text: '1', at: pointFt(44, -9), lookingDeg: 300 },
      { text: '2', at: pointFt(5, 4), lookingDeg: 90 },
      { text: '3', at: pointFt(20, 8), lookingDeg: 200 },
      { text: '4', at: pointFt(20, 8), lookingDeg: 20 },
    ],
    northDeg: 315,
  }),
  'two holes': aPlan({
    areas: [
      anArea({
        label: 'Patio',
        outline: {
          rings: [
            ...rectangle(30, 20).rings,
            reverseRing(rectangle(9, 7, 16, 8).rings[0] ?? []),
            roundHole({ xIn: 6, yIn: 5 }, 30),
          ],
        },
        holes: [
          { label: 'Planter', at: pointFt(20, 11) },
          { label: 'Tree well', at: pointFt(6, 5) },
        ],
        tags: [{ text: 'C1 R 1′ 3″', at: pointFt(6, 6.25), centre: pointFt(6, 5) }],
        joints: [
          jointFt(0, 10, 16, 10, 'J1'),
          jointFt(10, 0, 10, 20, 'J2'),
          jointFt(20, 0, 20, 8, 'J3'),
          jointFt(20, 15, 20, 20, 'J4'),
        ],
      }),
      anArea({ label: 'House', outline: rectangle(30, 8, 0, 20), role: 'stays' }),
    ],
    photoPoints: [{ text: '12', at: pointFt(-6, 3), lookingDeg: 45 }],
    northDeg: 0,
  }),
  'twelve corners': aPlan({
    areas: [
      anArea({
        label: 'Courtyard',
        outline: { rings: [twelveCorners] },
        joints: [jointFt(10, 4, 10, 15, 'J1'), jointFt(16, 4, 16, 18, 'J2'), jointFt(0, 8, 30, 8, 'J3')],
      }),
    ],
    northDeg: 90,
  }),
  'twelve corners on half a page': aPlan({
    areas: [anArea({ label: 'Courtyard', outline: { rings: [twelveCorners] } })],
    sheet: { widthIn: 3.3, heightIn: 3.3 },
  }),
  'joints numbered on a long thin walk': aPlan({
    areas: [
      anArea({
        label: 'Side walk',
        outline: rectangle(70, 4),
        joints: Array.from({ length: 16 }, (_, index) =>
          jointFt(4 * index + 4, 0, 4 * index + 4, 4, `J${index + 1}`),
        ),
      }),
    ],
    sheet: { widthIn: 7, heightIn: 4 },
  }),
  'two joints close together': aPlan({
    areas: [
      anArea({
        outline: rectangle(40, 12),
        joints: [
          jointFt(10, 0, 10, 12, 'J1'),
          jointFt(10.5, 0, 10.5, 12, 'J2'),
          jointFt(11, 0, 11, 12, 'J3'),
        ],
      }),
    ],
  }),
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
