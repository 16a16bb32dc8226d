import { num } from '../../calculate/figure.ts';
import type { PublicWalk } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { FallFigures, PublicWalkFigures, WalkEndFigures } from '../../calculate/tie-ins/index.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView } from '../views.ts';

type Row = TableView['rows'][number];

const ENDS = ['left', 'right'] as const;

/** Both ends of each joint with a public walk, and what to do there; null where there is none. */
export function publicWalksTable(made: Made): TableView | null {
  const say = made.words.tieIns.publicWalks;
  return tableOrNull(
    say.caption,
    [
      start(say.walk),
      start(say.end),
      end(say.now),
      end(say.should),
      end(say.apart),
      end(say.build),
      start(say.slope),
    ],
    Object.values(made.job.tieIns.publicWalks).flatMap((walk) => walkRows(walk, made)),
  );
}

/** What the pre-pour page asks at each public walk. */
export function publicWalkChecks({ job, words }: Made): readonly string[] {
  const say = words.tieIns.publicWalks;
  return Object.values(job.tieIns.publicWalks).flatMap(({ label, way }) => [
    say.prePour(label),
    ...(way === 'leave-edge' ? [say.prePourEdge(label)] : []),
  ]);
}

function walkRows(walk: PublicWalk, made: Made): readonly Row[] {
  const { results, show, words } = made;
  const say = words.tieIns.publicWalks;
  const figures = thingNamed(results.tieIns.figures['public-walks'] ?? {}, walk.id, 'public walk');
  const rows = ENDS.map((side) => {
    const met = figures.ends[side];
    return row(
      walk.label,
      say.ends[side],
      show.height(num(met.now)),
      show.height(num(met.should)),
      show.fine(num(met.lip)),
      buildText(walk, met, show, say),
      slopeText(fallOfWay(walk, met), show, say),
    );
  });
  const last = rows.length - 1;
  return rows.map((one, index) => (index === last ? { ...one, note: noteOf(walk, figures, made) } : one));
}

type Say = Words['tieIns']['publicWalks'];

/** How high the slab ends; before its last panel where that is held back. */
function buildText({ way }: PublicWalk, figures: WalkEndFigures, show: Show, say: Say): string {
  if (way === null) return say.notYet;
  const { 'panel-start': panelStart } = figures;
  if (way === 'hold-back' && panelStart !== undefined) return say.held(show.height(num(panelStart)));
  const isAsItIs = way === 'match' || way === 'transition';
  return show.height(num(isAsItIs ? figures.now : figures.should));
}

function fallOfWay({ way }: PublicWalk, figures: WalkEndFigures): FallFigures {
  return way === null || way === 'match' ? figures['as-it-is'] : figures['as-it-should-be'];
}

function slopeText(fall: FallFigures, show: Show, say: Say): string {
  const size = show.slope(num('falls' in fall ? fall.falls : fall.rises));
  if (size === show.slope(0)) return say.level;
  return 'falls' in fall ? say.falls(size) : say.rises(size);
}

function noteOf(walk: PublicWalk, figures: PublicWalkFigures, made: Made): string {
  const say = made.words.tieIns.publicWalks;
  const isOwn = walk.way === null || walk.way === 'match' || walk.way === 'transition';
  const told = walk.word === null ? null : say.word(walk.authority, walk.word);
  return [
    wayText(walk, figures, made),
    told ?? (isOwn ? say.own(walk.authority) : say.noWord(walk.authority)),
  ].join(' ');
}

function wayText(walk: PublicWalk, figures: PublicWalkFigures, { show, words }: Made): string {
  const say = words.tieIns.publicWalks;
  const most = show.fineUp(num(figures['most-lip']));
  switch (walk.way) {
    case null:
      return say.undecided;
    case 'match':
      return say.ways.match;
    case 'replace':
      return say.ways.replace;
    case 'transition': {
      const { left, right } = figures.ends;
      return say.ways.transition({
        left: show.length(num(left.transition ?? left.run)),
        leftHeight: show.height(num(left['transition-start'] ?? left.should)),
        right: show.length(num(right.transition ?? right.run)),
        rightHeight: show.height(num(right['transition-start'] ?? right.should)),
        slope: show.slope(walk.transitionSlope),
      });
    }
    case 'grind':
      return say.ways.grind(most, show.slope(num(figures.bevel)));
    case 'hold-back':
      return say.ways['hold-back'](show.length(walk.lastPanelIn), show.area(num(figures['panel-area'])));
    case 'leave-edge':
      return say.ways['leave-edge'](most);
  }
}
