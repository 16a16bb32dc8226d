import type { CoreProblem } from '../../problems/index.ts';
import { weekdayOf } from '../../units/index.ts';
import type { DumpPlace, Stream, Trailer } from '../job.ts';

/** What lacks for the streams of the job: a trailer at all, or an open place for one of them. */
export function haulProblems(
  present: readonly Stream[],
  input: {
    readonly trailers: Readonly<Record<string, Trailer>>;
    readonly places: Readonly<Record<string, DumpPlace>>;
    readonly day: { readonly firstOn: string };
  },
): readonly CoreProblem[] {
  const noTrailer =
    present.length > 0 && Object.keys(input.trailers).length === 0
      ? [{ code: 'no-trailer', path: 'plan.trailers', parts: {} }]
      : [];
  return [...noTrailer, ...present.flatMap((stream) => placeProblems(stream, input))];
}

function placeProblems(
  stream: Stream,
  { places, day: { firstOn } }: Parameters<typeof haulProblems>[1],
): readonly CoreProblem[] {
  const accepting = Object.values(places).filter(({ accepts }) => accepts.includes(stream));
  if (accepting.length === 0) {
    return [{ code: 'no-place-for-stream', path: 'company.places', parts: { stream } }];
  }
  if (accepting.some(({ openOn }) => openOn.includes(weekdayOf(firstOn)))) return [];
  const closed = accepting.map(({ label }) => label).join(', ');
  return [
    {
      code: 'places-closed',
      path: 'plan.starts-on',
      parts: { stream, places: closed, on: firstOn },
    },
  ];
}
