import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';

type Names = Readonly<Record<string, readonly PublicText[]>>;

/** The number of each joint on plan and in tables, by slab: they count on from slab to slab. */
export function jointTags(job: Job, results: JobResults, words: Words): Names {
  return namesBySlab(job, results.joints.data.lines, (place) =>
    words.common.drawing.joint(`${place + 1}` as PublicText),
  );
}

/** The letter of each panel: A to Z, then AA, AB; they go on from slab to slab. */
export function panelLetters(job: Job, results: JobResults, words: Words): Names {
  return namesBySlab(job, results.joints.data.panels, (place) => words.common.drawing.panel(letters(place)));
}

function namesBySlab(
  job: Job,
  things: Readonly<Record<string, readonly unknown[]>>,
  name: (place: number) => PublicText,
): Names {
  let before = 0;
  return Object.fromEntries(
    Object.values(job.build.slabs).map(({ id }) => {
      const named = thingNamed(things, id, 'slab').map((_, index) => name(before + index));
      before += named.length;
      return [id, named];
    }),
  );
}

const LETTER_COUNT = 26;

function letters(place: number): PublicText {
  const last = String.fromCodePoint('A'.charCodeAt(0) + (place % LETTER_COUNT));
  const before = place < LETTER_COUNT ? '' : letters(Math.floor(place / LETTER_COUNT) - 1);
  return `${before}${last}` as PublicText;
}
