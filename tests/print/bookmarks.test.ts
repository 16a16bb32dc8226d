import { describe, expect, test } from 'vitest';
import { mendBookmarks } from '../../src/print/bookmarks.ts';

const pdfWith = (title: string) =>
  new Uint8Array(Buffer.from(`1 0 obj\n<</Title ${title}\n/Dest [8 0 R /XYZ 51 7 0]\n`, 'latin1'));
const titleOf = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1').slice(17).split('\n')[0];
const utf16 = (text: string) =>
  `<FEFF${Buffer.from(text, 'utf16le').swap16().toString('hex').toUpperCase()}>`;

describe('mendBookmarks', () => {
  test.each([
    { title: '(When you payWhen you pay)', mended: '(When you pay)' },
    { title: '(AreaAreaArea)', mended: '(Area)' },
    { title: '(Base \\(4 in\\)Base \\(4 in\\))', mended: '(Base \\(4 in\\))' },
    { title: utf16('½ inch½ inch'), mended: utf16('½ inch') },
    // As they should be, or not known: untouched.
    { title: '(When you pay)', mended: '(When you pay)' },
    { title: '(byebye)', mended: '(byebye)' },
    { title: '(otherother)', mended: '(otherother)' },
  ])('$title', ({ title, mended }) => {
    const headings = ['When you pay', 'Area', 'Base  (4 in)', '½ inch', 'bye', 'byebye'];
    const before = pdfWith(title);
    const after = mendBookmarks(before, headings);
    expect(after).toHaveLength(before.length);
    expect(titleOf(after)?.trimEnd()).toBe(mended);
  });

  test('a title of the file itself, which has no place, stays', () => {
    const bytes = new Uint8Array(Buffer.from('<</Title (AreaArea)\n/Creator (x)', 'latin1'));
    expect(mendBookmarks(bytes, ['Area'])).toEqual(bytes);
  });
});
