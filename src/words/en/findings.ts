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
  both: (one: string, other: string) => `${one} and ${other}`,
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
    'panel-over-spacing': () => 'A panel is longer than the joint spacing allows for this thickness and mix.',
    'panel-corner-sharp': () =>
      'A panel has a sharp corner that may break off: blunt the corner of the slab, or move the joint there.',
    'corner-without-joint': () => 'A corner that turns into the slab has no joint; a crack starts there.',
    'dowels-in-thin-slab': () => 'Dowels are a lot for so thin a slab: a plain butt joint does for less.',
    'key-in-thin-slab': () => 'A key in so thin a slab breaks off.',
    'lap-on-joint': () => 'A lap of bars lies on a joint line, since the stock leaves it no other place.',
    'steel-cover-small': () => 'Little concrete covers the steel; it rusts and the top comes off.',
    'panel-large': () => 'Joints stand further apart than any thickness allows.',
    'mix-weak-for-exposure': () => 'The mix is weaker than the published minimum for this exposure.',
    'air-low-for-freezing': () => 'The mix has little air for concrete that freezes.',
    'air-low-for-stone': () => 'The mix has little air for this size of stone where it freezes.',
    'air-high-for-stone': () => 'The mix has more air than this size of stone asks for.',
    'water-cement-high': () => 'The mix has more water to its cement than is published for this exposure.',
    'fly-ash-high': () => 'There is more fly ash than concrete takes where salt is spread.',
    'slag-high': () => 'There is more slag than concrete takes where salt is spread.',
    'slump-by-water': () => 'So much slump by water alone weakens the face; ask for a water reducer.',
    'chloride-on-steel': () =>
      'Calcium chloride rusts the steel in this concrete; take an accelerator without it.',
    'stone-large': () => 'The largest stone is large for the thickness of the slab.',
    'probed-shallow': () => 'The base was probed high: the slab would be thinner than it should be.',
    'discharge-late': () =>
      'At the pace of this crew a load is not out before its limit; say how it goes faster.',
    'placing-out-of-reach': () =>
      'Nothing of what the company has gets concrete there; look for another way or another place for the truck.',
    'form-board-low': () => 'The form board is lower than the slab is thick.',
    'form-strip-low': () => 'The strip of the curves is lower than the slab is thick.',
    'form-strip-breaks': () =>
      'The curve is tighter than its strip bends dry; take a thinner strip or wet it.',
    'curve-without-strip': () => 'No strip is named for a curve, so boards are sawn to bend.',
    'pour-before-ready': () =>
      'The day chosen for the pour comes before base and forms are done; it is planned for the first day after.',
    'pour-over-a-day': () => 'The pour does not fit in one day with this crew.',
    'area-large-for-finishers': () => 'There is more area than these finishers finish in one pour.',
    'pour-not-divided': () =>
      'Not even divided at its joints is each pour small enough for these finishers: a joint of your own across the slab, or more of them.',
    'crew-short-of-people': () => 'A task asks for more people than this crew has.',
    'flight-uneven': () =>
      'With the new surface at its foot, the risers of this flight differ more than feet expect.',
    'flight-riser-high': () => 'With the new surface at its foot, a riser of this flight is high.',
    'steps-riser-high': () => 'The steps are higher than feet like, and than a model code allows.',
    'steps-uneven': () => 'The lowest step differs more from the others than feet expect.',
    'steps-tread-short': () => 'The treads are short for a foot.',
    'steps-tread-slopes': () => 'The treads slope so much that a foot may slip.',
    'steps-narrow': () => 'The steps are narrow.',
    'steps-landing-short': () => 'The landing is short to stand on and open a door.',
    'steps-handrail': () => 'So many steps need a handrail; say who puts it up.',
    'steps-long': () => 'So many steps in one flight need a landing between.',
    'steps-guard': () => 'The steps rise so high that a guard may be needed beside them.',
    'steps-stride-short': () => 'The stride of the steps is short.',
    'wall-covered': () => 'The surface covers this part of the wall, by the figure here.',
    'wall-close': () =>
      'The surface comes nearer to this part of the wall than it should, by the figure here.',
    'load-near-payload': () => 'A load comes near to what the trailer may carry; weigh the first one.',
    'fabric-laps-little': () =>
      'The fabric under the base laps little and may open where the ground is soft.',
    'licence-group-a': () =>
      "Truck and trailer are rated so high together that they may take a Group A commercial licence; ask your state's authority.",
    'licence-group-b': () =>
      "The truck alone is rated so high that it may take a Group B commercial licence; ask your state's authority.",
    'arcs-meet-with-kink': () => 'An arc does not run smoothly into its neighbour.',
    'walk-pinched': () => 'The walk is narrower at its turn than along it.',
    'levels-not-closed': () =>
      'Level notes do not all end on a known height, so nothing shows a slip of the rod.',
    'public-walk-undecided': () =>
      'Nobody has chosen what is done where the slab meets the public walk; decide before forms are set.',
    'public-walk-without-word': () =>
      'The way that is chosen takes the word of the authority on the public walk, and it is not there.',
    'public-edge-left': () =>
      'An edge is left at the public walk: barricade it, have it signed on the proposal, and photograph it.',
    'public-walk-lip-later': () =>
      'Once the public walk is set right, its edge stands above or below the slab.',
    'public-walk-bevel': () =>
      'Ground over its whole width, the public walk slopes more across than feet and wheels like.',
    'pipe-in-slab': () => 'This pipe reaches up into the concrete, which cracks along it.',
    'drain-without-outlet': () => 'Nothing leads the water off that runs into this drain.',
    'drain-pipe-flat': () => 'The pipe of this drain falls less than a published code asks of its size.',
    'garage-lip-none': () =>
      'The slab comes up level with the garage floor or nearly so: water that drives against the door finds no step.',
    'garage-lip-high': () =>
      'The slab stays so far below the garage floor that wheels and feet meet an edge.',
    'garage-seal-on-joint': () => 'The seal of the door closes on the joint, and water gets in under it.',
    'water-to-kept-dry': () =>
      'Water of this slab runs to a line that is to stay dry: turn its fall, or lay a drain before the line.',
    'crest-for-cars': () => 'The slope changes so much over a crest that a car may sit on it.',
    'sag-for-cars': () => 'The slope changes so much in a dip that a car may scrape front or back.',
    'water-to-house': () => 'Water runs towards the house, and no drain with an outlet lies between.',
    'house-fall-flat': () => 'Near the house the surface falls away from it too little.',
    'house-fall-small': () => 'Near the house the surface falls away from it less than is good.',
    'surface-flat': () => 'By its heights a part of the slab is nearly flat; water will stand on it.',
    'drive-steep': () => 'By its heights the drive is steep for cars, most of all on ice.',
    'walk-steep': () => 'By its heights the walk is as steep as a ramp.',
    'patio-steep': () => 'By its heights the patio is steep for tables and chairs.',
    'walk-falls-across': () => 'By its heights the walk falls across so much that feet feel it.',
    'public-way-across': () => 'By its heights it falls across more than a public way may.',
    'public-way-along': () => 'By its heights it runs steeper than a public way may without being a ramp.',
    'break-in-drive': () => 'The slope of the drive changes so much at once that a car may scrape.',
    'water-stands': () => 'Water finds no way out of a low place, unless a drain stands there.',
    'fall-and-heights-differ': () => 'The fall that is stated is not the one of the heights.',
    'fall-runs-elsewhere': () => 'By its heights the slab falls another way than is stated.',
    'lip-between-slabs': () => 'One slab stands above its neighbour where they meet.',
    'break-between-slabs': () => 'Where two slabs meet the slope changes so much that a car may scrape.',
    'walk-closes-badly': () => 'The tape round this shape closes badly; tape it once more.',
    'forecast-of-another-day': () => 'The forecast is for another day than the pour.',
    'evaporation-high': () =>
      'Water leaves the fresh face so fast that it may crack: windbreak, fog, evaporation retarder, or another hour.',
    'concrete-hot': () =>
      'The concrete comes hotter than it may: chilled water or ice at the plant, or an earlier hour.',
    'concrete-cold': () =>
      'The concrete comes too cold for this air, by the figure here: hot water at the plant.',
    'air-cold': () =>
      'It is cold weather: blankets on site, warm concrete, no frost in the slab for two days.',
    'base-may-be-frozen': () =>
      'The night is below freezing: the base may be frozen, and concrete never goes on frost.',
    'base-may-be-wet': () => 'It rained before the pour: puddles out, and the base proved firm.',
    'rain-likely': () => 'Rain is likely before the concrete has set.',
    'wind-strong': () => 'The wind is so strong that sheeting is hard to hold and the face dries fast.',
    'work-in-the-dark': () => 'Part of the work is in the dark: another hour, or lamps.',
    'early-saw-window-closed': () =>
      'The joints of the early-entry saw have to be cut at a time when no saw may run: start earlier, or tool them.',
    'saw-window-closed': () =>
      'The joints have to be cut at a time when no saw may run: start earlier, take an early-entry saw, or tool the joints.',
    'finishers-short': () => 'All of it cannot be finished before it sets: more finishers, or two pours.',
    'tools-late': () => 'The first concrete sets before the last is placed: more people, or two pours.',
    'curing-film-in-the-way': () =>
      'The curing film will be in the way of what comes on the face later: cure wet or under sheeting, or plan to take the film off.',
    'price-below-cost': () => 'The price does not cover cost and overhead.',
    'deposit-over-one-third': () => 'The first payment is over the cap of this state.',
    'deposit-over-fixed-cap': () => 'The first payment is over the cap of this state.',
    'deposit-over-tenth': () => 'The first payment is over the cap of this state.',
  } satisfies Record<string, Sentence>,
} as const;
