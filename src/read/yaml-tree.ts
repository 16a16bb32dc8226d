import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import {
  type LocatedProblem,
  type ProblemCode,
  problemAt,
  type SourceSpot,
  shortened,
} from '../problems/index.ts';
import type { MapEntry, TreeNode } from './tree.ts';
import { syntaxProblems } from './yaml-errors.ts';

/** An alias that repeats an alias that repeats… comes to its end here. */
const MOST_VALUES = 20_000;
const MOST_LEVELS = 12;
const MOST_WRITTEN = 120;
/** What is wrong whatever else is: after a slip of the form the rest of the tree is a guess. */
const HOLDS_ANYWAY: readonly ProblemCode[] = ['cut-off-by-hash', 'tag-refused', 'merge-key-refused'];

export type ReadTree = { readonly root: TreeNode | null; readonly problems: readonly LocatedProblem[] };

/**
 * Reads YAML with every scalar as the text that stands there. Tags, merge keys, duplicate keys and
 * texts that YAML would cut or split without a word are problems.
 *
 * @returns `root` null if the file is empty or its form is so wrong that nothing follows from it.
 */
export function readTree(text: string, file: string, from: 'job' | 'company'): ReadTree {
  try {
    return new TreeReader(text, file, from).read();
  } catch (error) {
    // Brackets nested by the thousand overflow the stack of the parser.
    if (!(error instanceof RangeError)) throw error;
    return {
      root: null,
      problems: [problemAt({ file, line: null }, 'too-deep', { most: String(MOST_LEVELS) })],
    };
  }
}

class TreeReader {
  readonly #text: string;
  readonly #file: string;
  readonly #from: 'job' | 'company';
  readonly #lines = new LineCounter();
  readonly #anchors = new Map<string, Node>();
  readonly #problems: LocatedProblem[] = [];
  #valueCount = 0;
  #fatal: LocatedProblem | null = null;
  #cutAt = Number.POSITIVE_INFINITY;

  constructor(text: string, file: string, from: 'job' | 'company') {
    this.#text = text;
    this.#file = file;
    this.#from = from;
  }

