import type { Made } from '../made.ts';
import type { CheckListView } from '../views.ts';
import { fixtureChecks } from './fixtures.ts';
import { publicWalkChecks } from './public-walks-table.ts';
import { whatThereIs } from './what-there-is.ts';

/** Every box before the first concrete: of what this job has, and nothing else. */
export function prePour(made: Made): CheckListView {
  const { heading, items: say } = made.words.crewDays.prePour;
  const has = whatThereIs(made.job, made.results);
  const texts = [
    say.tops,
    say.base,
    ...(has.steel ? [say.steel] : []),
    ...(has.softStrip ? [say.strip] : []),
    ...(has.house ? [say.sheeted] : []),
    has.sawnJoints ? say.saw : say.power,
    say.washout,
    say.way,
    has.bags ? say.bags : say.ticket,
    ...fixtureChecks(made),
    ...publicWalkChecks(made),
  ];
  return { heading, items: texts.map((text) => ({ text, quantity: null, isHold: false })) };
}
