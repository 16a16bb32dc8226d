import { describe, expect, test } from 'vitest';
import { boxesOverlap, boxMeetsSegment, type Segment, textBox } from '../../../src/describe/drawing/boxes.ts';
import {
  type Drawing,
  drawPlan,
  type LayerName,
  type PathPart,
  type PlanView,
  type Primitive,
  type TextPrimitive,
} from '../../../src/describe/drawing/index.ts';
import { outlineSegments } from '../../../src/describe/drawing/paper.ts';
import {
  boundsOf,
  chordsOf,
  containsPoint,
  distanceIn,
  edgesOf,
  type Outline,
  type Point,
  type Vertex,
} from '../../../src/geometry/index.ts';
import { anArea, aPlan, rectangle, reverseCurve, samplePlans } from './sample-plans.ts';

const primitivesOf = (drawing: Drawing, ...names: LayerName[]): Primitive[] =>
  drawing.layers
    .filter((layer) => names.length === 0 || names.includes(layer.name))
    .flatMap((layer) => layer.primitives);
const textsOf = (drawing: Drawing, ...names: LayerName[]): TextPrimitive[] =>
  primitivesOf(drawing, ...names).filter((primitive) => primitive.kind === 'text');

/** Edges on the paper, placed by the drawing's own first outline path: independent of its layout code. */
function edgeSegments(view: PlanView, drawing: Drawing): Segment[] {
  const each = view.areas.map((area) => boundsOf(area.outline));
  const bounds = {
    minXIn: Math.min(...each.map((one) => one.minXIn)),
    minYIn: Math.min(...each.map((one) => one.minYIn)),
    maxXIn: Math.max(...each.map((one) => one.maxXIn)),
    maxYIn: Math.max(...each.map((one) => one.maxYIn)),
  };
  const [area] = view.areas;
  const layer = { new: 'new-slab', goes: 'existing-goes', stays: 'stays' } as const;
  const [path] = primitivesOf(drawing, layer[area?.role ?? 'new']).filter((one) => one.kind === 'path');
  const start = path?.parts[0];
  const corner = area?.outline.rings[0]?.[0];
  if (start?.kind !== 'move' || corner === undefined) throw new Error('a plan starts with an outline');
  const { paperInPerIn } = drawing.scale;
  const placement = {
    paperInPerIn,
    bounds,
    corner: {
      xIn: start.xIn - (corner.xIn - bounds.minXIn) * paperInPerIn,
      yIn: start.yIn - (bounds.maxYIn - corner.yIn) * paperInPerIn,
    },
  };
  return view.areas.flatMap((one) => outlineSegments(placement, one.outline));
}

/** What a primitive draws as straight pieces: lines, outlines by their corners, dots by their crosses. */
function strokesOf(primitive: Primitive): Segment[] {
  switch (primitive.kind) {
    case 'line':
      return [primitive];
    case 'dot': {
      const { xIn, yIn, radiusIn } = primitive;
      return [
        { from: { xIn: xIn - radiusIn, yIn }, to: { xIn: xIn + radiusIn, yIn } },
        { from: { xIn, yIn: yIn - radiusIn }, to: { xIn, yIn: yIn + radiusIn } },
      ];
    }
    case 'path':
      return outlineOf(primitive.parts).rings.flatMap((ring) =>
        chordsOf(ring).map(({ from, to }) => ({
          from: { xIn: from.xIn, yIn: -from.yIn },
          to: { xIn: to.xIn, yIn: -to.yIn },
        })),
      );
    default:
      return [];
  }
}

/** The parts of a path or hatch as an outline, with y up as the geometry has it. */
function outlineOf(parts: readonly PathPart[]): Outline {
  const rings: Vertex[][] = [];
  for (const part of parts) {
    if (part.kind === 'close') continue;
    const vertex = { xIn: part.xIn, yIn: -part.yIn, bulge: 0, edge: 'formed' } as const;
    if (part.kind === 'move') {
      rings.push([vertex]);
      continue;
    }
    const ring = rings.at(-1) ?? [];
    const last = ring.pop();
    if (last === undefined) throw new Error('a path begins with a move');
    ring.push({ ...last, bulge: part.kind === 'arc' ? part.bulge : 0 });
    const [first] = ring;
    if (first?.xIn !== vertex.xIn || first.yIn !== vertex.yIn) ring.push(vertex);
  }
  return { rings };
}

