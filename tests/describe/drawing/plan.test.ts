import { describe, expect, test } from 'vitest';
import { boxesOverlap, boxMeetsSegment, type Segment, textBox } from '../../../src/describe/drawing/boxes.ts';
import {
  type Drawing,
  drawPlan,
  type LayerName,
  type PlanView,
  type Primitive,
  type TextPrimitive,
} from '../../../src/describe/drawing/index.ts';
import { outlineSegments } from '../../../src/describe/drawing/paper.ts';
import { boundsOf } from '../../../src/geometry/index.ts';
import { anArea, aPlan, rectangle, samplePlans } from './sample-plans.ts';

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
    const lines = primitivesOf(drawing, 'joints', 'dimensions', 'labels').filter(
      (one) => one.kind === 'line',
    );
    for (const text of texts) {
      for (const segment of [...edgeSegments(view, drawing), ...lines]) {
        expect(boxMeetsSegment(textBox(text), segment), text.text).toBe(false);
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

  test('refuses no areas, a character outside the font, and a sheet too small for anything', () => {
    expect(() => drawPlan(aPlan({ areas: [] }))).toThrow(/at least one/);
    expect(() => drawPlan(aPlan({ areas: [anArea({ label: 'Auffahrt ⅜' })] }))).toThrow(/U\+215C/);
    expect(() => drawPlan(aPlan({ sheet: { widthIn: 0.5, heightIn: 0.5 } }))).toThrow(/too small/);
  });
});
