import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** Reads style sheets and templates once a build. */
export type Styles = {
  /** Everything a page of this template needs, fonts included, without its page rules. */
  readonly forTemplate: (templateName: string) => string;
};

/**
 * A page carries the styles of the components it imports, found by following the imports, and no
 * others: it is mailed as one file, and a homeowner's page has no styles of the office's parts.
 *
 * @param templatesDir Folder of the templates; names are relative to it.
 */
export function stylesIn(templatesDir: string): Styles {
  const known = new Map<string, string>();
  const fonts = [400, 700].map(fontFace).join('\n');
  const base = readFileSync(join(templatesDir, 'styles/base.css'), 'utf8');

  const forTemplate = (templateName: string): string => {
    const before = known.get(templateName);
    if (before !== undefined) return before;
    const sheets = [...importedFrom(templatesDir, templateName)].map(styleNextTo);
    const styles = [...new Set(sheets)].map((sheet) => readFileSync(join(templatesDir, sheet), 'utf8'));
    const all = [fonts, base, ...styles].map(withoutComments).join('\n');
    known.set(templateName, all);
    return all;
  };
  return { forTemplate };
}

/** Templates that a template imports, deepest first, in a fixed order. */
function importedFrom(templatesDir: string, templateName: string, seen = new Set<string>()): Set<string> {
  const source = readFileSync(join(templatesDir, templateName), 'utf8');
  for (const [, imported] of source.matchAll(/\{% from "([^"]+)" import /g)) {
    if (imported === undefined || seen.has(imported)) continue;
    importedFrom(templatesDir, imported, seen);
    seen.add(imported);
  }
  return seen;
}

/** components/table/macro.njk -> components/table/table.css; bodies/safety.njk -> styles/safety.css */
function styleNextTo(templateName: string): string {
  const [, component] = templateName.match(/^components\/([^/]+)\/macro\.njk$/) ?? [];
  if (component !== undefined) return `components/${component}/${component}.css`;
  return templateName.replace(/^bodies\/(.+)\.njk$/, 'styles/$1.css');
}

/** The shipped subset covers Latin-1, primes, quotes and dashes; no other family is ever named. */
function fontFace(weight: number): string {
  const file = `@fontsource/noto-sans/files/noto-sans-latin-${weight}-normal.woff2`;
  const bytes = readFileSync(createRequire(import.meta.url).resolve(file));
  return `@font-face { font-family: 'Noto Sans'; font-weight: ${weight}; src: url(data:font/woff2;base64,${bytes.toString('base64')}) format('woff2'); }`;
}

function withoutComments(css: string): string {
  return css.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\n\s*\n+/g, '\n');
}
