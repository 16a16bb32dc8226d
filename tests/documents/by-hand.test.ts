import { describe, expect, test } from 'vitest';
import { walkFigures } from '../../src/calculate/figure.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

/*
 * The demo job maple-court by hand: from the figures in its YAML and its company's, and published
 * values, each named where it is used. Nothing here is taken from a run.
 */
const { results } = jobNamed(preparedIn(DEMO_JOBS), 'maple-court');
const figures = new Map(
  Object.entries(results.figures)
    .flatMap(([topic, tree]) => walkFigures(tree, topic))
    .map(({ id, figure }) => [id, figure]),
);

/** @throws {RangeError} If the job has no such figure. */
function valueOf(id: string): number {
  const found = figures.get(id);
  if (found === undefined) throw new RangeError(`there is no figure ${id}`);
  return Number(found.value);
}

function expectFigures(expected: Readonly<Record<string, number>>): void {
  for (const [id, value] of Object.entries(expected)) {
    expect(Math.abs(valueOf(id) - value), `${id}: ${valueOf(id)}, by hand ${value}`).toBeLessThan(
      1e-9 * Math.max(1, Math.abs(value)),
    );
  }
}

// The outline: 36 x 18 ft, the two corners at the street rounded 3 ft. A square corner that is
// rounded loses the square of the setback less a quarter of a circle.
const lostSqFt = 2 * (3 * 3 - (Math.PI * 3 * 3) / 4); // 3.863
const driveSqFt = 36 * 18 - lostSqFt; // 644.137
const walkSqFt = 24 * 4; // 96
// Edges 1 and 3 are formed, 36 ft less 3 ft at the street, and so are both quarter arcs: rounded off,
// a corner stands free of the public walk that edge 2 runs along.
const driveFormsFt = 2 * 33 + 2 * ((Math.PI * 3) / 2); // 75.425
// Edge 4 of the walk, 4 ft, stays.
const walkFormsFt = 24 + 4 + 24; // 52
// What is left of edge 2 of the drive, 12 ft, is 8 in deep for 8 in and tapers up to the 5 in over 8 in more.
const thickenedCuFt = (12 * (3 * 8 + (3 * 8) / 2)) / 144; // 3

describe('maple-court by hand: sizes', () => {
  test('areas', () => {
    expectFigures({
      'outline.slabs.drive.lost-to-corners': lostSqFt,
      'outline.slabs.drive.area': driveSqFt,
      'outline.slabs.front-walk.area': walkSqFt,
      'outline.existing.old-drive.area': 36 * 18, // 648
      'outline.existing.old-walk.area': 24 * 3.5, // 84
    });
  });

  // A board sticks out 6 ft at most, the company's. Behind a strip a stake every 18 in: Masonry and
  // Concrete (2004), fig. 3-16, 12 to 24 in on short-radius curves (seen).
  test('forms: 16 ft boards, a stake every 3 ft and at each meeting', () => {
    expectFigures({
      'forms.slabs.drive.length': driveFormsFt,
      'forms.slabs.front-walk.length': walkFormsFt,
      // 33 ft from the house to an arc: 16 + 16 and a piece of 1 ft, twice.
      'forms.slabs.drive.boards': 2 * 2,
      'forms.slabs.drive.pieces': 2,
      'forms.slabs.drive.cut-length': 2 * 12,
      'forms.slabs.drive.stakes-straight': 2 * (6 + 6 + 1 + 1), // 192 / 36 = 5.3
      'forms.slabs.drive.stakes-curved': 2 * (4 + 1), // 56.5 / 18 = 3.1
      // Each curve, 4.712 ft, laps a straight by 1 ft: 68.549 in, up to 68 9/16; a strip is 8 ft long.
      'forms.slabs.drive.curves.curve-1.strip-length': 68.5625,
      'forms.slabs.drive.curves.curve-1.radius-short-by': 0, // 36 in; 1/4 in across the grain takes 2 ft
      'forms.slabs.drive.end-stake-setback': 0.25,
      // 24 ft: 16 and 8, whose board would stick out 8 ft; 4 ft, whose board would 12 ft.
      'forms.slabs.front-walk.boards': 2,
      'forms.slabs.front-walk.pieces': 3,
      'forms.slabs.front-walk.cut-length': 96 + 48 + 96,
      'forms.slabs.front-walk.stakes': 2 * (6 + 3 + 1) + (2 + 1),
      'forms.boards.2x6.needed': 4 + 1, // two pieces of 1 ft out of one board
      'forms.boards.2x4.needed': 2 + 2, // 8 + 4 ft with the saw cut out of one, 8 ft out of another
      'forms.strips.hardboard.needed': 2,
      'forms.stakes.needed': 28 + 10 + 23,
      'forms.total.screws': 2 * 61,
      'forms.slabs.drive.short-by': 0, // a 5 1/2 in board, a 5 in slab
      'forms.slabs.front-walk.short-by': 0.5, // a 3 1/2 in board, a 4 in slab
    });
  });

  // Portland Cement Association (seen in an engineers' forum): with large stone at most 30 times the
  // thickness, and NRMCA CIP 6 (memory): at most 15 ft. UFGS 03300N, walks (seen): every 5 ft.
  test('joints', () => {
    expectFigures({
      'joints.slabs.drive.spacing-limit': Math.min(30 * 5, 15 * 12), // 150 in
      'joints.slabs.drive.panels': 3 * 2, // 432 / 150 = 2.88, 216 / 150 = 1.44
      'joints.slabs.drive.length': 2 * 18 + 1 * 36, // 72 ft, none through a rounded corner
      'joints.slabs.drive.depth': 5 / 4, // a quarter of the slab (state ready-mix association, seen)
      'joints.slabs.front-walk.spacing-limit': Math.min(30 * 4, 15 * 12, Math.max(48, 60)), // 60 in
      'joints.slabs.front-walk.panels': 5, // 288 / 60 = 4.8
      'joints.slabs.front-walk.length': 4 * 4,
      'joints.slabs.front-walk.depth': 1,
    });
  });
});

