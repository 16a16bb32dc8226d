import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import nunjucks from 'nunjucks';
import type { JobsPageView } from '../../src/describe/views.ts';
import { templateEnvironment } from '../../src/render/environment.ts';
import { type DocumentToRender, documentPage, type Page, pagesOf } from '../../src/render/pages.ts';
import { PROJECT_DIR } from './project.ts';

/** One environment for all documents of a test: templates are compiled once. */
export type Renderer = {
  readonly document: (document: DocumentToRender) => string;
  readonly jobsPage: (view: JobsPageView) => string;
};

/** Gives the bytes of `renderOne`; a test holds the two against each other. */
export function aRenderer(): Renderer {
  const templatesDir = join(PROJECT_DIR, 'templates');
  const pages = new Map<string, Page>();
  const environment = templateEnvironment(templatesDir, pages).nunjucks;
  const compiled = new Map<string, nunjucks.Template>();
  const templateOf = (path: string) => {
    const known = compiled.get(path);
    if (known !== undefined) return known;
    const text = readFileSync(join(templatesDir, path), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, '');
    const template = new nunjucks.Template(text, environment, path, true);
    compiled.set(path, template);
    return template;
  };
  const rendered = (key: string, page: Page) => {
    pages.set(key, page);
    return templateOf(page.template).render({ key });
  };
  return {
    document: (document) => rendered(`${document.folder}/${document.name}`, documentPage(document, '(none)')),
    jobsPage: (view) => {
      const page = pagesOf({ jobs: [], index: view }).get('index');
      if (page === undefined) throw new RangeError('a site without jobs has no jobs page');
      return rendered('index', page);
    },
  };
}