test('the number of a corner stands within a quarter inch of it, inside or out', () => {
  const view = samplePlans['corners with their numbers'] as PlanView;
  const drawing = drawPlan(view);
  const { paperInPerIn } = drawing.scale;
  const numbers = textsOf(drawing, 'joints').filter(({ text }) => /^\d$/.test(text));
  expect(numbers.length).toBeGreaterThan(7);
  const corners = view.areas.flatMap((area) => area.corners);
  for (const { text, xIn, yIn } of numbers) {
    const distances = corners
      .filter((corner) => corner.text === text)
      .map(({ at }) =>
        Math.hypot(
          drawing.origin.xIn + at.xIn * paperInPerIn - xIn,
          drawing.origin.yIn - at.yIn * paperInPerIn - yIn,
        ),
      );
    expect(Math.min(...distances), text).toBeLessThan(0.26);
  }
});

describe.each(Object.entries(samplePlans))('%s', (_name, view) => {
  const drawing = drawPlan(view);
  const texts = textsOf(drawing);

  test('no two texts overlap', () => {
    for (const [index, text] of texts.entries()) {
      for (const other of texts.slice(index + 1)) {
        expect(boxesOverlap(textBox(text), textBox(other)), `${text.text} / ${other.text}`).toBe(false);
      }
    }
  });

  test('no text is crossed by an edge, a joint, a dimension line or a leader', () => {
    const segments = [...edgeSegments(view, drawing), ...primitivesOf(drawing).flatMap(strokesOf)];
    for (const text of texts) {
      for (const segment of segments) {
        expect(boxMeetsSegment(textBox(text), segment), text.text).toBe(false);
      }
    }
  });

  test('nothing is drawn off the sheet, nor into the title strip what is not of it', () => {
    const [stripTop] = primitivesOf(drawing, 'frame').filter((one) => one.kind === 'line');
    const bottomIn = stripTop?.kind === 'line' ? stripTop.from.yIn : Number.NaN;
    for (const layer of drawing.layers) {
      const lowestIn = layer.name === 'frame' ? drawing.heightIn : bottomIn;
      for (const { from, to } of layer.primitives.flatMap(strokesOf)) {
        for (const { xIn, yIn } of [from, to]) {
          expect(xIn).toBeGreaterThan(0);
          expect(xIn).toBeLessThan(drawing.widthIn);
          expect(yIn).toBeGreaterThan(0);
          expect(yIn, layer.name).toBeLessThan(lowestIn);
        }
      }
    }
  });

  test('every joint number, curve tag, photograph and hole has its text once', () => {
    const said = texts.map((text) => text.text);
    const given = [
      ...view.areas.flatMap(({ joints }) => joints.flatMap(({ tag }) => (tag === null ? [] : [tag]))),
      ...view.areas.flatMap(({ tags }) => tags.map(({ text }) => text)),
      ...view.photoPoints.map(({ text }) => text),
      ...view.areas.flatMap(({ holes }) => holes.map(({ label }) => label)),
    ];
    for (const text of given)
      expect(
        said.filter((one) => one === text),
        text,
      ).toHaveLength(1);
  });

  test('hatched is what is concrete: not a hole, not a text', () => {
    const roles = { new: 'new-slab', goes: 'existing-goes' } as const;
    for (const [role, layer] of Object.entries(roles)) {
      const areas = view.areas.filter((area) => area.role === role);
      const hatches = primitivesOf(drawing, layer).filter((one) => one.kind === 'hatch');
      expect(hatches).toHaveLength(areas.length);
      for (const [index, area] of areas.entries()) {
        const hatched = outlineOf(hatches[index]?.parts ?? []);
        const isHatched = ({ xIn, yIn }: Point) => containsPoint(hatched, { xIn, yIn: -yIn });
        const onPaper = ({ xIn, yIn }: Point): Point => ({
          xIn: drawing.origin.xIn + xIn * drawing.scale.paperInPerIn,
          yIn: drawing.origin.yIn - yIn * drawing.scale.paperInPerIn,
        });
        for (const { at } of area.holes) expect(isHatched(onPaper(at))).toBe(false);
        for (const text of texts) {
          const [a, , c] = textBox(text);
          expect(isHatched({ xIn: (a.xIn + c.xIn) / 2, yIn: (a.yIn + c.yIn) / 2 }), text.text).toBe(false);
        }
        // A hair inside the middle of each straight side is concrete.
        const sides = area.outline.rings
          .flatMap((ring) => edgesOf(ring))
          .filter(({ from }) => from.bulge === 0);
        for (const { from, to } of sides) {
          const hairIn = 0.01 / distanceIn(from, to);
          const inside = {
            xIn: (from.xIn + to.xIn) / 2 - (to.yIn - from.yIn) * hairIn,
            yIn: (from.yIn + to.yIn) / 2 + (to.xIn - from.xIn) * hairIn,
          };
          expect(isHatched(onPaper(inside))).toBe(true);
        }
      }
    }
  });

  test('every text lies on the sheet, is 8 pt or more and never upside down', () => {
    for (const text of texts) {
      for (const corner of textBox(text)) {
        expect(corner.xIn).toBeGreaterThan(0);
        expect(corner.xIn).toBeLessThan(drawing.widthIn);
        expect(corner.yIn).toBeGreaterThan(0);
        expect(corner.yIn).toBeLessThan(drawing.heightIn);
      }
      expect(text.sizePt).toBeGreaterThanOrEqual(8);
      expect(text.turnDeg).toBeGreaterThanOrEqual(-90);
      expect(text.turnDeg).toBeLessThan(90);
    }
  });

  test('every area has its whole label', () => {
    const words = textsOf(drawing, 'labels').flatMap((text) => text.text.split(' '));
    for (const area of view.areas) expect(words).toEqual(expect.arrayContaining(area.label.split(' ')));
  });

  test('every number is finite, and the drawing keeps to the sheet', () => {
    const numbers: number[] = [];
    JSON.stringify(drawing, (_key, value) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers.length).toBeGreaterThan(50);
    expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
    expect(drawing.widthIn).toBeLessThanOrEqual(view.sheet.widthIn);
    expect(drawing.heightIn).toBeLessThanOrEqual(view.sheet.heightIn);
  });

  test('the same view gives the same drawing', () => {
    expect(drawPlan(view)).toEqual(drawing);
  });
});

