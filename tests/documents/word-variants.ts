import type { Trees } from '../support/trees.ts';

type Edit = readonly [of: keyof Trees, path: string, text: string];

/** A part of the full job once more for each, so that words which stand for a choice or a finding come up. */
export const VARIANTS: readonly (readonly Edit[])[] = [
  // The pour before its forms stand, on a way that only a pump goes; an edge without a taper.
  [
    ['job', 'plan.pours-on', '2026-05-07'],
    ['job', 'site.access.way-slope', '30 %'],
    ['job', 'build.slabs.drive.thickened-edges.3.taper', '0 in'],
    ['job', 'build.slabs.terrace.probed-depth', '3 1/2 in'],
  ],
  [
    ['job', 'site.access.way-slope', '12 %'],
    ['job', 'build.mix.air', '2 %'],
    ['job', 'build.mix.water-cement', '0.5'],
    ['job', 'build.mix.fly-ash', '30 %'],
    ['job', 'build.mix.slag', '55 %'],
    ['job', 'build.mix.additives.0', 'accelerator'],
    ['job', 'build.mix.slump', '6 in'],
    ['job', 'build.mix.aggregate', '2 in'],
    ['company', 'suppliers.concrete.on-the-way', '90 min'],
  ],
  [
    ['job', 'site.access.way-slope', '12 %'],
    ['company', 'placing.pump.reach', '10 ft'],
    ['company', 'placing.buggy.steepest', '10 %'],
  ],
  [
    ['company', 'suppliers.concrete.short-load-below', '5.5 yd3'],
    ['company', 'suppliers.concrete.short-load-fee', '$900'],
  ],
  [['job', 'build.mix.air', '9 %']],
  [['job', 'build.mix.exposure', 'no-freezing']],
  [['job', 'build.mix.exposure', 'freezing']],
  [['job', 'build.slabs.drive.base', '0 in']],
  [
    ['company', 'suppliers.base.delivery', '$0'],
    ['job', 'heights.public-walks.town-walk.way', 'match'],
    ['job', 'heights.public-walks.town-walk.transition', '1/16 in per ft'],
    ['job', 'heights.garages.garage.lip', '0 in'],
    ['job', 'heights.garages.garage.seal', '0 in'],
    ['job', 'heights.keep-dry.lot-line.kind', 'building'],
    ['job', 'heights.profiles.drive-middle.beyond.0.height', '102 ft'],
  ],
  [
    ['company', 'trailers.big-box.axle-rating', '5,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['job', 'heights.public-walks.town-walk.way', 'replace'],
    ['job', 'heights.garages.garage.lip', '1 1/2 in'],
    ['job', 'heights.keep-dry.lot-line.kind', 'window-well'],
    ['job', 'heights.drains.channel.pipe.length', '60 ft'],
    ['job', 'heights.lids.cleanout.kind', 'lid'],
    ['job', 'heights.lids.valve.kind', 'meter-box'],
    // As high as the surface there.
    ['job', 'heights.lids.valve.height', '100.91 ft'],
    ['job', 'site.under-slab.roof-water.kind', 'irrigation'],
    ['job', 'site.under-slab.lamp.kind', 'wires'],
    ['job', 'site.under-slab.lamp.depth', '4 in'],
  ],
  [
    ['company', 'tow-vehicle.tow-rating', '6,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['company', 'tow-vehicle.gross-rating', '26,001 lb'],
  ],
  [
    ['company', 'tow-vehicle.combined-rating', '14,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['job', 'heights.public-walks.town-walk.way', 'grind'],
    ['job', 'build.slabs.drive.fall.slope', '4.4 %'],
    ['job', 'heights.public-walks.town-walk.left.should', '99.9 ft'],
    ['job', 'heights.public-walks.town-walk.right.should', '99.9 ft'],
  ],
  [
    ['company', 'tow-vehicle.carries', '4,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['job', 'heights.public-walks.town-walk.way', 'leave-edge'],
  ],
  [
    ['company', 'tow-vehicle.hitch-rating', '900 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
  ],
  [['company', 'suppliers.concrete.short-load-below', '8 yd3']],
  [['company', 'machines.skid.kind', 'jackhammer']],
  [
    ['company', 'machines.skid.wet', 'no'],
    ['company', 'machines.skid.kind', 'jackhammer'],
  ],
  ['base', 'finish', 'cure', 'backfill'].map(
    (task): Edit => ['company', `production.${task}.machine`, 'skid'],
  ),
  ...['working', 'done', 'paid'].map((stage): readonly Edit[] => [['job', 'job.stage', stage]]),
  // Nothing but what is acknowledged.
  [
    ['job', 'build.slabs.drive.thickness', '5 in'],
    ['job', 'build.slabs.walk.fall.slope', '1/4 in per ft'],
    ['company', 'production.finish.people', '3'],
    ['company', 'rules.pour-over-a-day.limit', '9 days'],
    ['company', 'rules.load-near-payload.limit', '100 %'],
    ['company', 'rules.licence-group-a.limit', '14,000 lb'],
    ['company', 'rules.levels-not-closed.limit', '1 each'],
  ],
  [['job', 'build.slabs.drive.thickness', '3 in']],
  [['job', 'build.slabs.drive.base', '3 in']],
  [['job', 'build.slabs.pad.fall.slope', '1/16 in per ft']],
  [
    ['job', 'build.slabs.drive.joint-spacing', '40 ft'],
    ['job', 'build.slabs.drive.rectangle.length', '20 ft'],
    ['job', 'build.slabs.drive.fall.slope', '4 %'],
    ['job', 'heights.points.curb-left.at.0', '20 ft'],
    ['job', 'heights.points.curb-right.at.0', '20 ft'],
    ['job', 'build.slabs.drive.joints.lines.gate.from.0', '15 ft'],
    ['job', 'build.slabs.drive.joints.lines.gate.to.0', '15 ft'],
  ],
  // And the drive falls to the house, the pad is steep, the play place has a hollow, and the ramp lies beside
  // the yard, higher and steeper.
  [
    ['job', 'build.mix.strength', '3000 psi'],
    ['job', 'heights.points.drive-end.height', '101.6 ft'],
    ['job', 'build.steps.door-steps.landing', '3 ft'],
    ['job', 'heights.points.pad-3.height', '100.5 ft'],
    ['job', 'heights.points.plot-middle.height', '101 ft'],
    ['job', 'build.slabs.yard.label', 'Yard'],
    ['job', 'build.slabs.ramp.at.0', '54 ft'],
    ['job', 'heights.points.ramp-1.at.0', '55 ft'],
    ['job', 'heights.points.ramp-2.at.0', '55 ft'],
    ['job', 'heights.points.ramp-3.at.0', '62 ft'],
    ['job', 'heights.points.ramp-3.height', '100 ft'],
  ],
  // And the drive hardly falls at all.
  [
    ['job', 'build.mix.air', '3 %'],
    ['job', 'heights.points.drive-end.height', '101.15 ft'],
  ],
  [
    ['company', 'production.place.pace', '0.5 yd3 per h'],
    ['company', 'production.break-out.pace', '5 sq ft per h'],
  ],
  [['company', 'production.finish.people', '1']],
  [['company', 'production.form.people', '7']],
  [
    ['company', 'pricing.payments.0.share', '45 %'],
    ['company', 'pricing.payments.1.share', '20 %'],
  ],
  [['job', 'plan.drivers', '2']],
  // The loader is slower than two trucks, or than one that swaps its trailers.
  [
    ['job', 'plan.drivers', '2'],
    ['company', 'loading-time', '3 h'],
  ],
  [['company', 'loading-time', '3 h']],
  [
    ['company', 'places.breaker-yard.base.minimum', '$0.00'],
    ['company', 'suppliers.geotextile.lap', '9 in'],
    ['job', 'build.slabs.drive.curve-form', 'stiff-strip'],
    ['job', 'build.slabs.terrace.rounded-by-chord.2.rise', '5 in'],
    ['job', 'build.slabs.path.strip.line.1.rounded', 'outer'],
    ['job', 'build.slabs.wedge.sides.2.length', '9 ft 2 in'],
    ['company', 'rules.panel-long.limit', '1.1'],
    ['company', 'rules.price-below-cost.limit', '40 %'],
    ['job', 'job.rule-sets.1', 'california'],
  ],
  // Steps with everything that is found in steps, and the others without a landing of their own.
  [
    ['job', 'build.steps.porch-steps.width', '30 in'],
    ['job', 'build.steps.porch-steps.risers', '7'],
    ['job', 'build.steps.porch-steps.riser', '7.8 in'],
    ['job', 'build.steps.porch-steps.tread', '8 in'],
    ['job', 'build.steps.porch-steps.tread-fall', '5/8 in per ft'],
    ['job', 'build.steps.porch-steps.landing', '30 in'],
    ['job', 'build.steps.porch-steps.room', '9 ft'],
  ],
  // A day too hot, windy and wet for it, after a night of frost, and no saw may run when its time is.
  [
    ['job', 'pour.weather.concrete', '97 F'],
    ['job', 'pour.weather.times.0.air', '84 F'],
    ['job', 'pour.weather.times.1.wind', '31 mph'],
    ['job', 'pour.weather.times.1.rain-chance', '60 %'],
    ['job', 'pour.weather.low-before', '30 F'],
    ['job', 'pour.weather.rain-before', '1 in'],
    ['job', 'pour.weather.on', '2026-05-11'],
    ['job', 'pour.noise-allowed.to', '8:00 am'],
    ['company', 'suppliers.concrete.free-cancel', '9 h'],
    ['company', 'production.place.pace', '5 yd3 per h'],
  ],
  // A cold one.
  [
    ['job', 'pour.weather.concrete', '48 F'],
    ['job', 'pour.weather.times.0.air', '37 F'],
    ['job', 'pour.weather.times.1.air', '38 F'],
  ],
  // The saw would run at night; an early-entry saw would not.
  [
    ['job', 'pour.noise-allowed.to', '10:00 pm'],
    ['company', 'production.finish.pace', '400 sq ft per h'],
  ],
  // Cured otherwise, and other things come on the face later.
  [
    ['job', 'pour.curing', 'sheeting'],
    ['job', 'pour.later-coat', 'stain'],
  ],
  [
    ['job', 'pour.curing', 'wet-cover'],
    ['job', 'pour.later-coat', 'overlay'],
  ],
  // A straight of the walk comes out even.
  [['company', 'forms.boards.low-board.length', '10 ft']],
  [['job', 'build.slabs.pad.fall.direction', '180 deg']],
  [['job', 'heights.points.ramp-2.height', '100.9 ft']],
  [['job', 'heights.points.ramp-3.height', '100.4 ft']],
  // A driveway that bends in its middle.
  [
    ['job', 'build.slabs.plot.use', 'driveway'],
    ['job', 'heights.points.plot-middle.height', '101.30 ft'],
  ],
  // Bars of glass fibre with little cover, edges that need another slab, and tendons behind one of them.
  [
    ['job', 'build.slabs.drive.reinforcement.material', 'glass-fibre'],
    ['job', 'build.slabs.drive.reinforcement.corners', 'crossed'],
    ['job', 'build.slabs.drive.reinforcement.cover', '1 in'],
    ['job', 'build.slabs.drive.joints.cut', 'tooled'],
    ['job', 'build.slabs.drive.edge-joints.1.how', 'keyed'],
    ['job', 'build.slabs.drive.thickness', '5 3/4 in'],
    ['job', 'build.slabs.drive.edge-joints.4.how', 'isolated'],
    ['job', 'build.slabs.drive.edge-joints.4.post-tensioned', 'yes'],
  ],
  // Joints that stand askew and far apart, and a corner that turns in without one.
  [
    ['job', 'build.slabs.drive.joints.propose', 'nothing'],
    ['job', 'build.slabs.drive.joints.lines.gate.to.0', '29 ft'],
    ['job', 'build.slabs.walk.joints.propose', 'nothing'],
    ['company', 'rules.area-large-for-finishers.limit', '50 sq ft'],
  ],
  // Pieces of 2, 4, 5, 3 and 4 ft: 18 ft, which no saw gets out of three boards.
  [
    ['company', 'forms.boards.low-board.length', '7 ft'],
    ['company', 'forms.run-past', '0 in'],
  ],
];
