import { describe, expect, test } from 'vitest';
import { type Drawing, drawPlan } from '../../src/describe/drawing/index.ts';
import { drawingToSvg } from '../../src/render/svg.ts';
import { anArea, aPlan, samplePlans } from '../describe/drawing/sample-plans.ts';

const emptyDrawing: Drawing = {
  id: 'plan',
  title: 'Plan',
  widthIn: 2,
  heightIn: 1,
  scale: { paperInPerIn: 1 / 48, text: '' },
  origin: { xIn: 0, yIn: 0 },
  layers: [],
};

describe('drawingToSvg', () => {
  test('is sized in inches, one unit to the point, and named for a reader', () => {
    const svg = drawingToSvg(drawPlan(aPlan({ id: 'front', title: 'Front of the house' })));
    expect(svg).toMatch(/^<svg [^>]*role="img" aria-labelledby="front-title"/);
    expect(svg).toContain('<title id="front-title">Front of the house</title>');
    const [, width, unitsWide] = svg.match(/ width="([\d.]+)in".* viewBox="0 0 ([\d.]+) /) ?? [];
    expect(Number(unitsWide)).toBe(Number(width) * 72);
  });

  test('hostile text comes out as text, wherever it stands', () => {
    const label = `<script>alert("1")</script> & 'b'`;
    const words = { scale: () => label, radius: () => label, lengthOf: () => label, north: label };
    const areas = [anArea({ label, dimension: () => label })];
    const drawing = drawPlan(aPlan({ title: label, areas, words }));
    // A control character is refused by the layout, so it is put in behind it.
    const svg = drawingToSvg({ ...drawing, title: `${label}\u0000\u001B` });
    expect(svg).not.toMatch(/<script/i);
    expect(svg).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;b&#39;');
    expect(
      svg
        .match(/<[a-z]+/g)
        ?.filter((tag) => !/^<(svg|title|defs|pattern|g|path|line|circle|text)$/.test(tag)),
    ).toEqual([]);
    expect([...svg].filter((character) => character < ' ' && character !== '\n')).toEqual([]);
  });

  test('every id starts with the drawing, every reference meets an id, nothing is coloured', () => {
    const svg = drawingToSvg(drawPlan(samplePlans['three slabs and a house'] as never));
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => id === 'plan' || id.startsWith('plan-'))).toBe(true);
    for (const [, reference] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(reference);
    expect(new Set([...svg.matchAll(/(?:fill|stroke)="(#[^"]+)"/g)].map(([, colour]) => colour))).toEqual(
      new Set(['#000']),
    );
    expect(svg).not.toMatch(/style=|font-family/);
  });

  test('each kind of line has its own dashes, a solid one none', () => {
    const dashesOf = (name: string, layer: string) => {
      const svg = drawingToSvg(drawPlan(samplePlans[name] as never));
      const [, group = ''] = new RegExp(`id="plan-${layer}">\\n([^]*?)</g>`).exec(svg) ?? [];
      return new Set(
        [...group.matchAll(/<(?:line|path)[^>]*>/g)].map(
          ([one]) => / stroke-dasharray="([^"]+)"/.exec(one)?.[1],
        ),
      );
    };
    expect(dashesOf('an L with joints', 'joints')).toEqual(new Set(['9 2.5 1.2 2.5']));
    expect(dashesOf('load bays', 'bays')).toEqual(new Set(['7 4', undefined]));
    expect(dashesOf('rectangle', 'new-slab')).toEqual(new Set([undefined]));
  });

  test('exact: an arc anticlockwise on the ground sweeps against the clock on the paper', () => {
    // A quarter turn, and the three quarters that are left of the circle: tan(3 * 90 / 4) is 1 / tan(90 / 4).
    const quarter = Math.tan(Math.PI / 8);
    const drawing: Drawing = {
      ...emptyDrawing,
      layers: [
        {
          name: 'new-slab',
          primitives: [
            {
              kind: 'path',
              weightMm: 0.7,
              dash: 'solid',
              parts: [
                { kind: 'move', xIn: 1, yIn: 0.5 },
                { kind: 'arc', radiusIn: 0.5, bulge: quarter, xIn: 0.5, yIn: 0 },
                { kind: 'arc', radiusIn: 0.5, bulge: -1 / quarter, xIn: 1, yIn: 0.5 },
                { kind: 'close' },
              ],
            },
          ],
        },
      ],
    };
    expect(drawingToSvg(drawing)).toContain('d="M72 36A36 36 0 0 0 36 0A36 36 0 1 1 72 36Z"');
    const rounded = drawingToSvg(drawPlan(samplePlans['rounded corners'] as never));
    // Two corners that stick out turn left, one that bites in turns right.
    const outline = rounded.match(/<path d="([^"]+)" fill="none"/)?.[1] ?? '';
    expect([...outline.matchAll(/A\S+ \S+ 0 0 ([01])/g)].map(([, sweep]) => sweep ?? '').sort()).toEqual([
      '0',
      '0',
      '1',
    ]);
  });

  test('refuses an unsafe id, small text and numbers that are none', () => {
    expect(() => drawingToSvg({ ...emptyDrawing, id: 'a" onload="x' })).toThrow(/id/);
    expect(() => drawingToSvg({ ...emptyDrawing, widthIn: Number.NaN })).toThrow(/finite/);
    const text = {
      kind: 'text',
      xIn: 0,
      yIn: 0,
      text: 'x',
      anchor: 'start',
      sizePt: 7.9,
      weight: 400,
      turnDeg: 0,
    } as const;
    expect(() => drawingToSvg({ ...emptyDrawing, layers: [{ name: 'labels', primitives: [text] }] })).toThrow(
      /8 pt/,
    );
  });
});