/*
 * Heights. The notes: two set-ups end on the nail 0.02 ft low, so the first gets 0.01 ft and the second 0.02.
 * Nothing varies across the drive, so depths [in] are those along it: down from the old top by its 4 in,
 * against a new top less 5 + 4 in.
 */
const levelFt = {
  floorLeft: 100 + 4.86 - 4.26 + 0.01, // 100.61
  walkLeft: 100 + 4.86 - 4.77 + 0.01, // 100.10
  oldGarageLeft: 100 + 4.86 - 4.37 + 0.01, // 100.50
  oldStreetLeft: 100 + 4.86 - 4.77 + 0.01, // 100.10
  oldWalk1: 100 + 4.86 - 3.21 + 3.05 - 4.26 + 0.02, // 100.46
  lawn1: 100 + 4.86 - 3.21 + 3.05 - 4.36 + 0.02, // 100.36
  lawn3: 100 + 4.86 - 3.21 + 3.05 - 4.6 + 0.02, // 100.12
};
const oldDropFt = levelFt.oldGarageLeft - levelFt.oldStreetLeft; // 0.40 in 36 ft
const driveDigIn = (oldFt: number, newFt: number) => 12 * (oldFt - newFt) - 4 + (5 + 4);
const digIn = {
  // The slab stays 0.03 ft below the floor.
  garage: driveDigIn(levelFt.oldGarageLeft, levelFt.floorLeft - 0.03), // 4.04
  break: driveDigIn(levelFt.oldGarageLeft - (oldDropFt * 10) / 36, 100.38), // 5.107
  street: driveDigIn(levelFt.oldStreetLeft, levelFt.walkLeft), // 5
};
// The middle of what a rounded corner loses lies (10 - 3 pi) / (12 - 3 pi) of the radius from both sides.
const lostAtFt = 36 - (3 * (10 - 3 * Math.PI)) / (12 - 3 * Math.PI); // 35.33
const lostDigIn = digIn.street + ((digIn.break - digIn.street) * (36 - lostAtFt)) / 26;
// The old walk lies evenly 0.04 ft below the new one, 3.52 in of dig under its 3.5 ft; the new one is half a
// foot wider, its middle 0.0575 ft above the lawn there.
const lawnPerFt = (levelFt.lawn1 - 0.18 - levelFt.lawn3) / 2; // 0.36 ft in 24 ft along, 0.03 ft a foot across
const dugCuFt = {
  drive:
    (18 * 10 * ((digIn.garage + digIn.break) / 2) +
      18 * 26 * ((digIn.break + digIn.street) / 2) -
      lostSqFt * lostDigIn) /
    12,
  walk:
    (84 * (12 * (levelFt.oldWalk1 - 100.5) - 4 + 8) +
      12 * (12 * (levelFt.lawn1 + 0.25 * lawnPerFt - (100.42 + 0.25 * 0.02)) + 8)) /
    12,
};

