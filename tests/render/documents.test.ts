import { describe, expect, test } from 'vitest';
import { type ProposalView, TICK_BOX, type WorkOrderView, WRITE_LINE } from '../../src/describe/views.ts';
import type { DocumentToRender } from '../../src/render/index.ts';
import { renderOne } from '../../src/render/index.ts';
import * as fixtures from './fixtures.ts';
import { markupFaults } from './markup-faults.ts';

const projectDir = new URL('../..', import.meta.url).pathname;

const documents: readonly DocumentToRender[] = [
  { kind: 'proposal', folder: 'homeowner', name: 'proposal', view: fixtures.aProposal() },
  { kind: 'work-order', folder: 'office', name: 'work-order', view: fixtures.aWorkOrder() },
  { kind: 'materials', folder: 'office', name: 'materials', view: fixtures.aMaterials() },
  { kind: 'safety', folder: 'office', name: 'safety', view: fixtures.aSafety() },
  { kind: 'calculation', folder: 'office', name: 'calculation', view: fixtures.aCalculation() },
  { kind: 'binder', folder: 'office', name: 'binder', view: fixtures.aBinder('a4') },
  { kind: 'site-walk', folder: 'office', name: 'site-walk', view: fixtures.aSiteWalk() },
];

function styleOf(html: string): string {
  return html.match(/<style>([\s\S]*?)<\/style>/)?.[1] ?? '';
}

function bodyOf(html: string): string {
  return html.replace(/<(style|script)>[\s\S]*?<\/\1>/g, '');
}

/** All texts of a view that a reader should find on the page, as they are in HTML. */
function readableTexts(value: unknown, key = ''): string[] {
  // The frame goes into page margins; drawings have their own tests; keys and codes are not shown.
  if (['frame', 'drawing', 'align', 'severity', 'part', 'phone'].includes(key)) return [];
  if (typeof value === 'string')
    return key === 'id' || value === '' || value === TICK_BOX || value === WRITE_LINE ? [] : [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([each, part]) =>
    readableTexts(part, Array.isArray(value) ? key : each),
  );
}

