import type { JobEdit } from '../calculate/edits.ts';
import type { PriceTerms } from '../calculate/job.ts';
import type { EditInput, PriceSection } from '../read/index.ts';
import { inCoreUnit, mapThings } from './quantity.ts';

export function priceOf(input: PriceSection | undefined): PriceTerms {
  return {
    hidden: mapThings(input?.hidden ?? {}, (id, { label, edits }) => ({
      id,
      label,
      edits: edits.map(editOf),
    })),
    otherCosts: mapThings(input?.['other-costs'] ?? {}, (id, { label, cost }) => ({
      id,
      label,
      costUsd: cost,
    })),
    notIncluded: input?.['not-included'] ?? [],
  };
}

/** @throws {RangeError} If it is not one edit with what it needs, which the checks refuse. */
function editOf(input: EditInput): JobEdit {
  const {
    'thicker-existing': thicker,
    'steel-found': found,
    'more-base': moreBase,
    geotextile,
    by,
    steel,
  } = input;
  if (thicker !== undefined && by !== undefined)
    return { edit: 'thicker-existing', of: thicker, byIn: inCoreUnit(by) };
  if (found !== undefined && steel !== undefined) return { edit: 'steel-found', of: found, steel };
  if (moreBase !== undefined && by !== undefined)
    return { edit: 'more-base', under: moreBase, byIn: inCoreUnit(by) };
  if (geotextile !== undefined) return { edit: 'geotextile', under: geotextile };
  throw new RangeError(`not an edit: ${Object.keys(input).join(', ')}`);
}
