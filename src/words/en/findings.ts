type Sentence = (parts: { readonly value: string; readonly limit: string }) => string;

/** Findings: the word for the severity and one sentence a rule, by its code. */
export const findings = {
  severities: { stop: 'Stop', fix: 'Fix', note: 'Note' },
  limitAtMost: (limit: string, value: string) => `At most ${limit}; here ${value}.`,
  limitAtLeast: (limit: string, value: string) => `At least ${limit}; here ${value}.`,
  fromMemory: (source: string) => `${source} (from memory)`,
  acknowledged: (reason: string) => `Accepted: ${reason}`,
  wholeJob: 'The job',
  turn: (number: string) => `turn ${number}`,
  point: (number: string) => `point ${number}`,
  curve: (number: string) => `curve ${number}`,
  other: (({ value, limit }) =>
    `A company rule: the figure is ${value}, its limit ${limit}.`) satisfies Sentence,
  /** By rule code; a rule of the company's own takes `other`. */
  sentences: {
    'slab-thin': () => 'The slab is thinner than slabs on ground usually are.',
    'slab-thin-for-cars': () => 'The slab is thin for a driveway.',
    'base-thin-for-cars': () => 'The base is thin for a driveway.',
    'fall-flat': () => 'The slab is nearly flat; water will stand on it.',
    'walk-slopes-across': () => 'The walk slopes more across than feet and wheels like.',
    'panel-long': () => 'A panel is long for its width and may crack across.',
    'panel-large': () => 'Joints stand further apart than any thickness allows.',
    'mix-weak-for-exposure': () => 'The mix is weaker than the published minimum for this exposure.',
    'air-low-for-freezing': () => 'The mix has little air for concrete that freezes.',
    'form-board-low': () => 'The form board is lower than the slab is thick.',
    'form-strip-low': () => 'The strip of the curves is lower than the slab is thick.',
    'form-strip-breaks': () =>
      'The curve is tighter than its strip bends dry; take a thinner strip or wet it.',
    'curve-without-strip': () => 'No strip is named for a curve, so boards are sawn to bend.',
    'pour-over-a-day': () => 'The pour does not fit in one day with this crew.',
    'area-large-for-finishers': () => 'There is more area than these finishers finish in one pour.',
    'crew-short-of-people': () => 'A task asks for more people than this crew has.',
    'load-near-payload': () => 'A load comes near to what the trailer may carry; weigh the first one.',
    'licence-group-a': () =>
      "Truck and trailer are rated so high together that they may take a Group A commercial licence; ask your state's authority.",
    'licence-group-b': () =>
      "The truck alone is rated so high that it may take a Group B commercial licence; ask your state's authority.",
    'arcs-meet-with-kink': () => 'An arc does not run smoothly into its neighbour.',
    'walk-pinched': () => 'The walk is narrower at its turn than along it.',
    'walk-closes-badly': () => 'The tape round this shape closes badly; tape it once more.',
    'price-below-cost': () => 'The price does not cover cost and overhead.',
    'deposit-over-one-third': () => 'The first payment is over the cap of this state.',
    'deposit-over-fixed-cap': () => 'The first payment is over the cap of this state.',
    'deposit-over-tenth': () => 'The first payment is over the cap of this state.',
  } satisfies Record<string, Sentence>,
} as const;