describe('maple-court by hand: heights', () => {
  test('notes spread what they miss, and the new tops go down by the slab and its base', () => {
    expectFigures({
      'levels.runs.run-1.miss': 0.02 * 12,
      'levels.points.floor-left.height': 100.61 * 12,
      'levels.points.lawn-3.height': 100.12 * 12,
      'tie-ins.garages.garage.tops.floor-left': (levelFt.floorLeft - 0.03) * 12,
      'grades.driveway.drive.fall-from-house': 0.02, // 0.20 ft in 10 ft
      'grades.driveway.drive.flattest': Math.hypot(0.28 / 26, 0.06 / 18), // and 0.06 ft across it
      'grades.driveway.drive.places.corner-1.dig': digIn.garage,
      'grades.driveway.drive.places.corner-2.dig': digIn.street,
      'grades.walk.front-walk.places.corner-1.dig': 3.52,
    });
    expect(Math.round(digIn.garage * 100) / 100).toBe(4.04);
  });

  test('what is dug', () => {
    expectFigures({
      'grades.driveway.drive.dig-volume': dugCuFt.drive,
      'grades.walk.front-walk.dig-volume': dugCuFt.walk,
    });
  });
});

describe('maple-court by hand: what goes', () => {
  // 150 lb/cu ft: "C&D Debris Weight to Volume Conversion" training sheet, 4,050 lb/yd3 (seen).
  const oldDriveLb = ((648 * 4) / 12) * (4050 / 27); // 216 cu ft, 32,400 lb
  // Its 4 in are assumed: loads are planned for an inch more (common practice, no source).
  const hauledDriveLb = ((648 * 5) / 12) * (4050 / 27); // 270 cu ft, 40,500 lb
  const oldWalkLb = ((84 * 4) / 12) * (4050 / 27); // 28 cu ft, 4,200 lb
  // 3,400 lb/yd3 in place, 2,700 loose: worked haul problem, expertsmind.com 30170401 (seen).
  const soilCuFt = dugCuFt.drive + thickenedCuFt + dugCuFt.walk; // 264.97 + 3 + 31.05
  const soilLb = soilCuFt * (3400 / 27); // 37,654

  test('weights, and loose volumes of half again and a tenth (60 %: common practice, no source)', () => {
    expectFigures({
      'tear-out.existing.old-drive.weight': oldDriveLb,
      'tear-out.existing.old-drive.load-thickness': 5,
      'tear-out.existing.old-walk.weight': oldWalkLb,
      'tear-out.existing.old-walk.load-thickness': 4, // measured
      'tear-out.streams.concrete-with-steel.weight': hauledDriveLb,
      'tear-out.streams.concrete-with-steel.loose-volume': (270 / 27) * 1.6, // 16 yd3
      'tear-out.streams.clean-concrete.loose-volume': (28 / 27) * 1.6, // 1.66 yd3
      'tear-out.streams.soil.weight': soilLb,
      'tear-out.streams.soil.loose-volume': soilLb / 2700, // 13.95 yd3
      'tear-out.total.weight': hauledDriveLb + oldWalkLb + soilLb,
    });
    expect([oldDriveLb, hauledDriveLb, oldWalkLb, Math.round(soilLb)]).toEqual([32400, 40500, 4200, 37654]);
  });

  // Every rating holds (standard towing practice, memory); a tongue of 10 to 15 % (driver-test page,
  // learnexams.com, seen). Plates of the company; 300 lb stay free on every load.
  test('what each trailer carries behind the truck', () => {
    const long = {
      gross: 14000 - 4200, // 9,800
      axles: 14000 / 0.9 - 4200, // 11,356
      tow: 16000 - 4200,
      combined: 25000 - 7300 - 900 - 4200,
      truck: (12400 - 7300 - 900) / 0.15 - 4200,
      hitch: 2400 / 0.15 - 4200,
    };
    const short = {
      gross: 10000 - 2700, // 7,300
      axles: 10000 / 0.9 - 2700,
      tow: 16000 - 2700,
      combined: 25000 - 7300 - 900 - 2700,
      truck: (12400 - 7300 - 900) / 0.15 - 2700,
      hitch: 2400 / 0.15 - 2700,
    };
    expect([Math.min(...Object.values(long)), Math.min(...Object.values(short))]).toEqual([9800, 7300]);
    expectFigures({
      'haul.trailers.long-box.payload': 9800 - 300,
      'haul.trailers.short-box.payload': 7300 - 300,
      'haul.trailers.long-box.box-volume': (14 * 7 * 2) / 27, // 7.26 yd3
      'haul.trailers.short-box.box-volume': (10 * 6 * 1.5) / 27, // 3.33 yd3
    });
  });

  test('loads on the long box, and what the places take for them', () => {
    expectFigures({
      // 40,500 lb of drive are four full loads and 2,500 lb; the walk's 4,200 go with those, where the
      // crusher lets them: 6,700 lb.
      'haul.streams.concrete-with-steel.loads': 5,
      'haul.streams.concrete-with-steel.heaviest-load': 9500,
      'haul.streams.concrete-with-steel.full-loads.long-box': 40500 / 9500, // by weight: 4.26
      'haul.streams.clean-concrete.loads': 1,
      'haul.streams.soil.loads': 4, // 37,654 / 9,500 = 3.96; 13.9 / 7.26 = 1.9
      // 9,500 lb at 62.5 lb a square foot of 5 in slab.
      'haul.streams.concrete-with-steel.sq-ft-per-load.old-drive.long-box': 152,
      'haul.ways.long-box-to-crusher.fees': 5 * (45 + 10), // steel on every load
      'haul.ways.long-box-to-fill-site.fees': 4 * 20,
      'haul.total.fees': 275 + 80, // 355
    });
    const { loads } = results.haul.data;
    expect(loads.map(({ trailer }) => trailer)).toEqual(Array(9).fill('long-box'));
    expect(loads.map(({ weightLb }) => Math.round(weightLb)).slice(0, 5)).toEqual([
      9500, 9500, 9500, 9500, 6700,
    ]);
  });
});

