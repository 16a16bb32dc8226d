/** A piece of a page: a run of text, or the value of an attribute. */
export type Piece = {
  readonly kind: 'text' | 'attribute' | 'comment' | 'style' | 'script';
  /** Name of the attribute; empty for anything else. */
  readonly name: string;
  readonly text: string;
  /** The elements round it, outermost first: `td`, with its classes `td.small`. */
  readonly within: readonly string[];
};

const VOID = new Set(['area', 'base', 'br', 'col', 'hr', 'img', 'input', 'link', 'meta', 'wbr']);
/** Elements that do not end a run of text. */
const INLINE = new Set(['span', 'wbr', 'strong', 'em', 'b', 'i', 'a', 'time', 'tspan']);
const TOKEN =
  /<!--([\s\S]*?)-->|<!DOCTYPE[^>]*>|<(\/?)([a-zA-Z][\w-]*)((?:[^>"']|"[^"]*"|'[^']*')*?)(\/?)>|([^<]+)/y;
const ATTRIBUTE = /([\w:-]+)(?:="([^"]*)")?/g;

/**
 * Everything a page says, in order. Made for our own templates: attributes in double quotes, every
 * element closed.
 *
 * @throws {Error} If the page is not of that kind, so that nothing of it is passed over.
 */
export function piecesOf(html: string): readonly Piece[] {
  const pieces: Piece[] = [];
  const within: string[] = [];
  let run = '';
  const endRun = () => {
    const text = decoded(run).replace(/\s+/g, ' ').trim();
    if (text !== '') pieces.push({ kind: 'text', name: '', text, within: [...within] });
    run = '';
  };
  for (let at = 0; at < html.length; at = TOKEN.lastIndex) {
    TOKEN.lastIndex = at;
    const token = TOKEN.exec(html);
    if (token === null) throw new Error(`cannot read the page at ${JSON.stringify(html.slice(at, at + 80))}`);
    const [, comment, closes, tag, attributes = '', closed, text] = token;
    if (text !== undefined) run += text;
    if (comment !== undefined) pieces.push({ kind: 'comment', name: '', text: comment, within: [...within] });
    if (tag === undefined) continue;
    if (!INLINE.has(tag)) endRun();
    if (closes === '/') {
      const open = within.pop();
      if (open?.split('.')[0] !== tag) throw new Error(`</${tag}> closes ${open}`);
      continue;
    }
    const values = [...attributes.matchAll(ATTRIBUTE)].map(([, name = '', value = '']) => ({
      name,
      text: decoded(value),
    }));
    const classes = values.find(({ name }) => name === 'class')?.text.split(' ') ?? [];
    const element = [tag, ...classes].join('.');
    pieces.push(
      ...values.map((value) => ({ kind: 'attribute' as const, ...value, within: [...within, element] })),
    );
    if (tag === 'style' || tag === 'script') {
      const end = html.indexOf(`</${tag}>`, TOKEN.lastIndex);
      if (end < 0) throw new Error(`<${tag}> does not end`);
      pieces.push({ kind: tag, name: '', text: html.slice(TOKEN.lastIndex, end), within: [...within] });
      TOKEN.lastIndex = end + tag.length + 3;
    } else if (!VOID.has(tag) && closed !== '/') within.push(element);
  }
  endRun();
  if (within.length > 0) throw new Error(`not closed: ${within.join(' ')}`);
  return pieces;
}

function decoded(text: string): string {
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}
