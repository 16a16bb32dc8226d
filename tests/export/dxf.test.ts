import { describe, expect, test } from 'vitest';
import {
  type Drawing,
  drawPlan,
  type PlanView,
  type TextPrimitive,
} from '../../src/describe/drawing/index.ts';
import { drawingToDxf } from '../../src/export/index.ts';
import { edgesOf, outlineAreaSqIn } from '../../src/geometry/index.ts';
import { anArea, aPlan, reverseCurve, samplePlans } from '../describe/drawing/sample-plans.ts';
import { areaSqIn, type DxfEntity, numbersOf, readDxf, textAt, verticesOf } from './read-dxf.ts';

const LAYER_OF = { new: 'new-slab', goes: 'existing-goes', stays: 'stays' } as const;

const writtenFor = (view: PlanView) => readDxf(drawingToDxf(drawPlan(view)));
const outlinesOn = (layer: string, entities: readonly DxfEntity[]) =>
  entities.filter((one) => one.type === 'LWPOLYLINE' && textAt(one, 8) === layer).map(verticesOf);

describe.each(Object.entries(samplePlans))('%s as DXF', (_name, view) => {
  const { entities, layers, handles, header, sections } = writtenFor(view);

  test('is in inches, each thing on a layer of the table, each handle once', () => {
    expect(header.get('$INSUNITS')).toBe('1');
    expect(sections).toEqual(['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS']);
    for (const entity of entities) expect(layers).toContain(textAt(entity, 8));
    expect(layers).toEqual(expect.arrayContaining(['dimensions', 'labels', 'frame']));
    expect(new Set(handles).size).toBe(handles.length);
    expect(new Set(entities.map(({ type }) => type))).not.toContain('HATCH');
  });

  test('has each outline closed, in its real place and as large as calculated', () => {
    for (const [role, layer] of Object.entries(LAYER_OF)) {
      const areas = view.areas.filter((area) => area.role === role);
      const rings = areas.flatMap((area) => area.outline.rings);
      const polylines = outlinesOn(layer, entities);
      expect(polylines).toHaveLength(rings.length);
      for (const [index, ring] of rings.entries()) {
        expect(polylines[index]).toHaveLength(ring.length);
        for (const [corner, vertex] of ring.entries()) {
          const drawn = polylines[index]?.[corner];
          expect(drawn?.xIn).toBeCloseTo(vertex.xIn, 8);
          expect(drawn?.yIn).toBeCloseTo(vertex.yIn, 8);
          expect(drawn?.bulge).toBeCloseTo(vertex.bulge, 12);
        }
      }
      const calculatedSqIn = areas.reduce((sum, area) => sum + outlineAreaSqIn(area.outline), 0);
      const drawnSqIn = polylines.reduce((sum, vertices) => sum + areaSqIn(vertices), 0);
      expect(Math.abs(drawnSqIn - calculatedSqIn)).toBeLessThan(1e-6);
    }
    const closedFlags = entities
      .filter(({ type }) => type === 'LWPOLYLINE')
      .map((one) => numbersOf(one, 70)[0]);
    expect(new Set(closedFlags)).toEqual(new Set([1]));
  });

  test('has all its texts, and every number is finite', () => {
    const drawing = drawPlan(view);
    const texts = drawing.layers
      .flatMap((layer) => layer.primitives)
      .filter((one): one is TextPrimitive => one.kind === 'text');
    expect(entities.filter(({ type }) => type === 'TEXT')).toHaveLength(texts.length);
    for (const entity of entities) {
      const numbers = entity.groups.filter(({ code }) => code >= 10 && code < 60);
      for (const { value } of numbers) expect(Number.isFinite(Number(value)), value).toBe(true);
    }
  });
});

