import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import nunjucks from 'nunjucks';
import { TICK_BOX, WRITE_LINE } from '../describe/views.ts';
import { drawn } from './drawn.ts';
import { type Page, pageStyle } from './pages.ts';
import { stylesIn } from './styles.ts';
import { breakable, fractions, markup, sitePath, spoken, telephone } from './text-filters.ts';

/** Templates ask for pages by key; `lastKey` tells whose page was being made when something failed. */
export type Environment = { readonly nunjucks: nunjucks.Environment; lastKey: string | null };

/**
 * The one template environment: a build, a single document and the tests use the same.
 *
 * @param templatesDir Folder of the templates.
 * @param pages        Pages by key. A template gets the view of one page, never the job.
 */
export function templateEnvironment(templatesDir: string, pages: ReadonlyMap<string, Page>): Environment {
  const environment: Environment = {
    nunjucks: new nunjucks.Environment(new nunjucks.FileSystemLoader(templatesDir), {
      autoescape: true,
      throwOnUndefined: true,
      trimBlocks: true,
      lstripBlocks: true,
    }),
    lastKey: null,
  };
  const styles = stylesIn(templatesDir);
  const pageOf = (key: string): Page => {
    const page = pages.get(key);
    if (page === undefined) throw new Error(`no page has the key ${JSON.stringify(key)}`);
    environment.lastKey = key;
    return page;
  };
  const globals = {
    tickBox: TICK_BOX,
    writeLine: WRITE_LINE,
    pageOf,
    viewOf: (key: string) => pageOf(key).view,
    styleOf: (key: string) => {
      const page = pageOf(key);
      return markup(`${styles.forTemplate(page.template)}\n${pageStyle(page)}`);
    },
    scriptOf: (name: string) => markup(readFileSync(join(templatesDir, 'scripts', `${name}.js`), 'utf8')),
  };
  for (const [name, value] of Object.entries(globals)) environment.nunjucks.addGlobal(name, value);
  const filters = { fractions, breakable, telephone, spoken, sitePath, drawn };
  for (const [name, filter] of Object.entries(filters)) environment.nunjucks.addFilter(name, filter);
  return environment;
}