describe.each(documents)('$kind', (document) => {
  const html = renderOne(document, { projectDir });

  test('is a whole page with language, title, one main part and one first heading', async () => {
    const page = await html;
    expect(page).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
    expect(page).toContain('<title>');
    expect(page.match(/<main>/g)).toHaveLength(1);
    expect(bodyOf(page).match(/<h1[ >]/g)).toHaveLength(1);
    expect(markupFaults(page)).toEqual([]);
  });

  test('headings step down one level at a time', async () => {
    const levels = [...bodyOf(await html).matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level));
    const jumps = levels.filter((level, at) => at > 0 && level > (levels[at - 1] ?? 0) + 1);
    expect(jumps).toEqual([]);
  });

  test('shows every text of its view', async () => {
    const words = bodyOf(await html)
      .replace(/<wbr>/g, '')
      .replace(/<\/?span[^>]*>/g, '')
      .replaceAll('\u00a0', ' ')
      .replace(/&#39;/g, "'")
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, '&');
    const missing = readableTexts(document.view).filter((text) => !words.includes(text));
    expect(missing).toEqual([]);
  });

  test('asks for nothing from outside and names one font family', async () => {
    const page = await html;
    expect(page).not.toMatch(/https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
    expect(page).not.toMatch(/@import|<link|<img|<iframe|\ssrc="/);
    const urls = [...page.matchAll(/url\(([^)]{0,40})/g)].map(([, url]) => url);
    expect(urls.filter((url) => !url?.startsWith('data:font/woff2') && !url?.startsWith('#'))).toEqual([]);
    const families = [...page.matchAll(/font(?:-family)?:[^;{}]*?'([^']+)'[^;}]*/g)];
    expect(families.length).toBeGreaterThan(2);
    expect(families.every(([whole, family]) => family === 'Noto Sans' && /'Noto Sans'\s*$/.test(whole))).toBe(
      true,
    );
  });

  test('every table has a caption and every column heading its scope', async () => {
    const body = bodyOf(await html);
    const tables = [...body.matchAll(/<table[\s\S]*?<\/table>/g)].map(([table]) => table);
    expect(tables.filter((table) => !/^<table[^>]*>\s*<caption/.test(table))).toEqual([]);
    expect(
      [...body.matchAll(/<th\b[^>]*>/g)].filter(([th]) => !/ scope="(?:col|row|rowgroup)"/.test(th)),
    ).toEqual([]);
  });
});

test('page size, running head and foot come from the frame', async () => {
  const [letter] = documents;
  if (letter === undefined) throw new Error('no document');
  const style = styleOf(await renderOne(letter, { projectDir }));
  expect(style).toMatch(/@page \{\s*size: 215\.9mm 279\.4mm;\s*margin: 18mm;/);
  expect(style).toContain('content: "Page " counter(page) " of " counter(pages)');
  expect(style).toContain('content: "2026-014 \\b7  Revision B \\b7  May 4, 2026"');
  const a4 = await renderOne({ ...letter, view: fixtures.aProposal('a4') }, { projectDir });
  expect(styleOf(a4)).toContain('size: 210mm 297mm;');
});

test('a hostile running head cannot leave its string', async () => {
  const view = fixtures.aProposal();
  const right = '"; } </style><script>alert(1)</script> \\' as ProposalView['frame']['title'];
  const hostile: ProposalView = {
    ...view,
    frame: { ...view.frame, title: right, head: { left: right, right } },
  };
  const html = await renderOne(
    { kind: 'proposal', folder: 'homeowner', name: 'p', view: hostile },
    { projectDir },
  );
  expect(html.match(/<\/style>/g)).toHaveLength(1);
  expect(html).not.toContain('<script>alert');
});

test('a homeowner’s page links nowhere and carries no styles of the crew’s or office’s parts', async () => {
  const [proposal] = documents;
  if (proposal === undefined) throw new Error('no document');
  const html = await renderOne(proposal, { projectDir });
  expect(html).not.toMatch(/<a[ >]|href=/);
  expect(styleOf(html)).toContain('.clauses');
  expect(styleOf(html)).not.toMatch(/\.hazard|\.supplier|\.topic|\.day__|\.finding/);
});

test('a supplier’s phone is the only address on the materials sheet', async () => {
  const document = documents.find(({ kind }) => kind === 'materials');
  if (document === undefined) throw new Error('no document');
  const html = await renderOne(document, { projectDir });
  expect([...html.matchAll(/href="([^"]*)"/g)].map(([, address]) => address)).toEqual(['tel:5550170']);
});

test('the parts of a binder are named pages that the contents link to', async () => {
  const document = documents.find(({ kind }) => kind === 'binder');
  if (document === undefined) throw new Error('no document');
  const html = await renderOne(document, { projectDir });
  for (const part of ['proposal', 'work-order', 'materials', 'safety', 'calculation']) {
    expect(html).toContain(`<section id="part-${part}" class="part part--${part} `);
    expect(html).toContain(`<a href="#part-${part}">`);
    expect(html).toContain(`data-page-of="part-${part}">000</span>`);
    expect(html).toContain(`.part--${part} { page: ${part}; }`);
    expect(html).toMatch(new RegExp(`@page ${part} \\{\\s*size: 210mm 297mm;`));
  }
});

test('parts of a view that are absent leave no trace', async () => {
  const full = fixtures.aWorkOrder();
  const bare: WorkOrderView = {
    ...full,
    goesPlan: null,
    goes: null,
    protect: null,
    curves: null,
    turns: null,
    checks: null,
    levels: null,
    grades: null,
    profiles: [],
    fixtures: null,
    drains: null,
    garages: null,
    keptDry: null,
    publicWalks: null,
    formPieces: null,
    pours: null,
    steel: null,
    bars: null,
    bays: null,
    loads: null,
    pieceNotes: [],
    reChalk: null,
    findings: null,
    days: [],
    pourDay: null,
    chute: null,
  };
  const html = await renderOne(
    { kind: 'work-order', folder: 'office', name: 'w', view: bare },
    { projectDir },
  );
  expect(markupFaults(html)).toEqual([]);
  // Slabs, forms, joints, panels, edges.
  expect(bodyOf(html).match(/<table/g)).toHaveLength(5);
  expect(bodyOf(html)).not.toMatch(/class="(?:day|finding)/);
  expect(bodyOf(html)).not.toContain('Break to');
  const safety = { ...fixtures.aSafety(), silica: null, rest: null };
  const sheet = await renderOne(
    { kind: 'safety', folder: 'office', name: 's', view: safety },
    { projectDir },
  );
  expect(bodyOf(sheet)).not.toContain('<table');
  const materials = {
    ...fixtures.aMaterials(),
    loads: null,
    places: null,
    streams: null,
    fleet: null,
    tieDowns: null,
    base: null,
    steel: null,
    stock: null,
  };
  const plan = await renderOne(
    { kind: 'materials', folder: 'office', name: 'm', view: materials },
    { projectDir },
  );
  expect(bodyOf(plan)).not.toContain('Loads out');
  expect(bodyOf(plan)).not.toContain('Places');
  const { areas, ...rest } = fixtures.aProposal();
  const proposal = { ...rest, areas, removal: null, stays: null, hidden: null, notIncluded: null };
  const offer = await renderOne(
    { kind: 'proposal', folder: 'homeowner', name: 'p', view: proposal },
    { projectDir },
  );
  expect(bodyOf(offer)).not.toContain('What goes');
  expect(markupFaults(offer)).toEqual([]);
});
