import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { DrawnProfile } from '../../calculate/profiles/index.ts';
import type { PublicText } from '../../calculate/text.ts';
import { climbOf } from '../../geometry/index.ts';
import type { Words } from '../../words/index.ts';
import { drawProfile } from '../drawing/index.ts';
import { depthText } from '../parts/depth-text.ts';
import { sheetOf } from '../parts/plan-drawing.ts';
import { end, row, start } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView, WorkOrderView } from '../views.ts';

type Made = { readonly job: Job; readonly results: JobResults; readonly show: Show; readonly words: Words };

/** Each profile of the job: drawn, and its ends and breaks in a table. */
export function profilesView(made: Made): WorkOrderView['profiles'] {
  return made.results.profiles.data.profiles.map((drawn) => ({
    drawing: { heading: drawn.profile.label, drawing: profileDrawing(drawn, made) },
    table: stationsTable(drawn, made),
  }));
}

function profileDrawing({ profile, reaches, stations, figures }: DrawnProfile, { job, show, words }: Made) {
  return drawProfile({
    id: `profile-${profile.id}`,
    title: profile.label,
    reaches: reaches.map(({ slab, pieces, old }) => ({
      top: pieces,
      thicknessIn: slab.slab.thicknessIn,
      baseIn: slab.slab.baseIn,
      old,
    })),
    stations: stations.map(({ letter, alongIn }) => ({
      letter: words.common.drawing.station(letter.toUpperCase() as PublicText),
      alongIn,
      heightIn: num(thingNamed(figures.stations, letter, 'station').finish),
    })),
    slopes: reaches.flatMap(({ pieces }) =>
      pieces.map((piece) => ({
        text: show.slope(Math.abs(climbOf(piece))),
        fromIn: piece.fromIn,
        toIn: piece.toIn,
      })),
    ),
    sheet: sheetOf(job.company.paper),
    system: job.unitSystem,
    words: { ...words.common.drawing, lengthOf: show.length, heightOf: show.height },
  });
}

function stationsTable({ profile, reaches, figures }: DrawnProfile, made: Made): TableView {
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
    rows: reaches.flatMap(({ slab, letters, pieces }) =>
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
  };
}

function stretchNote(
  ends: readonly [string, string],
  piece: DrawnProfile['reaches'][number]['pieces'][number],
  { show, words }: Made,
): string {
  const { level, falls, climbs } = words.workOrder.profiles;
  const [from, to] = [ends[0].toUpperCase(), ends[1].toUpperCase()];
  const climb = climbOf(piece);
  const slope = show.slope(Math.abs(climb));
  if (slope === show.slope(0)) return level(from, to);
  return (climb < 0 ? falls : climbs)(from, to, slope);
}