  read(): ReadTree {
    // Duplicate keys are looked for below: the parser's own search takes seconds on a long list of keys.
    const document = parseDocument(this.#text, {
      schema: 'failsafe',
      prettyErrors: false,
      uniqueKeys: false,
      lineCounter: this.#lines,
    });
    const root = this.#contents(document);
    if (this.#fatal !== null) return { root: null, problems: [this.#fatal] };
    const errors = document.errors.filter((error) => error.code !== 'TAG_RESOLVE_FAILED');
    if (errors.length === 0) return { root, problems: this.#problems };
    // A text that was cut off inside brackets leaves them open: one mistake, not two.
    const own = errors.filter((error) => error.pos[0] < this.#cutAt);
    const syntax = syntaxProblems(own, this.#text, (start, end) => this.#spot(start, end));
    return {
      root: null,
      problems: [...syntax, ...this.#problems.filter(({ code }) => HOLDS_ANYWAY.includes(code))],
    };
  }

  #contents(document: Document.Parsed): TreeNode | null {
    const contents = document.contents as Node | null;
    if (contents === null || (isScalar(contents) && contents.source === '')) {
      this.#problems.push(problemAt({ file: this.#file, line: null }, 'empty-file', {}));
      return null;
    }
    return this.#node(contents, this.#spot(0, 1), '', 0);
  }

  /** @param keySpot Of the key above; underlined for a value of several lines. */
  #node(node: Node, keySpot: SourceSpot, key: string, level: number): TreeNode {
    this.#valueCount += 1;
    const spot = this.#spotOfValue(node, keySpot);
    if (this.#valueCount > MOST_VALUES) {
      this.#fatal ??= problemAt(spot, 'too-many-values', { most: String(MOST_VALUES) });
    }
    if (level > MOST_LEVELS) this.#fatal ??= problemAt(spot, 'too-deep', { most: String(MOST_LEVELS) });
    if (this.#fatal !== null) return this.#broken(spot, null);
    if (isAlias(node)) {
      const meant = this.#anchors.get(node.source);
      return meant === undefined
        ? this.#broken(spot, problemAt(spot, 'unknown-anchor', { name: shortened(node.source, 40) }))
        : this.#node(meant, keySpot, key, level + 1);
    }
    if (node.tag !== undefined)
      return this.#broken(spot, problemAt(spot, 'tag-refused', { tag: shortened(node.tag, 40) }));
    if ('anchor' in node && node.anchor !== undefined) this.#anchors.set(node.anchor, node);
    if (isMap(node)) return this.#map(node, spot, key, level);
    if (isSeq(node)) return this.#list(node, spot, key, level);
    return this.#scalar(node, spot, key);
  }

  #scalar(node: Scalar, spot: SourceSpot, key: string): TreeNode {
    const text = String(node.value);
    const end = node.range?.[1] ?? 0;
    const rest = /^[^\r\n]*/.exec(this.#text.slice(end, end + MOST_WRITTEN))?.[0] ?? '';
    const isPlain = node.type === 'PLAIN';
    if (isPlain && (text === '' ? /^[ \t]*#\S/ : /^[ \t]+#\S/).test(rest)) {
      this.#cutAt = Math.min(this.#cutAt, end);
      const hash = end + rest.indexOf('#');
      const cut = this.#spot(hash, end + rest.trimEnd().length);
      return this.#broken(cut, problemAt(cut, 'cut-off-by-hash', { kept: shortened(text, 40) }));
    }
    if (isPlain && text === '')
      return this.#broken(spot, problemAt(spot, 'empty-value', { key: shortened(key, 40) }));
    return { kind: 'text', text, spot, written: text, from: this.#from, isBroken: false };
  }

  #list(node: YAMLSeq, spot: SourceSpot, key: string, level: number): TreeNode {
    const split = node.flow === true ? this.#splitNumber(node.items as Node[]) : null;
    if (split !== null) return this.#broken(split.spot, split);
    const items = (node.items as Node[]).map((item) => this.#node(item, spot, key, level + 1));
    return {
      kind: 'list',
      items,
      spot,
      written: this.#written(node, key),
      from: this.#from,
      isBroken: false,
    };
  }

  #map(node: YAMLMap, spot: SourceSpot, key: string, level: number): TreeNode {
    const entries = new Map<string, MapEntry>();
    const pairs = node.items as Pair<Node, Node | null>[];
    const split = node.flow === true ? this.#splitText(pairs) : null;
    if (split !== null) return this.#broken(split.spot, split);
    for (const pair of pairs) {
      const keySpot = this.#spotOfKey(pair.key);
      const name = isScalar(pair.key) ? String(pair.key.value) : null;
      const problem = this.#keyProblem(name, keySpot, entries);
      if (problem !== null) this.#problems.push(problem);
      else if (name !== null) entries.set(name, { keySpot, node: this.#valueOf(pair, keySpot, name, level) });
    }
    return {
      kind: 'map',
      entries,
      spot,
      written: this.#written(node, key),
      from: this.#from,
      isBroken: false,
    };
  }

  #valueOf(pair: Pair<Node, Node | null>, keySpot: SourceSpot, name: string, level: number): TreeNode {
    if (pair.value !== null) return this.#node(pair.value, keySpot, name, level + 1);
    return this.#broken(keySpot, problemAt(keySpot, 'empty-value', { key: shortened(name, 40) }));
  }

  #keyProblem(
    name: string | null,
    keySpot: SourceSpot,
    entries: ReadonlyMap<string, MapEntry>,
  ): LocatedProblem | null {
    if (name === null) return problemAt(keySpot, 'key-not-text', {});
    if (name === '<<') return problemAt(keySpot, 'merge-key-refused', {});
    // The schema library passes over this one name in silence.
    if (name === '__proto__') return problemAt(keySpot, 'bad-id', { id: name });
    const first = entries.get(name);
    if (first === undefined) return null;
    return problemAt(keySpot, 'duplicate-key', {
      key: shortened(name, 40),
      line: String(first.keySpot.line),
    });
  }

  /** `[$1,250.00, 3]` is three values to YAML: two neighbours with nothing but a comma between. */
  #splitNumber(items: readonly Node[]): LocatedProblem | null {
    for (const [index, item] of items.entries()) {
      const next = items[index + 1];
      if (next !== undefined && this.#isSplit(item, next)) return this.#splitAt(item, next);
    }
    return null;
  }

  /** `{ label: Forms off, clean }` has a key "clean" without a value to YAML. */
  #splitText(pairs: readonly Pair<Node, Node | null>[]): LocatedProblem | null {
    for (const [index, pair] of pairs.entries()) {
      if (pair.value !== null) continue;
      const before = pairs[index - 1]?.value;
      if (before && this.#isSplit(before, pair.key)) return this.#splitAt(before, pair.key);
      return problemAt(this.#spotOfKey(pair.key), 'text-split-by-comma', {
        text: shortened(isScalar(pair.key) ? String(pair.key.value) : '', 40),
      });
    }
    return null;
  }

  #isSplit(one: Node, next: Node): boolean {
    if (!isScalar(one) || !isScalar(next)) return false;
    const between = this.#text.slice(one.range?.[1] ?? 0, next.range?.[0] ?? 0);
    return (
      between === ',' && /^-?\$?\d{1,3}$/.test(String(one.value)) && /^\d{3}(?!\d)/.test(String(next.value))
    );
  }

  #splitAt(one: Node, next: Node): LocatedProblem {
    const spot = this.#spot(one.range?.[0] ?? 0, next.range?.[1] ?? 0);
    return problemAt(spot, 'number-split-by-comma', {
      number: shortened(`${(one as Scalar).value},${(next as Scalar).value}`, 40),
    });
  }

  #broken(spot: SourceSpot | LocatedProblem['spot'], problem: LocatedProblem | null): TreeNode {
    if (problem !== null) this.#problems.push(problem);
    const here = spot.line === null ? this.#spot(0, 1) : spot;
    return { kind: 'text', text: '', spot: here, written: '', from: this.#from, isBroken: true };
  }

  #spotOfValue(node: Node, keySpot: SourceSpot): SourceSpot {
    const isBlock = (isMap(node) || isSeq(node)) && node.flow !== true;
    const isEmpty = isScalar(node) && node.source === '';
    if (isBlock || isEmpty || node.range == null) return keySpot;
    return this.#spot(node.range[0], node.range[1]);
  }

  #spotOfKey(key: Node): SourceSpot {
    return this.#spot(key.range?.[0] ?? 0, key.range?.[1] ?? 1);
  }

  /** A value in brackets as it stands; of one in several lines only its key. */
  #written(node: YAMLMap | YAMLSeq, key: string): string {
    if (node.flow !== true || node.range == null) return key;
    return shortened(this.#text.slice(node.range[0], node.range[1]).replace(/\s+/g, ' '), MOST_WRITTEN);
  }

  /** From one offset to another, or to the end of the line. */
  #spot(start: number, end: number): SourceSpot {
    const { line, col } = this.#lines.linePos(start);
    const lineEnd = this.#text.indexOf('\n', start);
    const last = Math.min(end, lineEnd < 0 ? this.#text.length : lineEnd);
    return {
      file: this.#file,
      line: Math.max(1, line),
      column: Math.max(1, col),
      length: Math.max(1, last - start),
    };
  }
}