describe('maple-court by hand: what comes', () => {
  // The base reaches 6 in past what is formed. 4 in each; 130 lb/cu ft and 1.25 loose: the supplier's.
  test('base', () => {
    const driveCuFt = ((driveSqFt + 0.5 * driveFormsFt) * 4) / 12; // 681.85 sq ft, 227.28 cu ft
    const walkCuFt = ((walkSqFt + 0.5 * walkFormsFt) * 4) / 12; // 122 sq ft, 40.67 cu ft
    const tons = ((driveCuFt + walkCuFt) * 130) / 2000; // 17.42
    expectFigures({
      'base.total.compacted': (driveCuFt + walkCuFt) / 27, // 9.924 yd3
      'base.total.loose': ((driveCuFt + walkCuFt) / 27) * 1.25, // 12.37 yd3
      'base.total.tons': tons,
      'base.total.order-tons': 17.5, // by half tons
      // One lift of 4 in; 17 in of a 20 in plate, 4,200 ft/h, 50 min an hour, 4 passes: 1,239.6 sq ft/h.
      'base.slabs.drive.lifts': 1,
      'base.total.plate-hours': ((driveCuFt + walkCuFt) * 3) / (((17 / 12) * 4200 * (50 / 60)) / 4), // 0.65
    });
    expect(Math.round(tons * 100) / 100).toBe(17.42);
  });

  // 5 in and 4 in thick; a base that lies 1/4 in low on average, 3 % spill and forms that give 1/8 in: the
  // company's.
  const netCuYd = ((driveSqFt * 5) / 12 + thickenedCuFt + (walkSqFt * 4) / 12) / 27; // 11.237
  const unevenCuYd = ((driveSqFt + walkSqFt) * 0.25) / 12 / 27; // 0.571
  const spillCuYd = 0.03 * netCuYd; // 0.337
  const bulgeCuYd = (0.125 * (driveFormsFt * 5 + walkFormsFt * 4)) / 144 / 27; // 0.019
  const neededCuYd = netCuYd + unevenCuYd + spillCuYd + bulgeCuYd; // 12.164

  test('concrete: net, allowances, order by quarter yards, two trucks of 10 yd3', () => {
    expectFigures({
      'concrete.total.net': netCuYd,
      'concrete.total.unevenness': unevenCuYd,
      'concrete.total.spill': spillCuYd,
      'concrete.total.bulge': bulgeCuYd,
      'concrete.total.needed': neededCuYd,
      'concrete.truck.order': 12.25,
      'concrete.truck.loads': 2,
      'concrete.truck.short-load-fee': 0,
      'concrete.truck.fuel-fee': 2 * 28,
      'concrete.truck.additives': 12.25 * 9, // fibers, 110.25
      // Six yards an hour are 10 min each, of which 6 are free: 49 min at $150 an hour.
      'concrete.truck.wait-fee': 12.25 * (4 / 60) * 150, // 122.50
      'concrete.truck.cost': 12.25 * 172 + 110.25 + 56 + 122.5, // 2,395.75
      // 90 min less 25 on the way are 65 min, in which 6.5 yd3 are placed; the first load, 6.25, takes 62.5.
      'concrete.delivery.most-per-load': 6.5,
      'concrete.delivery.spacing': 65 / 60,
      // The second one, 6 yd3, comes 65 min after the first and takes an hour; the crew alone would be done in 2.03 h.
      'concrete.delivery.last-empty': 125 / 60,
      'pour-day.clock.placed-by': 8 + 125 / 60,
      // ACI 332-20, class RF3, deicers (quoted in a ready-mix association's advisory, seen).
      'concrete.strength-floor': 4500,
    });
    expect(neededCuYd).toBeGreaterThan(12);
    expect(neededCuYd).toBeLessThan(12.25);
  });

  // 21 lb in 100 sq ft, 6x6-W1.4: Wire Reinforcement Institute in Concrete Construction (seen).
  test('mesh in the walk: 10 x 5 ft sheets with 8 in of lap', () => {
    expectFigures({
      'reinforcement.slabs.front-walk.sheets': 3 * 1, // (288 - 8) / (120 - 8) = 2.5; 48 in under one
      'reinforcement.slabs.front-walk.weight': (3 * 10 * 5 * 21) / 100, // 31.5 lb
    });
  });

  // #4: 0.668 lb/ft, 1/2 in: ASTM A615 in the PCI Design Handbook, Design Aid 15.4.1 (seen). Cover
  // 2 in at every edge (common practice, no source).
  test('bars in the drive: #4 at 18 in both ways out of 20 ft sticks, lapped 40 diameters', () => {
    const cover = 2;
    // Along 36 ft, side by side over 18 ft: (216 - 4) / 18 = 11.8, so 12 even spaces.
    const alongAtIn = Array.from({ length: 13 }, (_, index) => cover + (index * (216 - 4)) / 12);
    // Across 18 ft, side by side over 36 ft: (432 - 4) / 18 = 23.8, so 24 even spaces.
    const acrossAtIn = Array.from({ length: 25 }, (_, index) => cover + (index * (432 - 4)) / 24);
    // Within 36 in of the street side's corners the arc less the cover ends a bar: sqrt(34² - d²) past its
    // centre. Bars are cut to 1/4 in, down.
    const cut = (lengthIn: number) => Math.floor(lengthIn * 4 + 1e-6) / 4;
    const reachIn = (fromCentreIn: number) => Math.sqrt((36 - cover) ** 2 - fromCentreIn ** 2);
    const alongIn = alongAtIn.map((y) => {
      const fromCentreIn = Math.max(36 - y, y - 180, 0);
      return cut(396 + reachIn(fromCentreIn) - cover);
    });
    const acrossIn = acrossAtIn.map((x) => cut(144 + 2 * reachIn(Math.max(x - 396, 0))));
    // A run along is longer than a stick and has one lap of 40 x 1/2 in; a run across has none.
    expect(Math.max(...acrossIn)).toBeLessThan(240);
    expect(Math.min(...alongIn)).toBeGreaterThan(240);
    expect(Math.max(...alongIn)).toBeLessThan(2 * 240 - 20);
    const lengthFt = [...alongIn, ...acrossIn, 13 * 20].reduce((sum, lengthIn) => sum + lengthIn, 0) / 12;
    expectFigures({
      'reinforcement.slabs.drive.bars-along': 13,
      'reinforcement.slabs.drive.bars-across': 25,
      'reinforcement.slabs.drive.length': lengthFt, // 914.27
      'reinforcement.slabs.drive.weight': lengthFt * 0.668, // 610.73 lb
      // No two pieces fit one stick: a whole one and a rest for each along, one for each across.
      'reinforcement.stock.steel-4.sticks': 13 + 13 + 25,
      'reinforcement.stock.steel-4.bought-weight': 51 * 20 * 0.668, // 681.36 lb
    });
    expect(Math.round(lengthFt * 100) / 100).toBe(914.27);
  });
});

