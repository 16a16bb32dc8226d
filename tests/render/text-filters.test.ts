import { describe, expect, test } from 'vitest';
import { TICK_BOX, WRITE_LINE } from '../../src/describe/views.ts';
import { breakable, fractions, sitePath, spoken, telephone } from '../../src/render/text-filters.ts';

const frac = (text: string): string => `<span class="frac">${text}</span>`;

describe('fractions', () => {
  test.each([
    ['6 3/8″', `6\u00a0${frac('3/8')}″`],
    ['24′ 6 3/8″ by 1/2 in', `24′\u00a06\u00a0${frac('3/8')}″ by ${frac('1/2')} in`],
    ['−3 1/16″', `−3\u00a0${frac('1/16')}″`],
    ['33′ 0″, not 33 0', '33′\u00a00″, not 33 0'],
    ['12.25 yd³ on 644 sq ft at 95 %', '12.25\u00a0yd³ on 644\u00a0sq\u00a0ft at 95\u00a0%'],
    ['falls 3/16″ / ft, 20 mm / m', `falls ${frac('3/16')}″\u00a0/\u00a0ft, 20\u00a0mm\u00a0/\u00a0m`],
    ['5 inches, 2 more, 3 minutes', '5 inches, 2 more, 3 minutes'],
    ['(1/4 in per foot)', `(${frac('1/4')} in per foot)`],
    ['1/8" & <b>', `${frac('1/8')}&quot; &amp; &lt;b&gt;`],
  ])('%s', (text, html) => {
    expect(fractions(text).toString()).toBe(html);
  });

  test.each([
    '5/4/2026',
    '2026/1/4',
    '3/8/16',
    'and/or',
    'a1/2',
    '1/2b',
    '1/20',
    '1/3',
    'job.yaml/1/2',
    '0.1/2',
    '1/2.5',
    '6-3/8',
  ])('%s holds no fraction', (text) => {
    expect(fractions(text).toString()).toBe(text);
  });

  test('text that looks like our own markup stays text', () => {
    expect(fractions('<span class="frac">3/8</span>').toString()).toBe(
      `&lt;span class=&quot;frac&quot;&gt;${frac('3/8')}&lt;/span&gt;`,
    );
  });

  test('refuses what is not text', () => {
    expect(() => fractions(6.375 as unknown as string)).toThrow(TypeError);
  });
});

test('breakable lets names break after a dot or hyphen, and numbers not', () => {
  expect(breakable('slabs.drive-way.area 4.25 <b>').toString()).toBe(
    'slabs.<wbr>drive-<wbr>way.<wbr>area 4.25 &lt;b&gt;',
  );
});

test.each([
  ['555-0142', '5550142'],
  ['+1 (555) 0142', '+15550142'],
  ['ask the yard', ''],
  ['555-0142;ext=javascript:1', ''],
  ['', ''],
])('telephone: %j is called as %j', (text, digits) => {
  expect(telephone(text)).toBe(digits);
});

test('spoken is what the row says without its boxes and lines', () => {
  expect(spoken([TICK_BOX, 'Exposed aggregate', '', '$860.00', WRITE_LINE])).toBe(
    'Exposed aggregate, $860.00',
  );
});

describe('sitePath', () => {
  test('a page of this site', () => {
    expect(sitePath('maple-court/homeowner/proposal.html')).toBe('maple-court/homeowner/proposal.html');
  });
  test.each([
    'https://example.com/',
    '//example.com',
    '/etc/passwd',
    '../x',
    'a/../b',
    'javascript:alert(1)',
    '',
  ])('%j is refused', (path) => {
    expect(() => sitePath(path)).toThrow('not a path inside the site');
  });
});
