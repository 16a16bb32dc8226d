const VOID_TAGS = new Set(['input', 'meta', 'link', 'br', 'wbr', 'col', 'img', 'hr']);

/**
 * What is wrong with the tags of a piece of HTML: one left open or closed out of order, an
 * attribute without quotes, an id used twice, an attribute given twice. A small check of our own
 * markup, not a parser for others'.
 */
export function markupFaults(html: string): string[] {
  const faults: string[] = [];
  const open: string[] = [];
  const ids = new Set<string>();
  const body = html.replace(/<(style|script)>[\s\S]*?<\/\1>/g, '').replace(/<!DOCTYPE html>/g, '');
  for (const [tag, slash, name = '', attributes = ''] of body.matchAll(
    /<(\/?)([A-Za-z][\w-]*)((?:[^<>"]|"[^"]*")*)>/g,
  )) {
    if (slash) {
      const expected = open.pop();
      if (expected !== name) faults.push(`${tag} closes ${expected ?? 'nothing'}`);
      continue;
    }
    const isClosed = attributes.endsWith('/');
    const rest = attributes.replace(/\/$/, '').replace(/\s[\w:-]+="[^"<]*"/g, '');
    if (rest.trim() !== '') faults.push(`${tag} has something beside quoted attributes`);
    const names = [...attributes.matchAll(/\s([\w:-]+)="/g)].map(([, each]) => each);
    if (new Set(names).size < names.length) faults.push(`${tag} repeats an attribute`);
    const id = attributes.match(/\sid="([^"]*)"/)?.[1];
    if (id !== undefined && ids.has(id)) faults.push(`the id ${id} is used twice`);
    if (id !== undefined) ids.add(id);
    if (!isClosed && !VOID_TAGS.has(name)) open.push(name);
  }
  if (open.length > 0) faults.push(`left open: ${open.join(' ')}`);
  const strayBrackets = body.replace(/<(\/?)([A-Za-z][\w-]*)((?:[^<>"]|"[^"]*")*)>/g, '').match(/[<>]/g);
  if (strayBrackets) faults.push(`${strayBrackets.length} brackets outside of tags`);
  return faults;
}
