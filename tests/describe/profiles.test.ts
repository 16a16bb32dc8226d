import { describe, expect, test } from 'vitest';
import { showIn } from '../../src/describe/show/index.ts';
import { profilesView } from '../../src/describe/work-order/profiles.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

describe('the profile of the drive of maple-court', () => {
  const { job, results } = jobNamed(preparedIn(DEMO_JOBS), 'maple-court');
  const [view] = profilesView({ job, results, show: showIn('us'), words: en as Words });

  // By hand, halfway across: the floor 100.61 and 100.55 and the slab 0.03 ft under it, 10 ft out 100.38 and 100.32, the
  // walk 100.10 and 100.04; the old drive 0.08 ft lower at the garage, 0.40 ft down to the walk. 5 in of slab are 0.417 ft,
  // 4 in of base 0.333 ft.
  test('has the heights of its ends and its break, how deep to dig there, and how each part falls', () => {
    expect(view?.table.caption).toBe('Profile: Middle of the drive, garage to public walk');
    expect(view?.table.rows.map(({ cells }) => cells)).toEqual([
      ['A, Driveway', '0″', '100.47 ft', '100.55 ft', '100.13 ft', '99.80 ft', '4″'],
      ['B, Driveway', '10′ 0″', '100.36 ft', '100.35 ft', '99.93 ft', '99.60 ft', '5 1/8″'],
      ['C, Driveway', '36′ 0″', '100.07 ft', '100.07 ft', '99.65 ft', '99.32 ft', '5″'],
      ['D, Far edge of the public walk', '41′ 0″', '100.00 ft', '', '', '', ''],
      ['E, Gutter', '47′ 0″', '99.56 ft', '', '', '', ''],
      ['F, Crown of the street', '61′ 0″', '99.90 ft', '', '', '', ''],
    ]);
    expect(view?.table.rows.map(({ note }) => note)).toEqual([
      'A to B: falls 1/4″ / ft (2.0 %).',
      'B to C: falls 1/8″ / ft (1.1 %).',
      null,
      // The walk falls 0.07 ft over 5 ft, the way to the gutter 0.44 over 6, and the street climbs 0.34 over 14.
      'C to D: falls 3/16″ / ft (1.4 %).',
      'D to E: falls 7/8″ / ft (7.3 %). Far edge of the public walk: the slope changes by 5.9 % over a crest.',
      'E to F: climbs 5/16″ / ft (2.4 %). Gutter: the slope changes by 9.8 % in a dip.',
    ]);
  });

  test('is drawn under the name that its file gets', () => {
    expect(view?.drawing.drawing.id).toBe('profile-drive-middle');
    expect(view?.drawing.heading).toBe('Middle of the drive, garage to public walk');
  });
});