describe('drawingToDxf', () => {
  test('exact: a walk 4 ft wide on a line of 40 ft is 160 sq ft, with its four arcs as arcs', () => {
    const { entities } = writtenFor(aPlan({ areas: [anArea({ ...reverseCurve })] }));
    const [walk = []] = outlinesOn('new-slab', entities);
    expect(areaSqIn(walk) / 144).toBeCloseTo(160, 8);
    // A quarter turn is tan(90 / 4); two arcs turn left and two right.
    const quarter = Math.tan(Math.PI / 8);
    expect(
      walk
        .map(({ bulge }) => bulge)
        .filter((bulge) => bulge !== 0)
        .toSorted((one, other) => one - other),
    ).toEqual([-quarter, -quarter, quarter, quarter]);
    expect(reverseCurve.outline.rings.flatMap((ring) => edgesOf(ring))).toHaveLength(walk.length);
  });

  test('exact: a joint and a text stand where they are, in real inches', () => {
    const joint = { line: { fromXIn: 0, fromYIn: 144, toXIn: 240, toYIn: 144 }, tag: null };
    const view = aPlan({ areas: [anArea({ joints: [joint] })], sheet: { widthIn: 7, heightIn: 9 } });
    const drawing = drawPlan(view);
    const { entities } = readDxf(drawingToDxf(drawing));
    const [line] = entities.filter((one) => one.type === 'LINE' && textAt(one, 8) === 'joints');
    const ends = [10, 20, 11, 21].map((code) => (line === undefined ? [] : numbersOf(line, code))[0]);
    for (const [index, expected] of [0, 144, 240, 144].entries())
      expect(ends[index]).toBeCloseTo(expected, 8);
    expect(line === undefined ? '' : textAt(line, 6)).toBe('DASHDOT');

    // At 3/16 in to the foot a paper inch is 64 in; capitals of 8 pt are 0.714 * 8 / 72 in high.
    const [dimension] = entities.filter((one) => one.type === 'TEXT' && textAt(one, 8) === 'dimensions');
    expect(drawing.scale.paperInPerIn).toBe(3 / 16 / 12);
    expect(numbersOf(dimension as DxfEntity, 40)[0]).toBeCloseTo((0.714 * 8 * 64) / 72, 6);
    expect(textAt(dimension as DxfEntity, 1)).toBe("20'");
    // Centred by its second point, on the middle of the slab.
    expect(numbersOf(dimension as DxfEntity, 72)).toEqual([1]);
    expect(numbersOf(dimension as DxfEntity, 11)[0]).toBeCloseTo(120, 8);
  });

  test('exact: the line of a bay stands where it is, dashed as on paper', () => {
    const view = samplePlans['load bays'] as PlanView;
    const drawing = drawPlan(view);
    const dxf = readDxf(drawingToDxf(drawing));
    const lines = dxf.entities.filter((one) => one.type === 'LINE' && textAt(one, 8) === 'bays');
    const [first] = lines.filter((line) => textAt(line, 6) === 'DASHED');
    const ends = [10, 20, 11, 21].map((code) => (first === undefined ? [] : numbersOf(first, code))[0]);
    for (const [index, expected] of [108, 0, 108, 216].entries())
      expect(ends[index]).toBeCloseTo(expected, 8);
    expect(lines.filter((line) => textAt(line, 6) === 'DASHED')).toHaveLength(3);
  });

  test('the same drawing gives the same bytes, whatever was written between', () => {
    const drawing = drawPlan(samplePlans['two holes'] as PlanView);
    const first = drawingToDxf(drawing);
    drawingToDxf(drawPlan(aPlan()));
    expect(drawingToDxf(drawing)).toBe(first);
    expect(drawingToDxf(structuredClone(drawing))).toBe(first);
    expect(first).not.toMatch(/\d{4}-\d\d-\d\d|\/work\/|\/home\//);
  });

  const plain = drawPlan(aPlan());
  const withText = (text: string): Drawing => ({
    ...plain,
    layers: plain.layers.map((layer) => ({
      ...layer,
      primitives: layer.primitives.map((one) => (one.kind === 'text' ? { ...one, text } : one)),
    })),
  });

  // What the layout refuses and what it lets through alike: a writer does not rely on who calls it.
  test.each([
    ['line breaks', 'Drive\n0\nEOF\r\n  0\nSECTION', 'Drive 0 EOF   0 SECTION'],
    ['other line breaks', 'Drive\u0085\u2028\u2029\v\fway', 'Drive way'],
    ['control characters', 'Dri\u0000ve\u001B[31m\u007F\u0007', 'Dri ve [31m'],
    ['half of a character', 'Drive\uD800way', 'Drive way'],
    [
      'codes of a drawing program',
      '%%u 100%%%d ^J \\U+0041 \\M+1 ^',
      '% %u 100% % %d ^ J \\ U+0041 \\ M+1 ^',
    ],
    ['a length', '14′ 6 3⁄8″', '14\' 6 3/8"'],
  ])('keeps %s in a label to one line that says itself', (_what, hostile, expected) => {
    const { entities, sections } = readDxf(drawingToDxf(withText(hostile)));
    const clean = readDxf(drawingToDxf(plain));
    expect(sections).toEqual(clean.sections);
    expect(entities.map(({ type }) => type)).toEqual(clean.entities.map(({ type }) => type));
    const said = entities.filter(({ type }) => type === 'TEXT').map((one) => textAt(one, 1));
    expect(new Set(said)).toEqual(new Set([expected]));
  });

  test('leaves out a text of nothing, and refuses a number that is none', () => {
    expect(readDxf(drawingToDxf(withText(' \n '))).entities.map(({ type }) => type)).not.toContain('TEXT');
    expect(() => drawingToDxf({ ...plain, scale: { paperInPerIn: 0, text: '' } })).toThrow(/finite/);
    expect(() => drawingToDxf({ ...plain, origin: { xIn: Number.NaN, yIn: 0 } })).toThrow(/finite/);
  });
});