describe('scale', () => {
  test('a slab of 20 by 36 ft is drawn as large as the sheet allows with dimensions and strip', () => {
    const drawing = drawPlan(aPlan());
    // At 3/16 in to the foot the slab is 6.75 in high: with dimensions and strip too much for 8 in, not for 9.
    expect(drawing.scale.text).toBe('Scale 1/8″ = 1′');
    expect(drawing.scale.paperInPerIn).toBe(1 / 96);
    expect(drawPlan(aPlan({ sheet: { widthIn: 7, heightIn: 9 } })).scale.text).toBe('Scale 3/16″ = 1′');
  });

  test('metric: a 6 m terrace on 7 in of paper is drawn 1:50', () => {
    expect(drawPlan(samplePlans['metric'] as PlanView).scale).toEqual({
      paperInPerIn: 1 / 50,
      text: 'Scale 1:50',
    });
  });

  test('a very long walk falls below the usual scales and still fits', () => {
    const drawing = drawPlan(aPlan({ areas: [anArea({ outline: rectangle(900, 4) })] }));
    expect(drawing.scale.paperInPerIn).toBeLessThan(1 / 192);
  });

  test('the ticks of the scale bar are as far apart as it says, with the labels starting at them', () => {
    const drawing = drawPlan(aPlan());
    const [zero, end] = textsOf(drawing, 'frame').slice(-2);
    expect(zero?.text).toBe('0');
    expect(end?.text).toBe('10′');
    expect((end?.xIn ?? 0) - (zero?.xIn ?? 0)).toBeCloseTo(120 * drawing.scale.paperInPerIn, 10);
    expect([zero?.anchor, end?.anchor]).toEqual(['start', 'start']);
    const verticals = primitivesOf(drawing, 'frame').filter(
      (one) => one.kind === 'line' && one.from.xIn === one.to.xIn,
    );
    expect(verticals.map((one) => one.kind === 'line' && one.from.xIn)).toEqual(
      expect.arrayContaining([zero?.xIn, end?.xIn]),
    );
  });
});

