import { describe, expect, test } from 'vitest';
import { pinPdf } from '../../src/print/pin.ts';

const DATES = "/CreationDate (D:20250102030405+00'00')\n/ModDate (D:20250102030405+00'00')";

/** A header cell per id, each object holding the cell itself; a data cell that refers to all of them. */
function aTaggedPdf(
  cells: readonly { id: string; objectNumber: number }[],
  { dates = DATES, list = cells } = {},
): string {
  const objects = cells.map(
    ({ id, objectNumber }) => `${objectNumber} 0 obj\n<</S /TH\n/ID (node${id})>>\nendobj`,
  );
  const ids = cells.map(({ id }) => `(node${id})`).join(' ');
  const sorted = list.toSorted((left, right) => (left.id < right.id ? -1 : 1));
  const names = sorted.map(({ id, objectNumber }) => `(node${id}) ${objectNumber} 0 R`).join(' ');
  const limits = `(node${sorted.at(0)?.id}) (node${sorted.at(-1)?.id})`;
  return [
    `1 0 obj\n<<${dates}>>\nendobj`,
    ...objects,
    `90 0 obj\n<</O /Table\n/Headers [${ids}]>>\nendobj`,
    `91 0 obj\n<</Limits [${limits}]\n/Names [${names}]>>\nendobj`,
    '92 0 obj\n<</Kids [91 0 R]>>\nendobj',
    '93 0 obj\n<</Type /StructTreeRoot\n/IDTree 92 0 R>>\nendobj',
  ].join('\n');
}

const pin = (text: string, epochSeconds = 0): string =>
  Buffer.from(pinPdf(Buffer.from(text, 'latin1'), epochSeconds)).toString('latin1');

const NO_TABLES = `1 0 obj\n<<${DATES}>>\nendobj\n2 0 obj\n<</Type /StructTreeRoot>>\nendobj`;

describe('pinPdf, dates', () => {
  test.each([
    { epochSeconds: 0, digits: '19700101000000' },
    // exact: 2000-02-29 is day 11,016 after 1970-01-01 (30 years of 365 days, 7 leap days, 31 + 28 days).
    { epochSeconds: 11_016 * 86_400 + 12 * 3600 + 34 * 60 + 56, digits: '20000229123456' },
    { epochSeconds: 253_402_300_799, digits: '99991231235959' },
  ])('writes $epochSeconds s as $digits, twice', ({ epochSeconds, digits }) => {
    expect(pin(NO_TABLES, epochSeconds)).toBe(NO_TABLES.replaceAll('20250102030405', digits));
  });

  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 253_402_300_800])(
    'refuses the epoch %s',
    (epochSeconds) => {
      expect(() => pin(NO_TABLES, epochSeconds)).toThrow(RangeError);
    },
  );

  test.each([
    { what: 'no dates', dates: '', found: 'none' },
    { what: 'one date missing', dates: DATES.split('\n')[0] ?? '', found: 'CreationDate' },
    {
      what: 'a date too many',
      dates: `${DATES}\n${DATES}`,
      found: 'CreationDate, ModDate, CreationDate, ModDate',
    },
    { what: 'another time zone', dates: DATES.replaceAll('+00', '-05'), found: 'none' },
  ])('refuses $what', ({ dates, found }) => {
    expect(() => pin(NO_TABLES.replace(DATES, dates))).toThrow(`in UTC, found ${found}`);
  });
});

describe('pinPdf, header cells', () => {
  const first = { id: '00000044', objectNumber: 7 };
  const second = { id: '00000012', objectNumber: 11 };
  const third = { id: '00000500', objectNumber: 12 };

  test('numbers the cells by their objects, everywhere an id is used', () => {
    const wanted = aTaggedPdf([
      { id: '00000001', objectNumber: 7 },
      { id: '00000002', objectNumber: 11 },
      { id: '00000003', objectNumber: 12 },
    ]);
    expect(pin(aTaggedPdf([first, second, third]))).toBe(pin(wanted));
    expect(pin(wanted)).toBe(wanted.replaceAll('20250102030405', '19700101000000'));
  });

  test('invariant: the ids that a run happened to hand out do not matter', () => {
    const swapped = [
      { ...first, id: '00000600' },
      { ...second, id: '00000601' },
      { ...third, id: '00000044' },
    ];
    expect(pin(aTaggedPdf([first, second, third]))).toBe(pin(aTaggedPdf(swapped)));
  });

  test('invariant: the length stays, and pinning again changes nothing', () => {
    const text = aTaggedPdf([first, second, third]);
    const pinned = pin(text);
    expect(pinned).toHaveLength(text.length);
    expect(pin(pinned)).toBe(pinned);
  });

  test('bytes that are no ids stay, also above 127', () => {
    const text = `${aTaggedPdf([first])}\n94 0 obj\n<</Title (node00000044) /Alt (\xbd\xff\x00)>>\nendobj`;
    expect(pin(text)).toContain('<</Title (node00000044) /Alt (\xbd\xff\x00)>>');
  });

  test('refuses an id that is used but not listed', () => {
    expect(() => pin(aTaggedPdf([first, second], { list: [first] }))).toThrow('id node00000012 is used');
  });

  test('refuses an id that stands twice', () => {
    expect(() => pin(aTaggedPdf([first, { ...second, id: first.id }]))).toThrow('twice');
  });

  test('refuses a second list', () => {
    const text = aTaggedPdf([first]);
    const list = text.slice(text.indexOf('91 0 obj'), text.indexOf('92 0 obj'));
    expect(() => pin(text + list)).toThrow('found 2 for 1');
  });

  test('refuses an id tree whose list is not in the known form', () => {
    expect(() => pin(aTaggedPdf([first]).replace('/Names [', '/Names  ['))).toThrow('found 0 for 1');
  });

  test('refuses a use without any list', () => {
    expect(() => pin(`${NO_TABLES}\n3 0 obj\n<</ID (node00000044)>>\nendobj`)).toThrow(
      'id node00000044 is used',
    );
  });
});
