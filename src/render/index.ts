export type { DocumentToRender, DocumentView, SiteToRender } from './pages.ts';
export { renderOne } from './render-one.ts';
export { type RenderOptions, renderSite } from './render-site.ts';
