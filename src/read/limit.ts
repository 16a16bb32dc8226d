import {
  divideR,
  parseMoney,
  parseQuantity,
  type QuantityKind,
  type Rational,
  rational,
  rationalFromDecimalText,
  rationalToNumber,
} from '../units/index.ts';

/** What a limit is held against; two limits of one rule must be of the same. */
type LimitKind = 'number' | 'each' | 'days' | 'money' | 'ratio' | QuantityKind;
type Limit = { readonly kind: LimitKind; readonly value: number };

/** Kinds a figure of the core can have in the base unit of the kind. */
const KINDS: readonly QuantityKind[] = [
  'share',
  'slope',
  'length',
  'area',
  'weight',
  'density',
  'strength',
  'duration',
  'angle',
  'temperature',
  'speed',
  'evaporation',
];

/**
 * A limit in the unit of its figure: inches, sq ft, lb, lb per cu ft, psi, hours, degrees, a ratio for `%` and
 * `1:48`, dollars; `1 day` and `3 each` count, and a bare number or fraction is a ratio of two like
 * things (`1.5`, `1/3`).
 *
 * @returns null if it is none of these.
 */
export function parseLimit(text: string): Limit | null {
  const money = parseMoney(text);
  if (money.ok) return { kind: 'money', value: money.value.toNumber() };
  const counted = /^(\S+) (each|days?)$/.exec(text);
  const count = counted === null ? null : numberIn(counted[1] ?? '');
  if (count !== null)
    return { kind: counted?.[2] === 'each' ? 'each' : 'days', value: rationalToNumber(count) };
  const plain = numberIn(text);
  if (plain !== null) return { kind: 'number', value: rationalToNumber(plain) };
  for (const kind of KINDS) {
    const parsed = parseQuantity(kind, text);
    // `%` is a share and a slope alike: both are ratios.
    if (parsed.ok)
      return {
        kind: kind === 'slope' || kind === 'share' ? 'ratio' : kind,
        value: rationalToNumber(parsed.value.value),
      };
  }
  return null;
}

function numberIn(text: string): Rational | null {
  const match = /^(\d{1,9}(?:\.\d{1,9})?)(?:\/([1-9]\d{0,8}))?$/.exec(text);
  if (match === null) return null;
  return divideR(rationalFromDecimalText(match[1] ?? ''), rational(BigInt(match[2] ?? '1')));
}