describe('maple-court by hand: work and money', () => {
  const needed = () => valueOf('concrete.total.needed');
  // The chute, 16 ft, swings about (22, 9) ft over the walk, which lies from (6, 20) to (30, 24): 70 % of it. The
  // rest of its 1.28 yd3 are 10.4 cu ft, five barrows of 2.5. They go to half way between the end of the chute and the
  // far corner, (6, 24), and 4 ft more round the drive.
  const wayFt = (16 + Math.hypot(16, 15)) / 2 + 4; // 22.97
  const carriedHr = 5 * ((2 * wayFt) / 9000 + 1 / 60); // 0.109

  // Reinforced takes 1.6 times as long as plain: Planning Planet, wiki "Breaking out" (seen).
  test('labor hours of breaking out, forming and placing', () => {
    expectFigures({
      'crew.tasks.break-out.labor-hours': ((648 * 1.6 + 84) / 180) * 2, // 1,120.8 sq ft, 12.45 h
      'crew.tasks.form.labor-hours': ((driveFormsFt + walkFormsFt) / 30) * 2, // 122.7 ft, 8.18 h
      // 12.16 yd3, 6.08 h; and five barrows to the walk, 23 ft there and back at 9,000 ft an hour, 1 min each.
      'crew.tasks.place.labor-hours': (needed() / 6) * 3 + carriedHr, // 6.19 h
    });
  });

  test('an hour of labor: the mean wage and a burden of 24 %', () => {
    // (36 + 32 + 24) / 3 = 30.6667, x 1.24 = 38.0267
    expectFigures({ 'crew.rate.labor-cost-per-hour': 38.03 });
  });

  test('the price of the concrete from its cost: 14 % overhead and 16 % margin of the price', () => {
    // Placing: 12.1637 / 6 x 3 + 0.1089 = 6.1907 h at $38.03 = $235.43. The plant bills $2,395.75.
    expectFigures({
      'cost.groups.concrete': 235.43 + 2395.75,
      'price.lines.concrete': 3758.83, // 2,631.18 / 0.70
    });
  });

  test('the total and the payments: 25, 35, 30 and 10 %', () => {
    const cents = (id: string) => Math.round(valueOf(id) * 100);
    const groups = ['tear-out-and-haul', 'base-and-forms', 'concrete', 'finish-and-clean', 'other'];
    const prices = groups.map((group) => Math.round(cents(`cost.groups.${group}`) / 0.7));
    const total = prices.reduce((sum, price) => sum + price, 0);
    expect(groups.map((group) => cents(`price.lines.${group}`))).toEqual(prices);
    expect(cents('price.total')).toBe(total);
    // The deposit is cut to the cent; the rest goes to 35, 30 and 10 of 75, cut, and the cents that
    // are left go to the largest parts cut off.
    const deposit = Math.floor(total / 4);
    const parts = [35, 30, 10].map((share) => ((total - deposit) * share) / 75);
    const cut = parts.map(Math.floor);
    const left = total - deposit - cut.reduce((sum, part) => sum + part, 0);
    const favoured = parts
      .map((part, index) => ({ index, off: part - Math.floor(part) }))
      .toSorted((one, other) => other.off - one.off)
      .slice(0, left)
      .map(({ index }) => index);
    const payments = [deposit, ...cut.map((part, index) => part + (favoured.includes(index) ? 1 : 0))];
    expect(payments.map((_, index) => cents(`price.payments.payment-${index + 1}`))).toEqual(payments);
    expect(payments.reduce((sum, payment) => sum + payment, 0)).toBe(total);
  });

  // 29 CFR 1926.1153(c)(1), Table 1: row (iv) asks a walk-behind saw for water fed to the blade; row
  // (xvii) asks a machine with a breaker for an enclosed cab, and this loader's is open.
  test('silica: the saw is on row iv, the breaker is not on the table', () => {
    const row = (task: string) => results.safety.data.silica.find((one) => one.task === task);
    expect(row('saw-cut')).toMatchObject({ onTable: true, apf: 0, missing: [] });
    expect(row('saw-joints')).toMatchObject({ onTable: true, apf: 0, missing: [] });
    expect(JSON.stringify(row('saw-cut')?.row)).toMatch(/\biv\b/);
    expect(row('break-out')).toMatchObject({ onTable: false, apf: null, missing: ['enclosed-cab'] });
    expect(JSON.stringify(row('break-out')?.row)).toMatch(/\bxvii\b/);
  });
});
