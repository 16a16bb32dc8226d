import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { readDxf, textAt, verticesOf } from '../export/read-dxf.ts';
import { readPdf } from './read-pdf.ts';
import { type PdfStroke, readStrokes } from './read-strokes.ts';

/** How far a length on paper may be off its scale: half a percent, well below what a ruler shows. */
const MOST_OFF_RATIO = 0.005;

/** A dimension's tick is drawn at 45 degrees, 0.08 in each way: common practice, no source. */
const isTick = ({ from, to }: PdfStroke): boolean => {
  const [wide, high] = [Math.abs(to.xPt - from.xPt), Math.abs(to.yPt - from.yPt)];
  return Math.abs(wide - 5.76) < 0.05 && Math.abs(high - 5.76) < 0.05;
};

const middleOf = ({ from, to }: PdfStroke) => ({
  xPt: (from.xPt + to.xPt) / 2,
  yPt: (from.yPt + to.yPt) / 2,
});

const inchesPerMetre = 1000 / 25.4;

/** Inches of a length as printed: 36′ 0″, 6.00 m. */
function lengthIn(printed: string): number {
  const [, feet, inches] = /^(\d+)′ (\d+)″$/.exec(printed) ?? [];
  if (feet !== undefined) return Number(feet) * 12 + Number(inches);
  const [, metres] = /^(\d+\.\d+) m$/.exec(printed) ?? [];
  return Number(metres ?? Number.NaN) * inchesPerMetre;
}

/** Paper to ground of a scale as printed: Scale 1/8″ = 1′, Scale 1:50. */
function ratioOf(printed: string): number {
  const [, above, below] = /^Scale (\d+)\/(\d+)″ = 1′$/.exec(printed) ?? [];
  if (above !== undefined) return Number(above) / Number(below) / 12;
  const [, parts] = /^Scale 1:(\d+)$/.exec(printed) ?? [];
  return 1 / Number(parts ?? Number.NaN);
}

describe.each([
  // One side of each demo job, as it was measured; in the outline 3 ft of the drive are the rounded corner's.
  { id: 'maple-court', paper: 'letter', side: '36′ 0″', newSideIn: 33 * 12 },
  { id: 'garden-row', paper: 'A4', side: '6.00 m', newSideIn: 6000 / 25.4 },
])('the plan of $id on $paper, measured in its PDF', ({ id, side, newSideIn }) => {
  const path = join(inject('demoOutput'), id, 'office/work-order.pdf');

  /** The page of the first plan, which is that of the new slabs, and its texts. */
  async function planPage() {
    const { pages } = await readPdf(path);
    const index = pages.findIndex(({ texts }) => texts.some(({ text }) => text.startsWith('Scale ')));
    const texts = pages[index]?.texts ?? [];
    const below = texts.findIndex(({ text }) => text.startsWith('Scale '));
    const pointsOf = (printed: string) => lengthIn(printed) * ratioOf(texts[below]?.text ?? '') * 72;
    return { number: index + 1, texts, below, pointsOf };
  }

  test('the ends of the scale bar are as far apart as they say', async () => {
    const { texts, below, pointsOf } = await planPage();
    const [zero, end] = texts.slice(below + 1);
    expect(zero?.text).toBe('0');
    expect(end?.yPt).toBeCloseTo(zero?.yPt ?? 0, 1);
    const apartPt = (end?.xPt ?? 0) - (zero?.xPt ?? 0);
    expect(Math.abs(apartPt / pointsOf(end?.text ?? '') - 1)).toBeLessThan(MOST_OFF_RATIO);
  });

  test('the ticks of a dimension are as far apart as it says, with the text between them', async () => {
    const { number, texts, below, pointsOf } = await planPage();
    const said = texts.slice(0, below).filter(({ text }) => text === side);
    expect(said).toHaveLength(1);
    const [text] = said;
    const ticks = (await readStrokes(path, number)).filter(isTick).map(middleOf);
    // A text stands 0.04 in above its line; of the ticks there, the nearest at either hand are its own.
    const atLine = ticks.filter(({ yPt }) => Math.abs(yPt - ((text?.yPt ?? 0) - 2.88)) < 0.5);
    const places = atLine.map(({ xPt }) => xPt - (text?.xPt ?? 0));
    const leftPt = Math.max(...places.filter((place) => place < 0));
    const rightPt = Math.min(...places.filter((place) => place > 0));
    expect(Math.abs((rightPt - leftPt) / pointsOf(side) - 1)).toBeLessThan(MOST_OFF_RATIO);
  });

  test('the DXF beside it has the same side in real inches, and its file for what goes', () => {
    const office = join(inject('demoOutput'), id, 'office');
    const sides = ['plan-new', 'plan-existing'].map((name) => {
      const { entities, header } = readDxf(readFileSync(join(office, `${name}.dxf`), 'utf8'));
      expect(header.get('$INSUNITS')).toBe('1');
      const layer = name === 'plan-new' ? 'new-slab' : 'existing-goes';
      return entities
        .filter((one) => one.type === 'LWPOLYLINE' && textAt(one, 8) === layer)
        .map(verticesOf)
        .flatMap((vertices) =>
          vertices.map((from, index) => {
            const to = vertices[(index + 1) % vertices.length] ?? from;
            return Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
          }),
        );
    });
    const [inNew = [], inExisting = []] = sides;
    expect(inExisting.length).toBeGreaterThanOrEqual(4);
    expect(Math.min(...inNew.map((one) => Math.abs(one - newSideIn)))).toBeLessThan(1e-6);
  });
});
