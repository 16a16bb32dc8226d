import type { JobResults } from '../../calculate/index.ts';
import type { Steel } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';

/** A material and the steel in it. */
export function withSteel(material: string, steel: Steel, words: Words): string {
  const say = words.workOrder.goes;
  const named = say.steels[steel];
  return named === null ? material : say.withSteel(material, named);
}

/** What some cargo is hauled as. */
export function streamText(
  cargoName: string,
  { results, words }: { readonly results: JobResults; readonly words: Words },
): string {
  const cargo = results.tearOut.data.cargo.find(({ name }) => name === cargoName);
  if (cargo === undefined) throw new RangeError(`nothing called ${cargoName} is hauled`);
  return words.materials.streamNames[cargo.stream];
}
