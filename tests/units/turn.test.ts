import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseTurn, rational } from '../../src/units/index.ts';
import { runCount } from '../support/property-runs.ts';

describe('parseTurn: every written form, exactly', () => {
  test.each([
    { text: 'left', angleDeg: rational(90), side: 'left' },
    { text: 'right', angleDeg: rational(90), side: 'right' },
    { text: 'straight', angleDeg: rational(0), side: 'left' },
    { text: '45 deg left', angleDeg: rational(45), side: 'left' },
    { text: 'right 30 deg', angleDeg: rational(30), side: 'right' },
    { text: '22 1/2 degrees right', angleDeg: rational(45, 2), side: 'right' },
    { text: '90° left', angleDeg: rational(90), side: 'left' },
    { text: 'left 89.5°', angleDeg: rational(179, 2), side: 'left' },
    { text: '  10   deg  left ', angleDeg: rational(10), side: 'left' },
    { text: '0 deg right', angleDeg: rational(0), side: 'right' },
  ])('$text', ({ text, angleDeg, side }) => {
    expect(parseTurn(text)).toEqual({ ok: true, value: { angleDeg, side, text } });
  });
});

const EXAMPLES = ['left', '45 deg right', 'straight'];

describe('parseTurn: refusals', () => {
  test.each([
    { text: '45', code: 'without-unit', forms: ['45 deg left', '45 deg right'] },
    { text: '45 deg', code: 'without-unit', forms: ['45 deg left', '45 deg right'] },
    { text: '45 left', code: 'without-unit', forms: ['45 deg left', 'left 45 deg'] },
    { text: 'right 45', code: 'without-unit', forms: ['45 deg right', 'right 45 deg'] },
    { text: '-45 deg left', code: 'not-a-number', forms: ['45 deg left', '45 deg right'] },
    { text: '45 deg to the left', code: 'unknown-unit', forms: ['45 deg left', 'left 45 deg'] },
    { text: 'turn left 45', code: 'not-a-number', forms: ['45 deg left', 'left 45 deg'] },
    { text: 'Left', code: 'not-a-number', forms: ['left', '90 deg left'] },
    { text: '45 deg left right', code: 'unknown-unit', forms: ['45 deg left', '45 deg right'] },
    { text: '4 ft left', code: 'wrong-kind', forms: EXAMPLES },
    { text: 'straight left', code: 'not-a-number', forms: EXAMPLES },
    { text: '', code: 'not-a-number', forms: EXAMPLES },
    { text: '9'.repeat(300), code: 'not-a-number', forms: EXAMPLES },
  ])('$text is $code', ({ text, code, forms }) => {
    expect(parseTurn(text)).toEqual({ ok: false, code, forms });
  });

  test('every form that is suggested is taken, whatever was written', () => {
    const scrap = fc.constantFrom(
      ...'0 45 1/2 .5 1,2 - ° deg degrees F ft left right Left L straight to'.split(' '),
    );
    const text = fc.oneof(
      fc.array(scrap, { maxLength: 5 }).map((scraps) => scraps.join(' ')),
      fc.string({ maxLength: 12 }),
    );
    fc.assert(
      fc.property(text, (written) => {
        const result = parseTurn(written);
        if (result.ok) return;
        expect(result.forms.length).toBeGreaterThanOrEqual(2);
        for (const form of result.forms) expect(parseTurn(form), form).toMatchObject({ ok: true });
      }),
      { numRuns: runCount(1000) },
    );
  });
});
