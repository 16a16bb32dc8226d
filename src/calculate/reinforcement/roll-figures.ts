import { type Figure, figure, given, num } from '../figure.ts';
import type { MeshStyle } from '../job.ts';
import { inputsByName } from '../parts.ts';
import { sheetsAlong } from './mesh.ts';
import type { MeshSupplier } from './mesh-figures.ts';

/** Whole rolls of one style, for all slabs together. */
export type RollFigures = { readonly length: Figure; readonly rolls: Figure };

/**
 * Rolls that strips of one style can be cut from, one strip going on with a lap where a roll ends in it.
 *
 * n = ceil((length - lap) / (roll - lap)).
 */
export function rollFigures(
  lengths: Readonly<Record<string, Figure>>,
  { roll, lapIn }: Pick<MeshSupplier, 'roll' | 'lapIn'>,
): RollFigures {
  if (roll === null) throw new RangeError('mesh from rolls, and the company has none');
  const inputs = inputsByName(lengths, 'Ft');
  const lengthFt = figure({
    value: Object.values(lengths).reduce((sum, length) => sum + num(length), 0),
    unit: 'ft',
    decimals: 1,
    formula: Object.keys(inputs).join(' + '),
    inputs,
  });
  return {
    length: lengthFt,
    rolls: figure({
      value: sheetsAlong({ sideIn: num(lengthFt) * 12, sheetIn: roll.lengthIn, lapIn }),
      unit: 'each',
      decimals: 0,
      formula: 'max(1, ceilStep((lengthFt * 12 - lapIn) / (rollIn - lapIn), 1))',
      inputs: {
        lengthFt,
        rollIn: given('company.suppliers.mesh.roll-length', roll.lengthIn, 'in'),
        lapIn: given('company.suppliers.mesh.lap', lapIn, 'in'),
      },
      rounding: 'up',
    }),
  };
}

/** The ids of the slabs of each style. */
export function byStyle(
  slabs: Readonly<Record<string, { readonly style: MeshStyle; readonly rolledOut: Figure }>>,
): ReadonlyMap<MeshStyle, Readonly<Record<string, Figure>>> {
  const styles = new Map<MeshStyle, Record<string, Figure>>();
  for (const [id, { style, rolledOut }] of Object.entries(slabs)) {
    styles.set(style, { ...styles.get(style), [id]: rolledOut });
  }
  return styles;
}
