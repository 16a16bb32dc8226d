import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { templateEnvironment } from './environment.ts';
import { type DocumentToRender, documentPage } from './pages.ts';
import type { RenderOptions } from './render-site.ts';

/**
 * One document as HTML, through the environment and templates of a whole build, without Eleventy.
 *
 * @throws {Error} If the template fails, naming the document.
 */
export async function renderOne(
  document: DocumentToRender,
  options: Pick<RenderOptions, 'projectDir'>,
): Promise<string> {
  const templatesDir = join(options.projectDir, 'templates');
  const page = documentPage(document, '(none)');
  const key = `${document.folder}/${document.name}`;
  const environment = templateEnvironment(templatesDir, new Map([[key, page]]));
  const template = readFileSync(join(templatesDir, page.template), 'utf8').replace(FRONT_MATTER, '');
  return environment.nunjucks.renderString(template, { key });
}

/** The head of a page template, which only Eleventy reads. */
const FRONT_MATTER = /^---\n[\s\S]*?\n---\n/;
