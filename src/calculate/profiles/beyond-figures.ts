import { climbOf } from '../../geometry/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Profile } from '../job.ts';
import type { ProfileRun } from './profile-run.ts';

/** A point past the last slab of a profile. */
export type BeyondFigures = {
  /** From the start of the profile [in]. */
  readonly along: Figure;
  /** Above the datum [in]. */
  readonly height: Figure;
  /** How much it falls or climbs from the point before [rise over run]. */
  readonly slope: Figure;
  /** How much the slope changes at the point before: over a crest, or in a dip; only where cars drive. */
  readonly crest?: Figure;
  readonly sag?: Figure;
};

type Ends = { readonly along: Figure; readonly height: Figure };

/**
 * Where a profile goes on past its last slab. A change of slope is the climb after a point less the climb before
 * it: above 0 it is a dip, below 0 a crest.
 *
 * Source: definition of a grade break, as roadway design manuals have it.
 *
 * @param last Where the last slab ends, and where its last part begins.
 */
export function beyondFigures(
  { id, beyond }: Profile,
  { reaches }: ProfileRun,
  last: readonly [Ends, Ends],
): Readonly<Record<string, BeyondFigures>> {
  const reach = reaches.at(-1);
  const piece = reach?.pieces.at(-1);
  if (reach === undefined || piece === undefined) return {};
  const isDriven = reach.slab.slab.use === 'driveway';
  let [before, here] = last;
  let climbBefore = climbOf(piece);
  const found: [string, BeyondFigures][] = [];
  for (const [index, { awayIn, heightIn }] of beyond.entries()) {
    const path = `heights.profiles.${id}.beyond.${index}`;
    const height = given(`${path}.height`, heightIn, 'in');
    const away = given(`${path}.away`, awayIn, 'in');
    const climb = (heightIn - num(here.height)) / awayIn;
    const breakRatio = climb - climbBefore;
    const inputs = {
      nextIn: height,
      hereIn: here.height,
      beforeIn: before.height,
      awayIn: away,
      endIn: here.along,
      startIn: before.along,
    };
    const after = '(nextIn - hereIn) / awayIn';
    const earlier = '(hereIn - beforeIn) / (endIn - startIn)';
    const ends: Ends = {
      along: figure({
        value: num(here.along) + awayIn,
        unit: 'in',
        decimals: 2,
        formula: 'endIn + awayIn',
        inputs: { endIn: here.along, awayIn: away },
      }),
      height: figure({
        value: heightIn,
        unit: 'in',
        decimals: 2,
        formula: 'heightIn',
        inputs: { heightIn: height },
      }),
    };
    found.push([
      `point-${index + 1}`,
      {
        ...ends,
        slope: ratio(Math.abs(climb), 'max(nextIn - hereIn, hereIn - nextIn) / awayIn', {
          nextIn: height,
          hereIn: here.height,
          awayIn: away,
        }),
        ...(isDriven && breakRatio < 0 ? { crest: ratio(-breakRatio, `${earlier} - ${after}`, inputs) } : {}),
        ...(isDriven && breakRatio > 0 ? { sag: ratio(breakRatio, `${after} - ${earlier}`, inputs) } : {}),
      },
    ]);
    [before, here] = [here, ends];
    climbBefore = climb;
  }
  return Object.fromEntries(found);
}

function ratio(value: number, formula: string, inputs: Parameters<typeof figure>[0]['inputs']): Figure {
  return figure({ value, unit: 'ratio', decimals: 4, formula, inputs });
}