describe('dimensions', () => {
  test('a rectangle has its two sides written once each', () => {
    expect(
      textsOf(drawPlan(aPlan()), 'dimensions')
        .map((text) => text.text)
        .sort(),
    ).toEqual(['20′', '36′']);
  });

  test('an L has all six, but for the edges shorter than their text', () => {
    const dimensions = textsOf(drawPlan(samplePlans['an L with joints'] as PlanView), 'dimensions');
    expect(dimensions.map((text) => text.text).sort()).toEqual(['12′', '12′', '20′', '24′', '30′', '50′']);
    const tiny = drawPlan(samplePlans['a tiny panel beside a large slab'] as PlanView);
    expect(textsOf(tiny, 'dimensions').map((text) => text.text)).not.toContain('1′');
  });

  test('the dimension line is as long as its edge', () => {
    const drawing = drawPlan(aPlan());
    const lengthsIn = primitivesOf(drawing, 'dimensions').flatMap((one) =>
      one.kind === 'line' ? [Math.hypot(one.to.xIn - one.from.xIn, one.to.yIn - one.from.yIn)] : [],
    );
    for (const edgeIn of [240, 432]) {
      const closest = Math.min(
        ...lengthsIn.map((one) => Math.abs(one - edgeIn * drawing.scale.paperInPerIn)),
      );
      expect(closest).toBeLessThan(1e-9);
    }
  });

  test('each radius is written, with a dot at its centre where there is room', () => {
    const drawing = drawPlan(samplePlans['rounded corners'] as PlanView);
    const texts = textsOf(drawing, 'dimensions').map((text) => text.text);
    expect(texts).toEqual(expect.arrayContaining(['R 5′', 'R 3′', 'R 4′']));
    expect(primitivesOf(drawing, 'dimensions').some((one) => one.kind === 'dot')).toBe(true);
  });

  test('of a shape that was taped on a slope no radius is: from above it has none', () => {
    const plan = samplePlans['rounded corners'] as PlanView;
    const areas = plan.areas.map((area) => ({ ...area, isForeshortened: true }));
    const texts = textsOf(drawPlan({ ...plan, areas }), 'dimensions').map((text) => text.text);
    expect(texts.length).toBeGreaterThan(0);
    expect(texts.filter((text) => text.startsWith('R'))).toEqual([]);
  });
});

describe('many sides and curves', () => {
  const dimensionsOf = (name: string) =>
    textsOf(drawPlan(samplePlans[name] as PlanView), 'dimensions')
      .map((text) => text.text)
      .sort();

  test('twelve corners have each length once, and the whole length and width', () => {
    const sides = ['10′', '4′', '6′', '14′', '12′', '6′', '6′', '15′', '3′', '9′', '15′'];
    // Of the two sides of the notch, which face each other, one is written.
    expect(dimensionsOf('twelve corners')).toEqual([...sides, '30′', '18′'].sort());
  });

  test('a reverse curve has its whole length and width, its straight ends and no radius beside its tags', () => {
    // 4 ft wide; the centre line runs 5.863 ft straight at each end and 18 ft across and up between.
    const ends = ['4′', '4′', '5′ 10″', '5′ 10″'];
    const tags = ['C1 R 11′', 'C2 R 7′', 'C3 R 11′', 'C4 R 7′'];
    expect(dimensionsOf('a walk with a reverse curve')).toEqual([...ends, ...tags, '22′', '29′ 9″'].sort());
  });

  test('a leader runs to a dot at the centre of its arc, as long as the radius and a little more', () => {
    const drawing = drawPlan(samplePlans['a walk with a reverse curve'] as PlanView);
    const { paperInPerIn } = drawing.scale;
    const [tag] = reverseCurve.tags;
    const centre = {
      xIn: drawing.origin.xIn + (tag?.centre.xIn ?? 0) * paperInPerIn,
      yIn: drawing.origin.yIn - (tag?.centre.yIn ?? 0) * paperInPerIn,
    };
    const offIn = (point: Point) => Math.hypot(point.xIn - centre.xIn, point.yIn - centre.yIn);
    const dimensions = primitivesOf(drawing, 'dimensions');
    expect(dimensions.some((one) => one.kind === 'dot' && offIn(one) < 1e-9)).toBe(true);
    const radii = dimensions.flatMap((one) =>
      one.kind === 'line' && offIn(one.from) < 1e-9 ? [offIn(one.to) / paperInPerIn] : [],
    );
    expect(radii).toEqual([expect.closeTo(11 * 12, 6)]);
  });
});

