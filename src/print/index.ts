export { type CacheKeyParts, cacheKey, openCache, type PdfCache } from './cache.ts';
export {
  type BrowserCandidate,
  type BrowserFound,
  type BrowserSearch,
  type BrowserTools,
  browserCandidates,
  type ExplicitMissing,
  type NoBrowser,
  searchOnThisMachine,
  toolsOnThisMachine,
} from './find-browser.ts';
export { launch, PINNED_IDENTITY, type RunningBrowser, startBrowser } from './launch.ts';
export { BusyError, withLock } from './lock.ts';
export { type PdfFacts, pdfFacts } from './pdf-facts.ts';
export {
  type PrintFailure,
  type PrintJob,
  type PrintOptions,
  type PrintReport,
  printPdfs,
} from './print-pdf.ts';
export { type UnpackedBrowser, unpackChromium } from './unpack.ts';
