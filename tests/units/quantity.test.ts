import { describe, expect, test } from 'vitest';
import {
  formatQuantity,
  parseQuantity,
  type QuantityKind,
  rationalToDecimal,
} from '../../src/units/index.ts';

type Written = readonly [text: string, fraction: string, unit: string, writtenAgain: string];

/** `1395/8`, or `174` for a whole number: the exact value in the base unit, worked by hand. */
function fractionOf(kind: QuantityKind, text: string): { fraction: string; unit: string; again: string } {
  const result = parseQuantity(kind, text);
  if (!result.ok) throw new Error(`${kind} ${text}: ${result.code}, ${result.forms.join(' | ')}`);
  const { n, d } = result.value.value;
  return {
    fraction: d === 1n ? `${n}` : `${n}/${d}`,
    unit: result.value.unit,
    again: formatQuantity(result.value),
  };
}

// Exact, worked in another program's fractions from the definitions: 1 in = 25.4 mm, 1 gal = 231 cu in, 1 ton = 2000 lb, 1 lb = 0.45359237 kg,
// standard gravity 9.80665 m/s².
const WRITTEN: Readonly<Record<string, readonly Written[]>> = {
  length: [
    [`14' 6"`, '174', 'ft-in', '14′ 6″'],
    [`14'6"`, '174', 'ft-in', '14′ 6″'],
    [`14′ 6″`, '174', 'ft-in', '14′ 6″'],
    [`14'-6 3/8"`, '1395/8', 'ft-in', '14′ 6 3/8″'],
    [`14′-6 3/8″`, '1395/8', 'ft-in', '14′ 6 3/8″'],
    ['14 ft 6-1/2 in', '349/2', 'ft-in', '14′ 6 1/2″'],
    [`12' 4.75"`, '595/4', 'ft-in', '12′ 4 3/4″'],
    [`12'-0 3/8"`, '1155/8', 'ft-in', '12′ 0 3/8″'],
    [`0' 4"`, '4', 'ft-in', '0′ 4″'],
    ['6 1/2 in', '13/2', 'in', '6 1/2 in'],
    ['6-1/2 in', '13/2', 'in', '6 1/2 in'],
    ['3/8 in', '3/8', 'in', '3/8 in'],
    ['4 in', '4', 'in', '4 in'],
    ['4in', '4', 'in', '4 in'],
    ['4"', '4', 'in', '4 in'],
    ['4.75 in', '19/4', 'in', '4 3/4 in'],
    ['4.7 in', '47/10', 'in', '4.7 in'],
    [`12.396'`, '18594/125', 'ft', '12.396 ft'],
    ['14 ft', '168', 'ft', '14 ft'],
    ['1,250 ft', '15000', 'ft', '1,250 ft'],
    ['3.6 m', '18000/127', 'm', '3.6 m'],
    ['100 mm', '500/127', 'mm', '100 mm'],
    ['12 cm', '600/127', 'cm', '12 cm'],
    ['2 yd', '72', 'yd', '2 yd'],
    ['25 mi', '1584000', 'mi', '25 mi'],
    ['30 km', '150000000/127', 'km', '30 km'],
    [`-14' 6"`, '-174', 'ft-in', '-14′ 6″'],
    ['-0.5 in', '-1/2', 'in', '-1/2 in'],
    ['  4   in ', '4', 'in', '4 in'],
  ],
  area: [
    ['450 sq ft', '450', 'sq ft', '450 sq ft'],
    ['450 ft2', '450', 'sq ft', '450 sq ft'],
    ['12 sq in', '1/12', 'sq in', '12 sq in'],
    ['0.09290304 m2', '1', 'm2', '0.09290304 m2'],
    ['42 m2', '21875000/48387', 'm2', '42 m2'],
  ],
  volume: [
    ['3 yd3', '81', 'yd3', '3 yd3'],
    ['3 cu yd', '81', 'yd3', '3 yd3'],
    ['20 cu ft', '20', 'cu ft', '20 cu ft'],
    ['0.028316846592 m3', '1', 'm3', '0.028316846592 m3'],
    ['2.5 m3', '4882812500/55306341', 'm3', '2.5 m3'],
    ['5 gal', '385/576', 'gal', '5 gal'],
    ['28.316846592 L', '1', 'L', '28.316846592 L'],
    ['20 L', '39062500/55306341', 'L', '20 L'],
  ],
  weight: [
    ['14,000 lb', '14000', 'lb', '14,000 lb'],
    ['18 tons', '36000', 'ton', '18 tons'],
    ['1 ton', '2000', 'ton', '1 ton'],
    ['2 t', '200000000000/45359237', 't', '2 t'],
    ['900 kg', '90000000000/45359237', 'kg', '900 kg'],
  ],
  slope: [
    ['1/4 in per ft', '1/48', 'in per ft', '1/4 in per ft'],
    ['1/4 in/ft', '1/48', 'in per ft', '1/4 in per ft'],
    ['2 %', '1/50', '%', '2 %'],
    ['2%', '1/50', '%', '2 %'],
    ['1:48', '1/48', '1:n', '1:48'],
    ['1:12.5', '2/25', '1:n', '1:12.5'],
    ['20 mm per m', '1/50', 'mm per m', '20 mm per m'],
    ['-2 %', '-1/50', '%', '-2 %'],
    ['-1:48', '-1/48', '1:n', '-1:48'],
  ],
  temperature: [
    ['45 F', '45', '°F', '45 °F'],
    ['45 °F', '45', '°F', '45 °F'],
    ['7 C', '223/5', '°C', '7 °C'],
    ['-40 C', '-40', '°C', '-40 °C'],
    ['-10 °C', '14', '°C', '-10 °C'],
  ],
  duration: [
    ['30 min', '1/2', 'min', '30 min'],
    ['1.5 h', '3/2', 'h', '1.5 h'],
    ['7 days', '168', 'day', '7 days'],
    ['1 day', '24', 'day', '1 day'],
  ],
  share: [
    ['7 %', '7/100', '%', '7 %'],
    ['0.5 %', '1/200', '%', '0.5 %'],
  ],
  density: [
    ['150 lb per cu ft', '150', 'lb per cu ft', '150 lb per cu ft'],
    ['2400 kg per m3', '169901079552/1133980925', 'kg per m3', '2,400 kg per m3'],
    ['4050 lb per yd3', '150', 'lb per yd3', '4,050 lb per yd3'],
  ],
  strength: [
    ['4000 psi', '4000', 'psi', '4,000 psi'],
    ['30 MPa', '38709600000000000/8896443230521', 'MPa', '30 MPa'],
  ],
  speed: [
    ['10 mph', '10', 'mph', '10 mph'],
    ['16.09344 km/h', '10', 'km/h', '16.09344 km/h'],
    ['16 km/h', '125000/12573', 'km/h', '16 km/h'],
  ],
  coverage: [
    ['200 sq ft per gal', '200', 'sq ft per gal', '200 sq ft per gal'],
    ['5 m2 per L', '9779/48', 'm2 per L', '5 m2 per L'],
  ],
  angle: [
    ['90 deg', '90', 'deg', '90 deg'],
    ['45 degrees', '45', 'deg', '45 deg'],
    ['1 degree', '1', 'deg', '1 deg'],
    ['22 1/2 deg', '45/2', 'deg', '22.5 deg'],
    ['90°', '90', 'deg', '90 deg'],
    ['22.5 °', '45/2', 'deg', '22.5 deg'],
    ['1/3 deg', '1/3', 'deg', '1/3 deg'],
    ['-30 deg', '-30', 'deg', '-30 deg'],
  ],
};

