import { height } from './levels.ts';
import { ABOVE_ZERO, length, money, quantity, share } from './quantities.ts';
import { choice, reference, thing } from './shape.ts';
import { publicText } from './text.ts';

const end = (which: string) =>
  thing('public-walk-end', {
    now: reference('Id of the fixed point on the edge of the public walk, read as it is now.', 'walk-left'),
    should: height(
      'How high the walk should be there: where its neighbours are, or the authority says.',
      '100.30 ft',
      '+1/2 in',
    ),
    up: reference(
      'Id of the point that the slab comes down from at this end: fixed, or a finish height.',
      'garage-left',
    ),
  }).meta({ description: `The ${which} end of the joint with the public walk, seen from the walk.` });

/** A public walk that has settled or heaved where a new slab meets it. */
export const publicWalk = () =>
  thing('public-walk', {
    label: publicText('What it is called on paper.', 'Public walk along the street'),
    slab: reference('Id of the new slab that meets it.', 'drive'),
    left: end('left'),
    right: end('right'),
    width: length({ ...ABOVE_ZERO, most: '30 ft' }, 'From the slab to its far edge.', '5 ft'),
    transition: quantity(
      'slope',
      { above: 0, most: '50 %' },
      'How steep the last of the slab would fall from where the walk should be to where it is.',
      '1 in per ft',
    ),
    'last-panel': length(
      { ...ABOVE_ZERO, most: '50 ft' },
      'How much of the slab would be held back until the walk is set right.',
      '5 ft',
    ),
    way: choice(
      ['match', 'transition', 'replace', 'grind', 'hold-back', 'leave-edge'],
      'What is done: meet the walk as it is; build to where it should be and come down to it on the private side; have the public panel replaced; have it ground; hold the last panel back; or leave an edge. A finding asks for it if not given.',
    ).optional(),
    authority: publicText('Who decides about the public walk.', 'Public works department'),
    word: publicText(
      'What the authority said, with its date and the permit. Nothing is done on public ground without it.',
      'Permit 26-0118 of 2026-03-30, panel to be replaced before the pour',
    ).optional(),
    'panel-price': money(
      'What replacing or grinding the public panel costs, as the authority says.',
      '$1,850',
    ).optional(),
    'owner-share': share(
      { least: '0' },
      'What part of it the homeowner pays; only with panel-price, and needed with it.',
      '50 %',
    ).optional(),
  });