describe('north and photographs', () => {
  test.each([0, 30, 90, 200, 315])('the arrow points %s degrees clockwise from up the plan', (northDeg) => {
    const without = primitivesOf(drawPlan(aPlan()), 'frame');
    const drawing = drawPlan(aPlan({ northDeg }));
    const frame = primitivesOf(drawing, 'frame');
    expect(frame.length).toBe(without.length + 5);
    const [shaft] = frame.slice(-5);
    if (shaft?.kind !== 'line') throw new Error('the arrow begins with its shaft');
    const towardsDeg =
      (Math.atan2(shaft.to.xIn - shaft.from.xIn, shaft.from.yIn - shaft.to.yIn) * 180) / Math.PI;
    expect((towardsDeg + 360) % 360).toBeCloseTo(northDeg, 6);
    const letter = frame.at(-1);
    if (letter?.kind !== 'text') throw new Error('the arrow ends with its letter');
    expect([letter.text, letter.turnDeg]).toEqual(['N', 0]);
    const off = (point: Point) => Math.hypot(point.xIn - letter.xIn, point.yIn - letter.yIn);
    expect(off(shaft.to)).toBeLessThan(off(shaft.from));
  });

  test('a standpoint is a dot in its place with a wedge that opens the way it looks', () => {
    const view = samplePlans['two holes'] as PlanView;
    const drawing = drawPlan(view);
    const [wedge, dot] = primitivesOf(drawing, 'photos');
    if (wedge?.kind !== 'path' || dot?.kind !== 'dot') throw new Error('a wedge, then its dot');
    const [at] = view.photoPoints.map((point) => point.at);
    expect(dot.xIn).toBeCloseTo(drawing.origin.xIn + (at?.xIn ?? 0) * drawing.scale.paperInPerIn, 9);
    expect(dot.yIn).toBeCloseTo(drawing.origin.yIn - (at?.yIn ?? 0) * drawing.scale.paperInPerIn, 9);
    const [, left, right] = outlineOf(wedge.parts).rings[0] ?? [];
    // Looking 45 degrees clockwise from up: as far right as up.
    const rightIn = ((left?.xIn ?? 0) + (right?.xIn ?? 0)) / 2 - dot.xIn;
    const upIn = ((left?.yIn ?? 0) + (right?.yIn ?? 0)) / 2 + dot.yIn;
    expect(rightIn).toBeGreaterThan(0.1);
    expect(upIn).toBeCloseTo(rightIn, 9);
  });
});

