import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { type DrawnProfile, stationLetter } from '../../calculate/profiles/index.ts';
import type { PublicText } from '../../calculate/text.ts';
import { climbOf } from '../../geometry/index.ts';
import { drawProfile } from '../drawing/index.ts';
import type { Made } from '../made.ts';
import { depthText } from '../parts/depth-text.ts';
import { sheetOf } from '../parts/plan-drawing.ts';
import { end, row, start } from '../parts/tables.ts';
import type { TableView, WorkOrderView } from '../views.ts';

/** Each profile of the job: drawn, and its ends and breaks in a table. */
export function profilesView(made: Made): WorkOrderView['profiles'] {
  return made.results.profiles.data.profiles.map((drawn) => ({
    drawing: { heading: drawn.profile.label, drawing: profileDrawing(drawn, made) },
    table: stationsTable(drawn, made),
  }));
}

function profileDrawing(drawn: DrawnProfile, { job, show, words }: Made) {
  const { profile, reaches, stations, figures } = drawn;
  const onSlabs = stations.map(({ letter, alongIn }) => ({
    letter,
    alongIn,
    heightIn: num(thingNamed(figures.stations, letter, 'station').finish),
  }));
  const past = beyondPoints(drawn).map(({ letter, figures: point }) => ({
    letter,
    alongIn: num(point.along),
    heightIn: num(point.height),
    slope: num(point.slope),
  }));
  const beyond = past.length === 0 ? [] : [...onSlabs.slice(-1), ...past];
  return drawProfile({
    id: `profile-${profile.id}`,
    title: profile.label,
    reaches: reaches.map(({ slab, pieces, old }) => ({
      top: pieces,
      thicknessIn: slab.slab.thicknessIn,
      baseIn: slab.slab.baseIn,
      old,
    })),
    beyond,
    stations: [...onSlabs, ...past].map(({ letter, alongIn, heightIn }) => ({
      letter: words.common.drawing.station(letter.toUpperCase() as PublicText),
      alongIn,
      heightIn,
    })),
    slopes: [
      ...reaches.flatMap(({ pieces }) =>
        pieces.map((piece) => ({
          text: show.slope(Math.abs(climbOf(piece))),
          fromIn: piece.fromIn,
          toIn: piece.toIn,
        })),
      ),
      ...past.map(({ slope, alongIn }, index) => ({
        text: show.slope(slope),
        fromIn: beyond[index]?.alongIn ?? alongIn,
        toIn: alongIn,
      })),
    ],
    sheet: sheetOf(job.company.paper),
    system: job.unitSystem,
    words: { ...words.common.drawing, lengthOf: show.length, heightOf: show.height },
  });
}

function stationsTable({ profile, reaches, stations, figures }: DrawnProfile, made: Made): TableView {
  const { show, words } = made;
  const say = words.workOrder.profiles;
  const { digs } = words.workOrder.grades;
  return {
    caption: say.caption(profile.label),
    columns: [
      start(say.point),
      end(say.along),
      end(digs.existing),
      end(digs.finish),
      end(digs.slabBottom),
      end(digs.baseBottom),
      end(digs.dig),
    ],
    rows: [
      ...reaches.flatMap(({ slab, letters, pieces }) =>
        letters.map((letter, index) => {
          const place = thingNamed(figures.stations, letter, 'station');
          const { along, existing, finish, dig, fill } = place;
          const heights = [existing, finish, place['slab-bottom'], place['base-bottom']];
          const piece = pieces[index];
          return {
            ...row(
              say.at(letter.toUpperCase(), slab.slab.label),
              show.length(num(along)),
              ...heights.map((height) => (height === undefined ? '' : show.height(num(height)))),
              dig === undefined || fill === undefined
                ? ''
                : depthText({ digIn: num(dig), fillIn: num(fill) }, show, digs),
            ),
            note: piece === undefined ? null : stretchNote([letter, letters[index + 1] ?? ''], piece, made),
          };
        }),
      ),
      ...beyondRows({ profile, stations, figures }, made),
    ],
  };
}

/** The points past the last slab, lettered on from its stations. */
function beyondPoints({
  profile,
  stations,
  figures,
}: Pick<DrawnProfile, 'profile' | 'stations' | 'figures'>) {
  return Object.values(figures.beyond ?? {}).map((point, index) => ({
    label: profile.beyond[index]?.label ?? '',
    letter: stationLetter(stations.length + index),
    figures: point,
  }));
}

/** A change of slope of less is not felt in a car: TxDOT Roadway Design Manual, driveway profiles (seen). */
const FELT = 0.03;

/** Past the last slab: how it goes on, and how much the slope changes there. */
function beyondRows(
  drawn: Pick<DrawnProfile, 'profile' | 'stations' | 'figures'>,
  { show, words }: Made,
): TableView['rows'] {
  const say = words.workOrder.profiles;
  const points = beyondPoints(drawn);
  const last = Object.values(drawn.figures.stations).at(-1);
  const heights = [
    ...(last === undefined ? [] : [last.finish]),
    ...points.map(({ figures }) => figures.height),
  ];
  const names = [say.lastEdge, ...points.map(({ label }) => label)];
  const letters = [drawn.stations.at(-1)?.letter ?? '', ...points.map(({ letter }) => letter)];
  return points.map(({ label, letter, figures: { along, height, slope, crest, sag } }, index) => {
    const from = names[index] ?? '';
    const before = heights[index] ?? height;
    const ends = [letters[index] ?? '', letter].map((one) => one.toUpperCase());
    const run = slopeNote([ends[0] ?? '', ends[1] ?? ''], num(height) - num(before), num(slope), {
      show,
      words,
    });
    const felt = [
      ...(crest !== undefined && num(crest) > FELT ? [say.crest(from, show.percent(num(crest)))] : []),
      ...(sag !== undefined && num(sag) > FELT ? [say.sag(from, show.percent(num(sag)))] : []),
    ];
    return {
      ...row(
        say.at(letter.toUpperCase(), label),
        show.length(num(along)),
        show.height(num(height)),
        '',
        '',
        '',
        '',
      ),
      note: [run, ...felt].join(' '),
    };
  });
}

function stretchNote(
  [from, to]: readonly [string, string],
  piece: DrawnProfile['reaches'][number]['pieces'][number],
  made: Pick<Made, 'show' | 'words'>,
): string {
  const climb = climbOf(piece);
  return slopeNote([from.toUpperCase(), to.toUpperCase()], climb, Math.abs(climb), made);
}

/** @param up Above 0 where it climbs from the one to the other. */
function slopeNote(
  [from, to]: readonly [string, string],
  up: number,
  slope: number,
  { show, words }: Pick<Made, 'show' | 'words'>,
): string {
  const { level, falls, climbs } = words.workOrder.profiles;
  const shown = show.slope(slope);
  if (shown === show.slope(0)) return level(from, to);
  return (up < 0 ? falls : climbs)(from, to, shown);
}
