import type { PublicText } from '../../problems/text.ts';
import { homeowner as h } from '../homeowner.ts';

type P = PublicText;

/** Public walks in the homeowner proposal: what can be done, what it comes to, and who decides. */
export const proposalTieIns = {
  heading: (walk: P) => h`Where the new concrete meets the public walk: ${walk}`,
  settled: (left: P, right: P) =>
    h`At its left end, seen from the walk, it lies ${left}; at its right end ${right}.`,
  low: (size: P) => h`${size} lower than it should`,
  high: (size: P) => h`${size} higher than it should`,
  right: h`as it should`,
  ground: (authority: P) =>
    h`The walk is public ground. ${authority} decides about it, and without its word nothing is laid on it, ground or taken out.`,
  word: (word: P) => h`Its word: ${word}.`,
  noWord: h`Its word is not there yet.`,
  bevel: (slope: P) =>
    h`We do not even it out with a wedge on the walk: over the whole width it would slope ${slope} to the side for everybody on foot.`,
  chosen: (way: P) => h`Chosen: ${way}.`,
  open: h`Nothing is chosen yet. Tick one with us before work starts.`,
  table: {
    caption: (walk: P) => h`What can be done: ${walk}`,
    way: h`Way`,
    means: h`What it means`,
    decides: h`Who decides`,
    choice: h`Choice`,
    chosen: h`chosen`,
    not: h`not chosen`,
  },
  you: h`You`,
  both: (authority: P) => h`${authority}, with you`,
  names: {
    match: h`Meet it as it is`,
    transition: h`Come down to it on your side`,
    replace: h`Have the public panel replaced`,
    grind: h`Have the public walk ground`,
    'hold-back': h`Hold the last panel back`,
    'leave-edge': h`Leave an edge`,
  },
  slopes: (left: P, right: P) =>
    left === right ? h`it ${left}` : h`it ${left} at the left and ${right} at the right`,
  falls: (slope: P) => h`falls ${slope}`,
  rises: (slope: P) => h`rises ${slope}`,
  level: h`is level`,
  means: {
    match: (slopes: P, lip: P) =>
      h`The slab ends level with the walk as it is; ${slopes}. If the walk is set right one day, an edge of up to ${lip} stands there.`,
    transition: (left: P, right: P, slope: P) =>
      h`The last ${left} at the left and ${right} at the right of your slab lead to the walk at ${slope}. If the walk is set right one day, only that part is made anew.`,
    noTransition: (slope: P) => h`Does not work here: at ${slope} the slab never meets the walk.`,
    replace: (slopes: P) => h`The slab ends where the walk should be; ${slopes}. No edge is left.`,
    grind: (slopes: P, lip: P, bevel: P) =>
      h`The slab ends where the walk should be; ${slopes}. Up to ${lip} is ground off the walk, which then slopes ${bevel} to the side.`,
    holdBack: (panel: P, area: P) =>
      h`The slab ends ${panel} before the walk, and compacted stone lies there. Once the walk is set right we come back and pour the last ${area}.`,
    leaveEdge: (lip: P) =>
      h`The slab ends where the walk should be, and an edge of up to ${lip} stays until the walk is set right. It is barricaded and photographed.`,
  },
  two: (one: P, other: P) => h`${one} ${other}`,
  cost: (price: P, share: P, own: P) =>
    h`It costs ${price}, as the authority says; your part is ${share}, ${own}. It is not in our price.`,
  noCost: h`What it costs and what part of it is yours, the authority says; it is not in our price.`,
  edge: {
    heading: (walk: P) => h`The edge that is left: ${walk}`,
    sentence: (lip: P) =>
      h`I know that an edge of up to ${lip} is left at the public walk, that people can trip over it, that it is barricaded and photographed, and that the authority has to be asked. I want it so until the walk is set right.`,
  },
} as const;
