import { childrenOf } from './paths.ts';
import { checkId, type Finder, type Known } from './problems-found.ts';

const EXISTING: Known = { thing: 'existing', below: 'site.existing' };
const SLAB: Known = { thing: 'slab', below: 'build.slabs' };

/** What each edit names, and which other key it needs. */
const EDITS = {
  'thicker-existing': { names: EXISTING, needs: 'by', example: '1 in' },
  'steel-found': { names: EXISTING, needs: 'steel', example: 'mesh' },
  'more-base': { names: SLAB, needs: 'by', example: '2 in' },
  geotextile: { names: SLAB, needs: null, example: '' },
} as const satisfies Readonly<
  Record<string, { names: Known; needs: 'by' | 'steel' | null; example: string }>
>;
const EDIT_NAMES = Object.keys(EDITS) as readonly (keyof typeof EDITS)[];
const OTHER_KEYS = ['by', 'steel'] as const;

export function checkEdits(finder: Finder): void {
  for (const id of childrenOf('price.hidden', finder.origins)) {
    const edits = `price.hidden.${id}.edits`;
    for (const index of childrenOf(edits, finder.origins)) checkEdit(finder, `${edits}.${index}`);
  }
}

/** Whether a key is there is asked of the files: one with a wrong value is there, and has its problem. */
function checkEdit(finder: Finder, path: string): void {
  const { origins, add } = finder;
  const [name, ...others] = EDIT_NAMES.filter((each) => origins.has(`${path}.${each}`));
  if (name === undefined || others.length > 0) return add(path, 'edit-unclear', { known: EDIT_NAMES });
  const { names, needs, example } = EDITS[name];
  checkId(finder, `${path}.${name}`, names);
  const id = origins.get(`${path}.${name}`)?.text ?? '';
  if (names === EXISTING && origins.has(`site.existing.${id}.walls`))
    add(`${path}.${name}`, 'edit-of-walls', { edit: name, id });
  if (needs !== null && !origins.has(`${path}.${needs}`))
    add(path, 'edit-lacks', { edit: name, key: needs, example });
  for (const key of OTHER_KEYS) {
    if (key !== needs && origins.has(`${path}.${key}`))
      add(`${path}.${key}`, 'edit-extra', { edit: name, key });
  }
}
