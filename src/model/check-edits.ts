import type { EditInput, PriceSection } from '../read/index.ts';
import { checkId, type Finder, type Known } from './problems-found.ts';

const EXISTING: Known = { thing: 'existing', below: 'site.existing' };
const SLAB: Known = { thing: 'slab', below: 'build.slabs' };

/** What each edit names, and which other key it needs. */
const EDITS = {
  'thicker-existing': { names: EXISTING, needs: 'by', example: '1 in' },
  'steel-found': { names: EXISTING, needs: 'steel', example: 'mesh' },
  'more-base': { names: SLAB, needs: 'by', example: '2 in' },
} as const satisfies Readonly<Record<string, { names: Known; needs: 'by' | 'steel'; example: string }>>;
const EDIT_NAMES = Object.keys(EDITS) as readonly (keyof typeof EDITS)[];
const OTHER_KEYS = ['by', 'steel'] as const;

export function checkEdits(finder: Finder, price: PriceSection): void {
  for (const [id, { edits }] of Object.entries(price.hidden ?? {})) {
    for (const [index, edit] of edits.entries()) checkEdit(finder, `price.hidden.${id}.edits.${index}`, edit);
  }
}

/** Whether a key is there is asked of the files: one with a wrong value is there, and has its problem. */
function checkEdit(finder: Finder, path: string, edit: EditInput): void {
  const { origins, add } = finder;
  const [name, ...others] = EDIT_NAMES.filter((each) => origins.has(`${path}.${each}`));
  if (name === undefined || others.length > 0) return add(path, 'edit-unclear', { known: EDIT_NAMES });
  const { names, needs, example } = EDITS[name];
  const id = edit[name];
  if (id !== undefined) checkId(finder, `${path}.${name}`, id, names);
  if (!origins.has(`${path}.${needs}`)) add(path, 'edit-lacks', { edit: name, key: needs, example });
  for (const key of OTHER_KEYS) {
    if (key !== needs && origins.has(`${path}.${key}`))
      add(`${path}.${key}`, 'edit-extra', { edit: name, key });
  }
}
