import { readFile } from 'node:fs/promises';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A run of text: place of its baseline from the lower left corner [pt], height of its font [pt]. */
export type PdfText = {
  readonly text: string;
  readonly xPt: number;
  readonly yPt: number;
  readonly sizePt: number;
};
export type PdfPage = {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly texts: readonly PdfText[];
  /** Roles of the structure tree of this page, in reading order. */
  readonly roles: readonly string[];
};
export type PdfRead = {
  readonly pages: readonly PdfPage[];
  readonly title: string;
  readonly language: string;
  /** Everything the file says of itself, as one text. */
  readonly facts: string;
  readonly isTagged: boolean;
  readonly fontNames: readonly string[];
  readonly bookmarks: readonly { readonly title: string; readonly depth: number; readonly page: number }[];
  /** Id and number of its page, from 1. */
  readonly destinations: ReadonlyMap<string, number>;
};

type Node = { readonly role?: string; readonly type?: string; readonly children?: readonly Node[] };
type Bookmark = { readonly title: string; readonly dest: unknown; readonly items: readonly Bookmark[] };
type PageReference = Parameters<Awaited<ReturnType<typeof getDocument>['promise']>['getPageIndex']>[0];

/** A PDF as another program than the one that made it reads it. */
export async function readPdf(path: string): Promise<PdfRead> {
  const bytes = await readFile(path);
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  try {
    const pages: PdfPage[] = [];
    for (let number = 1; number <= pdf.numPages; number += 1) {
      const page = await pdf.getPage(number);
      const { width, height } = page.getViewport({ scale: 1 });
      const { items } = await page.getTextContent();
      const texts = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [textOf(item)] : []));
      pages.push({ widthPt: width, heightPt: height, texts, roles: rolesBelow(await page.getStructTree()) });
    }
    const { info, metadata } = await pdf.getMetadata();
    const facts = info as Record<string, unknown>;
    const pageOf = async (dest: unknown) => (await pdf.getPageIndex((dest as [PageReference])[0])) + 1;
    const listed = flat(((await pdf.getOutline()) ?? []) as unknown as readonly Bookmark[], 1);
    const named = Object.entries(await pdf.getDestinations());
    return {
      pages,
      title: String(facts['Title']),
      language: String(facts['Language']),
      facts: JSON.stringify([info, metadata]),
      isTagged:
        (await pdf.getMarkInfo())?.Marked === true &&
        /\/StructTreeRoot \d+ 0 R/.test(bytes.toString('latin1')),
      fontNames: fontNames(bytes.toString('latin1')),
      bookmarks: await Promise.all(
        listed.map(async ({ title, depth, dest }) => ({ title, depth, page: await pageOf(dest) })),
      ),
      destinations: new Map(
        await Promise.all(named.map(async ([id, dest]) => [id, await pageOf(dest)] as const)),
      ),
    };
  } finally {
    await pdf.destroy();
  }
}

function textOf(item: { str: string; transform: number[] }): PdfText {
  const [, , skew = 0, rise = 0, xPt = Number.NaN, yPt = Number.NaN] = item.transform;
  return { text: item.str, xPt, yPt, sizePt: Math.hypot(skew, rise) };
}

function rolesBelow(node: Node | null): readonly string[] {
  if (node === null) return [];
  return [...(node.role === undefined ? [] : [node.role]), ...(node.children ?? []).flatMap(rolesBelow)];
}

function flat(
  items: readonly Bookmark[],
  depth: number,
): readonly { readonly title: string; readonly depth: number; readonly dest: unknown }[] {
  return items.flatMap(({ title, dest, items: below }) => [
    { title, depth, dest },
    ...flat(below, depth + 1),
  ]);
}

function fontNames(latin1: string): readonly string[] {
  return [
    ...new Set([...latin1.matchAll(/\/BaseFont \/([^\s/]+)/g)].map(([, name = '']) => name)),
  ].toSorted();
}

/** Text without the breaks and spaces that setting it in lines adds or takes away. */
export function squeezed(text: string): string {
  return text.replaceAll('⁄', '/').replace(/[\s\u00a0\u2060\u200b]+/g, '');
}

export function textOfPage({ texts }: PdfPage): string {
  return squeezed(texts.map(({ text }) => text).join(''));
}

/** What stands above the margins' running lines and below them: the text itself. */
export function bodyOf(page: PdfPage): readonly PdfText[] {
  return page.texts.filter(({ yPt }) => yPt > SMALLEST_MARGIN_PT && yPt < page.heightPt - SMALLEST_MARGIN_PT);
}

const SMALLEST_MARGIN_PT = (15 / 25.4) * 72;