describe('parseQuantity: every written form, exactly', () => {
  const rows = Object.entries(WRITTEN).flatMap(([kind, forms]) =>
    forms.map((form) => ({ kind: kind as QuantityKind, form })),
  );
  test.each(rows)('$kind $form.0', ({ kind, form: [text, fraction, unit, again] }) => {
    expect(fractionOf(kind, text)).toEqual({ fraction, unit, again });
  });

  test('keeps the text as it stood', () => {
    const result = parseQuantity('length', ` 14' 6" `);
    expect(result.ok && result.value.text).toBe(` 14' 6" `);
  });

  // Metric density against the printed factor, 1 lb per cu ft = 16.0185 kg per m3
  // (conversion table, navalfacilities.tpub.com/1004_6/1004_60046.htm, seen).
  test('2400 kg per m3 is 149.83 lb per cu ft', () => {
    const result = parseQuantity('density', '2400 kg per m3');
    expect(result.ok && rationalToDecimal(result.value.value).toNumber()).toBeCloseTo(2400 / 16.0185, 2);
  });
});

type Refusal = readonly [kind: QuantityKind, text: string, code: string, forms?: readonly string[]];

const REFUSALS: readonly Refusal[] = [
  ['length', '42', 'without-unit', ['42 in', `3' 6"`, '1.07 m']],
  ['length', '12', 'without-unit', ['12 in', `1' 0"`, '30.5 cm']],
  ['length', '4', 'without-unit', ['4 in', '102 mm']],
  ['length', '0', 'without-unit', ['0 in', '0 mm']],
  ['length', '-42', 'without-unit', ['-42 in', `-3' 6"`, '-1.07 m']],
  ['length', '14 ft 6', 'without-unit', [`14' 6"`, '174 in', '4.42 m']],
  ['length', `14' 6`, 'without-unit', [`14' 6"`, '174 in', '4.42 m']],
  ['length', `14' 6 3/8`, 'without-unit', [`14' 6 3/8"`, '174 in', '4.43 m']],
  ['length', '42 inches', 'unknown-unit', ['42 in', `3' 6"`, '1.07 m']],
  ['length', '4 IN', 'unknown-unit', ['4 in', '102 mm']],
  ['length', '14 feet 6 inches', 'unknown-unit', [`14' 6"`, '174 in', '4.42 m']],
  ['length', '7 cubits', 'unknown-unit'],
  ['length', '450 sq ft', 'wrong-kind'],
  ['length', '450 ft2', 'wrong-kind'],
  ['length', '2 %', 'wrong-kind'],
  ['length', '$12', 'wrong-kind'],
  ['length', '', 'not-a-number'],
  ['length', 'in', 'not-a-number'],
  ['length', 'about 4 in', 'not-a-number'],
  ['length', '3-4 in', 'not-a-number'],
  ['length', '1,25 m', 'not-a-number', ['1.25 m', '49.2 in', `4' 1 3/16"`]],
  ['length', '12,34 ft', 'not-a-number'],
  ['length', '1,2500 ft', 'not-a-number'],
  ['length', '0,250 ft', 'not-a-number'],
  ['length', '1.2.3 m', 'not-a-number'],
  ['length', '.5 in', 'not-a-number', ['1/2 in', '12.7 mm']],
  ['length', '5. in', 'not-a-number'],
  ['length', '1/0 in', 'not-a-number'],
  ['length', '6 9/8 in', 'not-a-number'],
  ['length', '6 8/8 in', 'not-a-number'],
  ['length', '1/2/3 in', 'not-a-number'],
  ['length', '6 1/20.5 in', 'not-a-number'],
  ['length', '--4 in', 'not-a-number'],
  ['length', `14.5' 6"`, 'not-a-number'],
  ['length', `5' 14"`, 'not-a-number', [`6' 2"`, '74 in', '1.88 m']],
  ['length', `5' 12"`, 'not-a-number', [`6' 0"`, '72 in', '1.83 m']],
  ['length', `6''`, 'stray-quote', ['6 in', '152 mm']],
  ['length', `'14 ft'`, 'stray-quote', ['14 ft', '168 in', `14' 0"`]],
  ['length', `14" 6'`, 'stray-quote'],
  ['length', `14' 6'`, 'stray-quote'],
  ['length', '9'.repeat(201), 'not-a-number'],
  ['area', '450', 'without-unit', ['450 sq ft', '41.8 m2', '64,800 sq in']],
  ['area', '450 ft²', 'unknown-unit', ['450 sq ft', '41.8 m2', '64,800 sq in']],
  ['area', `14' 6"`, 'wrong-kind'],
  ['area', `"450 sq ft"`, 'stray-quote'],
  ['volume', '3', 'without-unit', ['3 yd3', '81 cu ft', '2.29 m3']],
  ['volume', '3 CY', 'unknown-unit', ['3 yd3', '81 cu ft', '2.29 m3']],
  ['weight', '14,000', 'without-unit', ['14,000 lb', '6,350 kg', '7 tons']],
  ['weight', '14,000 lbs', 'unknown-unit', ['14,000 lb', '6,350 kg', '7 tons']],
  ['weight', '18 m', 'wrong-kind'],
  ['slope', '1/4', 'without-unit', ['1/4 in per ft', '2.08 %', '1:48']],
  ['slope', '2', 'without-unit', ['2 %', '0.24 in per ft', '1:50']],
  ['slope', '1:0', 'not-a-number'],
  ['slope', '2:96', 'not-a-number'],
  ['slope', '4 in', 'wrong-kind'],
  ['temperature', '45', 'without-unit', ['45 F', '7.22 C']],
  ['temperature', '45 degrees', 'unknown-unit', ['45 F', '7.22 C']],
  ['duration', '2', 'without-unit', ['2 h', '120 min', '0.0833 days']],
  ['duration', '2 hrs', 'unknown-unit', ['2 h', '120 min', '0.0833 days']],
  ['share', '7', 'without-unit', ['7 %', '7%']],
  ['share', '0.07', 'without-unit', ['7 %', '0.07 %']],
  ['share', '1:48', 'wrong-kind'],
  ['density', '150', 'without-unit', ['150 lb per cu ft', '2,400 kg per m3', '4,050 lb per yd3']],
  ['density', '150 pcf', 'unknown-unit', ['150 lb per cu ft', '2,400 kg per m3', '4,050 lb per yd3']],
  ['strength', '4000', 'without-unit', ['4,000 psi', '27.6 MPa']],
  ['strength', '30 mpa', 'unknown-unit', ['30 MPa', '4,350 psi']],
  ['speed', '10', 'without-unit', ['10 mph', '16.1 km/h']],
  ['speed', '16 kph', 'unknown-unit', ['16 km/h', '9.94 mph']],
  ['coverage', '200', 'without-unit', ['200 sq ft per gal', '4.91 m2 per L']],
  ['angle', '45', 'without-unit', ['45 deg', '45°']],
  ['angle', '45º', 'unknown-unit', ['45 deg', '45°']],
  ['angle', '45 Deg.', 'unknown-unit', ['45 deg', '45°']],
  ['angle', '1 rad', 'unknown-unit', ['45 deg', '22 1/2 deg', '90°']],
  ['angle', '2 %', 'wrong-kind', ['45 deg', '22 1/2 deg', '90°']],
  ['angle', '45 F', 'wrong-kind'],
  ['length', '45 deg', 'wrong-kind'],
];

describe('parseQuantity: refusals', () => {
  const rows = REFUSALS.map(([kind, text, code, forms]) => ({ kind, text, code, forms }));
  test.each(rows)('$kind $text is $code', ({ kind, text, code, forms }) => {
    const result = parseQuantity(kind, text);
    if (result.ok) throw new Error(`taken as ${formatQuantity(result.value)}`);
    expect(result.code).toBe(code);
    if (forms !== undefined) expect(result.forms).toEqual(forms);
    expect(result.forms.length).toBeGreaterThanOrEqual(2);
    expect(result.forms.length).toBeLessThanOrEqual(3);
    for (const form of result.forms) expect(parseQuantity(kind, form)).toMatchObject({ ok: true });
  });
});
