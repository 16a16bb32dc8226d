/** Where new slabs meet what stays, in the crew work order. */
export const tieIns = {
  plan: 'Drains, lids and pipes',
  lids: {
    caption: 'Lids to set to the new height',
    tag: (number: string) => `L${number}`,
    no: 'No.',
    lid: 'Lid',
    kind: 'What',
    kinds: { lid: 'lid', cleanout: 'cleanout', 'valve-box': 'valve box', 'meter-box': 'meter box' },
    where: 'Along, across',
    at: (along: string, across: string) => `${along}, ${across}`,
    old: 'Now',
    new: 'Set to',
    set: 'Change',
    up: (size: string) => `up ${size}`,
    down: (size: string) => `down ${size}`,
    same: 'none',
    prePour: (lid: string, height: string) => `${lid}: set to ${height}, it opens, soft strip round it`,
  },
  pipes: {
    caption: 'Pipes under the slabs: in place before the base is compacted',
    tag: (number: string) => `P${number}`,
    no: 'No.',
    pipe: 'Pipe',
    kind: 'What',
    kinds: { downspout: 'downspout', sleeve: 'empty sleeve', irrigation: 'irrigation', wires: 'wires' },
    where: 'Along, across',
    at: (along: string, across: string) => `${along}, ${across}`,
    to: ' to ',
    size: 'Size',
    depth: 'Under the top',
    below: 'Under the slab',
    inSlab: (size: string) => `${size} in the concrete: ask`,
    prePour: (pipe: string, depth: string) =>
      `${pipe}: in place, ${depth} under the top of the concrete, ends taped shut and marked`,
  },
  publicWalks: {
    caption: 'Where the new slab meets a public walk',
    walk: 'Walk',
    end: 'Seen from it',
    ends: { left: 'Left end', right: 'Right end' },
    now: 'Walk now',
    should: 'Should be',
    apart: 'Apart',
    build: 'Build to',
    slope: 'Slab runs',
    level: 'level',
    falls: (slope: string) => `falls ${slope}`,
    rises: (slope: string) => `rises ${slope}`,
    notYet: 'ask first',
    held: (size: string) => `${size}, ends there`,
    undecided: 'Nobody has chosen what is done here: ask before forms are set.',
    ways: {
      match: 'Meet the walk as it is. Touch nothing of it.',
      transition: (made: {
        readonly left: string;
        readonly leftHeight: string;
        readonly right: string;
        readonly rightHeight: string;
        readonly slope: string;
      }) =>
        `Form straight for where the walk should be, down to ${made.left} before it at the left (${made.leftHeight}) and ${made.right} at the right (${made.rightHeight}); from there lead on at ${made.slope} to the walk as it is. A joint where it bends. Touch nothing of the walk.`,
      replace: 'Form to where the walk should be. The public panel is replaced by whom the authority names.',
      grind: (most: string, bevel: string) =>
        `Form to where the walk should be. The walk is ground, ${most} at the most; over its whole width that slopes ${bevel} across.`,
      'hold-back': (panel: string, area: string) =>
        `Form for where the walk should be, and stop ${panel} before it. The last panel, ${area}, is poured once the walk is set right; until then compacted stone lies there, flush at both ends, and its edge is marked.`,
      'leave-edge': (most: string) =>
        `Form to where the walk should be: an edge of up to ${most} is left. Barricade it, photograph it with the barricade, and do not leave before both are done.`,
    },
    word: (authority: string, word: string) => `${authority}: ${word}.`,
    noWord: (authority: string) =>
      `${authority} has said nothing yet: lay, grind and take out nothing on public ground, and do not pour the last panel.`,
    own: (authority: string) => `${authority} decides about the walk itself: nothing is laid on it.`,
    prePour: (walk: string) =>
      `${walk}: the way that is chosen read again, heights at both ends of the joint shot`,
    prePourEdge: (walk: string) => `${walk}: barricade and lights here, photo taken`,
  },
  garages: {
    caption: 'Where the new slab comes up to a garage floor',
    floor: 'Garage',
    point: 'At',
    floorHeight: 'Floor',
    slabTop: 'Top of the slab',
    lip: 'Below the floor',
    seal: 'Joint to door seal',
    how: 'The joint lies outside the line on which the seal of the door closes. Soft strip in it, as deep as the slab; chip nothing inside that line.',
    prePour: (floor: string, lip: string) =>
      `${floor}: form top ${lip} below it along the whole joint, soft strip in place, door closes`,
  },
  keptDry: {
    caption: 'Where no water may run',
    line: 'Line',
    kind: 'Behind it',
    kinds: { neighbor: 'a neighbor', 'window-well': 'a window well', building: 'a building' },
    slab: 'Slab',
    share: 'Of its area runs there',
    none: 'nothing',
    unknown: 'not known: no heights',
  },
  drains: {
    caption: 'Drains: the rim is the height of the surface there',
    tag: (number: string) => `D${number}`,
    no: 'No.',
    drain: 'Drain',
    where: 'Along, across',
    at: (along: string, across: string) => `${along}, ${across}`,
    to: ' to ',
    rim: 'Rim',
    deep: 'Rim to bottom of pipe',
    pipe: 'Pipe',
    pipeSize: (size: string, length: string) => `${size}, ${length} long`,
    slope: 'Falls',
    noPipe: 'none',
    leads: (to: string, drop: string, least: string) =>
      `Leads to: ${to}. It falls ${drop} in all; at least ${least} is asked of its size. Shoot both ends before the pipe is covered, and run a hose through it.`,
    prePour: (drain: string, rim: string) =>
      `${drain}: rim at ${rim}, grate taped, water runs out at the far end`,
    noOutlet: 'No outlet: ask before anything is formed.',
  },
} as const;