describe('arrows of fall', () => {
  const falls = [
    { text: '1/4 in', at: { xIn: 120, yIn: 300 }, towardsRad: 0 },
    { text: '1/2 in', at: { xIn: 120, yIn: 100 }, towardsRad: Math.PI / 2 },
  ];
  const drawing = drawPlan(aPlan({ falls }));

  test('each is a shaft over its place with two barbs at the tip, the way it falls', () => {
    const lines = primitivesOf(drawing, 'falls').filter((one) => one.kind === 'line');
    expect(lines).toHaveLength(6);
    for (const [index, fall] of falls.entries()) {
      const [shaft, ...barbs] = lines.slice(3 * index, 3 * index + 3);
      if (shaft === undefined) throw new Error('an arrow has a shaft');
      const middle = {
        xIn: (shaft.from.xIn + shaft.to.xIn) / 2,
        yIn: (shaft.from.yIn + shaft.to.yIn) / 2,
      };
      expect(middle.xIn).toBeCloseTo(drawing.origin.xIn + fall.at.xIn * drawing.scale.paperInPerIn, 9);
      expect(middle.yIn).toBeCloseTo(drawing.origin.yIn - fall.at.yIn * drawing.scale.paperInPerIn, 9);
      // The paper runs down, the ground up.
      const towardsRad = Math.atan2(shaft.from.yIn - shaft.to.yIn, shaft.to.xIn - shaft.from.xIn);
      expect(towardsRad).toBeCloseTo(fall.towardsRad, 9);
      for (const barb of barbs) {
        expect(distanceIn(barb.to, shaft.to)).toBeCloseTo(0, 9);
        expect(distanceIn(barb.from, shaft.from)).toBeLessThan(distanceIn(shaft.to, shaft.from));
      }
    }
  });

  test('its slope stands beside it and not on it', () => {
    const texts = textsOf(drawing, 'falls');
    expect(texts.map(({ text }) => text)).toEqual(['1/4 in', '1/2 in']);
    const lines = primitivesOf(drawing, 'falls').filter((one) => one.kind === 'line');
    for (const text of texts) {
      expect(lines.some((line) => boxMeetsSegment(textBox(text, 0), line))).toBe(false);
    }
  });

  test('a plan without them has no such layer; one with heights at its corners has no radius', () => {
    expect(drawPlan(aPlan()).layers.map(({ name }) => name)).not.toContain('falls');
    const rounded = samplePlans['rounded corners'] ?? aPlan();
    const radii = (plan: PlanView) => textsOf(drawPlan(plan)).filter(({ text }) => text.startsWith('R '));
    const [area] = rounded.areas;
    const at = area?.outline.rings[0]?.[0] ?? { xIn: 0, yIn: 0 };
    const bare = [{ text: null, at, towardsRad: 0 }];
    const corners = [{ text: '1: 100.00 ft', at }];
    const areas = rounded.areas.map((one) => ({ ...one, corners }));
    expect(radii({ ...rounded, areas, falls: bare })).toEqual([]);
    expect(textsOf(drawPlan({ ...rounded, areas, falls: bare }), 'falls')).toEqual([]);
    expect(radii({ ...rounded, falls: bare }).length).toBeGreaterThan(0);
  });
});

describe('labels and hatches', () => {
  test('a label that does not fit inside has a leader to a dot', () => {
    const drawing = drawPlan(samplePlans['a tiny panel beside a large slab'] as PlanView);
    const kinds = primitivesOf(drawing, 'labels').map((one) => one.kind);
    expect(kinds).toContain('dot');
    expect(kinds).toContain('line');
  });

  test('a hatch leaves the labels free; what stays has none', () => {
    const drawing = drawPlan(samplePlans['three slabs and a house'] as PlanView);
    const [driveway] = primitivesOf(drawing, 'new-slab').filter((one) => one.kind === 'hatch');
    // Its own ring and the box of its label.
    expect(driveway?.parts.filter((part) => part.kind === 'close')).toHaveLength(2);
    expect(primitivesOf(drawing, 'stays').map((one) => one.kind)).toEqual(['path']);
  });

  test('a label of hundreds of letters is cut rather than left out or laid over lines', () => {
    const drawing = drawPlan(aPlan({ areas: [anArea({ label: 'x'.repeat(400) })] }));
    expect(textsOf(drawing, 'labels').map((text) => text.text)).toEqual([expect.stringMatching(/^x+…$/)]);
  });

  test('more names than there is room for cost the names, not the plan', () => {
    const areas = Array.from({ length: 90 }, (_, index) =>
      anArea({
        label: `Stepping stone number ${index + 1}`,
        outline: rectangle(1, 1, (index % 10) * 2, Math.floor(index / 10) * 2),
      }),
    );
    const drawing = drawPlan(aPlan({ areas, sheet: { widthIn: 3, heightIn: 3.5 } }));
    expect(textsOf(drawing, 'labels')).toEqual([]);
    expect(primitivesOf(drawing, 'new-slab').filter(({ kind }) => kind === 'path')).toHaveLength(90);
  });

  test('refuses no areas, a character outside the font, and a sheet too small for anything', () => {
    expect(() => drawPlan(aPlan({ areas: [] }))).toThrow(/at least one/);
    expect(() => drawPlan(aPlan({ areas: [anArea({ label: 'Auffahrt ⅜' })] }))).toThrow(/U\+215C/);
    const nowhere = [{ label: 'Planter', at: { xIn: 60, yIn: 60 } }];
    expect(() => drawPlan(aPlan({ areas: [anArea({ holes: nowhere })] }))).toThrow(/must lie in a hole/);
    expect(() => drawPlan(aPlan({ sheet: { widthIn: 0.5, heightIn: 0.5 } }))).toThrow(/too small/);
  });
});
