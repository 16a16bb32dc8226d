import { formatQuantity } from './format.ts';
import type { Quantity, QuantityKind } from './kinds.ts';
import {
  addR,
  divideR,
  multiplyR,
  type Rational,
  rational,
  rationalFromDecimalText,
  rationalToDecimal,
  subtractR,
} from './rational.ts';
import { FEET_INCHES, ONE_IN, unitBySymbol } from './unit-table.ts';

/** One of each kind, for when the text gives no value to work with. */
export const EXAMPLES: Readonly<Record<QuantityKind, readonly string[]>> = {
  length: [`14' 6"`, '4 in', '3.6 m'],
  area: ['450 sq ft', '42 m2'],
  volume: ['3 yd3', '20 cu ft', '2.5 m3'],
  weight: ['14,000 lb', '18 tons', '900 kg'],
  slope: ['1/4 in per ft', '2 %', '1:48'],
  temperature: ['45 F', '7 C'],
  duration: ['30 min', '1.5 h', '7 days'],
  share: ['7 %', '0.5 %'],
  density: ['150 lb per cu ft', '2400 kg per m3'],
  strength: ['4000 psi', '30 MPa'],
  speed: ['10 mph', '16 km/h'],
  coverage: ['200 sq ft per gal', '5 m2 per L'],
  evaporation: ['0.2 lb per sq ft per h', '1 kg per m2 per h'],
  angle: ['45 deg', '22 1/2 deg', '90°'],
};

const UNITS_SHOWN: Readonly<Record<Exclude<QuantityKind, 'length'>, readonly string[]>> = {
  area: ['sq ft', 'm2', 'sq in'],
  volume: ['yd3', 'cu ft', 'm3'],
  weight: ['lb', 'kg', 'ton'],
  slope: ['in per ft', '%', ONE_IN],
  temperature: ['°F', '°C'],
  duration: ['h', 'min', 'day'],
  share: ['%'],
  density: ['lb per cu ft', 'kg per m3', 'lb per yd3'],
  strength: ['psi', 'MPa'],
  speed: ['mph', 'km/h'],
  coverage: ['sq ft per gal', 'm2 per L'],
  evaporation: ['lb per sq ft per h', 'kg per m2 per h'],
  angle: ['deg'],
};

/**
 * Two or three ways to write one value: first in its own unit, exactly, then in others, to
 * three digits (a suggestion, not a conversion to calculate with).
 *
 * @example formsOf(lengthOf('42 in')) // ['42 in', `3' 6"`, '1.07 m']
 */
export function formsOf(quantity: Quantity): readonly string[] {
  const units = quantity.kind === 'length' ? lengthUnitsShown(quantity.value) : UNITS_SHOWN[quantity.kind];
  const forms = [formatQuantity(quantity)];
  for (const unit of units) {
    if (unit !== quantity.unit)
      forms.push(formatQuantity({ ...quantity, unit, value: rounded(quantity, unit) }));
  }
  if (forms.length === 1) forms.push(...forms.map((form) => form.replace(' deg', '°').replace(' ', '')));
  return [...new Set(forms.map(asTyped))].slice(0, 3);
}

const MILE_IN = 63360;

function lengthUnitsShown(lengthIn: Rational): readonly string[] {
  const magnitude = Math.abs(Number(lengthIn.n) / Number(lengthIn.d));
  if (magnitude >= MILE_IN / 2) return ['mi', 'km'];
  if (magnitude >= 12) return ['in', FEET_INCHES, magnitude >= 40 ? 'm' : 'cm'];
  return ['in', 'mm'];
}

/** The value nearest to the quantity's that has three digits in the unit (sixteenths in feet and inches). */
function rounded(quantity: Quantity, unit: string): Rational {
  if (unit === FEET_INCHES) {
    const sixteenths = rationalToDecimal(quantity.value).times(16).toFixed(0);
    return divideR(rationalFromDecimalText(sixteenths), rational(16));
  }
  if (unit === ONE_IN) {
    if (quantity.value.n === 0n) return quantity.value;
    return divideR(rational(1), threeDigits(divideR(rational(1), quantity.value)));
  }
  const { base, baseAtZero } = unitBySymbol(quantity.kind, unit);
  const amount = threeDigits(divideR(subtractR(quantity.value, baseAtZero), base));
  return addR(multiplyR(amount, base), baseAtZero);
}

function threeDigits(value: Rational): Rational {
  return rationalFromDecimalText(rationalToDecimal(value).toSignificantDigits(3).toFixed());
}

/** As a keyboard has it. */
function asTyped(text: string): string {
  return text
    .replaceAll('′', "'")
    .replaceAll('″', '"')
    .replace(/°(?=[FC])/g, '');
}
