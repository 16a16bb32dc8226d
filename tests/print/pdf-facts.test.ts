import { describe, expect, test } from 'vitest';
import { pdfFacts } from '../../src/print/pdf-facts.ts';
import { aPdf } from './a-pdf.ts';

const TRAILER = '<</Size 9\n/Root 8 0 R\n/Info 1 0 R>>';

function aTwoPagePdf(changes: Record<number, string> = {}): Uint8Array {
  const objects = {
    1: '<</Title (Walk \\(front\\))>>',
    2: '<</Type /Page\n/MediaBox [0 0 612 792]\n/Parent 5 0 R>>',
    3: '<</Type /Page\n/MediaBox [0 0 841.91998 595.32]\n/Parent 5 0 R>>',
    4: '<</Type /Pages\n/Count 1\n/Kids [3 0 R]>>',
    5: '<</Type /Pages\n/Count 2\n/Kids [2 0 R 4 0 R]>>',
    6: '<</start [2 0 R /XYZ 6 777.75 0]\n/caf#C3#A9-#281#29 [3 0 R /XYZ 6 612 0]>>',
    8: '<</Type /Catalog\n/Pages 5 0 R\n/Dests 6 0 R>>',
    ...changes,
  };
  return aPdf(objects, TRAILER);
}

describe('pdfFacts', () => {
  test('reads pages in reading order through a nested page tree', () => {
    const { pageCount, pageSizesPt } = pdfFacts(aTwoPagePdf());
    expect(pageCount).toBe(2);
    expect(pageSizesPt).toEqual([
      { widthPt: 612, heightPt: 792 },
      { widthPt: 841.91998, heightPt: 595.32 },
    ]);
  });

  test('reads named destinations, with the escapes of PDF names', () => {
    expect([...pdfFacts(aTwoPagePdf()).destinations]).toEqual([
      ['start', 0],
      ['café-(1)', 1],
    ]);
  });

  test.each([
    {
      form: 'plain text',
      info: '<</Title (Walk \\(front\\) 50\\045 \\\\ a)>>',
      title: 'Walk (front) 50% \\ a',
    },
    { form: 'UTF-16', info: '<</Title <FEFF00BD0020D83DDE80>>>', title: '½ 🚀' },
    { form: 'no title', info: '<</Creator (Chromium)>>', title: null },
  ])('reads the title: $form', ({ info, title }) => {
    expect(pdfFacts(aTwoPagePdf({ 1: info })).title).toBe(title);
  });

  test('a PDF without links has no destinations', () => {
    const { destinations } = pdfFacts(aTwoPagePdf({ 8: '<</Type /Catalog\n/Pages 5 0 R>>' }));
    expect(destinations.size).toBe(0);
  });

  test('a destination that is no page is refused', () => {
    expect(() => pdfFacts(aTwoPagePdf({ 6: '<</start [4 0 R /XYZ 6 777.75 0]>>' }))).toThrow(
      /object 4, which is no/,
    );
  });

  test('a shifted table is refused, not misread', () => {
    const text = Buffer.from(aTwoPagePdf()).toString('latin1');
    const shifted = text
      .replace('%PDF-1.4\n', '%PDF-1.44\n')
      .replace(/startxref\n(\d+)/, (_all, at: string) => {
        return `startxref\n${Number(at) + 1}`;
      });
    expect(() => pdfFacts(Buffer.from(shifted, 'latin1'))).toThrow(/object 8 is not where/);
  });

  test('refuses what is not a PDF', () => {
    expect(() => pdfFacts(Buffer.from('<!DOCTYPE html>'))).toThrow(/not a PDF/);
  });
});
