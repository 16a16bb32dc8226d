import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { mixFigures } from '../../../src/calculate/concrete/index.ts';
import type { Figure, FigureTree, FigureUnit } from '../../../src/calculate/figure.ts';
import { calcChecks, evaluateRules, isBeyond, ruleTags } from '../../../src/calculate/findings/index.ts';
import type { Acknowledgement } from '../../../src/calculate/job.ts';
import { RULE_TAGS, type Rule } from '../../../src/calculate/rule.ts';
import type { OfficeText } from '../../../src/calculate/text.ts';
import { aMix } from '../a-mix.ts';
import { fig, usd } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab } from '../slabs.ts';
import { RULE_SETS, shippedRules } from './shipped-rules.ts';

const ratioRule: Rule = {
  code: 'panel-long',
  figure: 'joints.slabs.*.panel-ratio',
  limit: 1.5,
  limitText: '1.5',
  direction: 'at-most',
  appliesTo: ['any-job'],
  severity: 'fix',
  source: 'made for a test',
  seen: false,
};

const tree = {
  joints: {
    slabs: {
      drive: { 'panel-ratio': fig(1.6, 'ratio') },
      walk: { 'panel-ratio': fig(1.5, 'ratio') },
    },
    total: { 'panel-ratio': fig(9, 'ratio') },
  },
};

function evaluate(
  rules: readonly Rule[],
  figures: FigureTree,
  acknowledged: readonly Acknowledgement[] = [],
) {
  return evaluateRules({ rules, figures, tags: ['any-job'], acknowledged });
}

describe('evaluateRules', () => {
  test('a finding says where, what and against what; a value on the limit is none', () => {
    expect(evaluate([ratioRule], tree).findings).toEqual([
      {
        code: 'panel-long',
        where: 'drive',
        severity: 'fix',
        figureId: 'joints.slabs.drive.panel-ratio',
        value: 1.6,
        unit: 'ratio',
        limit: 1.5,
        limitText: '1.5',
        direction: 'at-most',
        source: 'made for a test',
        seen: false,
        acknowledged: null,
      },
    ]);
  });

  test('a star is one name; two stars are a place of two; no star is the whole job', () => {
    const places = (figure: string) =>
      evaluate([{ ...ratioRule, figure }], tree).findings.map(({ where }) => where);
    expect(places('joints.*.*.panel-ratio')).toEqual(['slabs.drive']);
    expect(places('joints.total.panel-ratio')).toEqual(['job']);
    expect(places('joints.*.panel-ratio')).toEqual(['total']);
  });

  test('a rule without a figure is silent, and one without a tag of the job does not apply', () => {
    expect(evaluate([{ ...ratioRule, figure: 'joints.*.nothing' }], tree).findings).toEqual([]);
    expect(evaluate([{ ...ratioRule, appliesTo: ['steps'] }], tree).findings).toEqual([]);
  });

  test('the gravest finding comes first, equals in the order of the rules', () => {
    const rules = [
      { ...ratioRule, code: 'one', severity: 'note' as const },
      { ...ratioRule, code: 'two' },
      { ...ratioRule, code: 'three', severity: 'stop' as const },
      { ...ratioRule, code: 'four' },
    ];
    expect(evaluate(rules, tree).findings.map(({ code }) => code)).toEqual(['three', 'two', 'four', 'one']);
  });

  test('a reason is carried; an acknowledgement without its finding is a problem', () => {
    const reason = 'joint at the garage door' as OfficeText;
    const { findings, problems } = evaluate([ratioRule], tree, [
      { finding: 'panel-long', where: 'drive', reason },
      { finding: 'panel-long', where: 'walk', reason },
    ]);
    expect(findings.map(({ acknowledged }) => acknowledged)).toEqual([reason]);
    expect(problems).toEqual([
      {
        code: 'acknowledgement-without-finding',
        path: 'job.acknowledged.1',
        parts: { finding: 'panel-long', where: 'walk' },
      },
    ]);
  });

  test('exact: 1/4 in per ft is 1:48; the noise of doubles is let off, a real difference is not', () => {
    expect(isBeyond(0.25 / 12, 1 / 48, 'at-most')).toBe(false);
    expect(isBeyond(0.1 + 0.2, 0.3, 'at-most')).toBe(false);
    expect(isBeyond(0.3000001, 0.3, 'at-most')).toBe(true);
    expect(isBeyond(1e-12, 0, 'at-most')).toBe(false);
    expect(isBeyond(-0.01, 0, 'at-least')).toBe(true);
    expect(isBeyond(3.5, 4, 'at-least')).toBe(true);
    expect(isBeyond(4.5, 4, 'at-least')).toBe(false);
  });

  test('money is compared to the cent', () => {
    expect(isBeyond(usd('1000.00'), 1000, 'at-most')).toBe(false);
    expect(isBeyond(usd('1000.01'), 1000, 'at-most')).toBe(true);
    expect(isBeyond(usd('99999999999999.01'), 99999999999999, 'at-most')).toBe(true);
  });
});

const rowsOf = (name: string) =>
  readFileSync(new URL(`../../../src/rules/${name}.yaml`, import.meta.url), 'utf8');

describe('shipped rule sets', () => {
  test('four sets are read, and every row has its source', () => {
    expect(RULE_SETS.toSorted()).toEqual(['california', 'general', 'maine', 'maryland']);
    const rules = RULE_SETS.flatMap((name) => shippedRules(name));
    for (const rule of rules) expect(rule.source.length, rule.code).toBeGreaterThan(10);
    const written = RULE_SETS.flatMap((name) => rowsOf(name).match(/^ {4}source: /gm) ?? []);
    expect(rules.length).toBe(written.length);
    expect(written.length).toBeGreaterThan(50);
  });

  test('limits as meant, in the unit of the figure', () => {
    const limits = Object.fromEntries(
      RULE_SETS.flatMap((name) => shippedRules(name).map(({ code, limit }) => [code, limit])),
    );
    expect(limits).toMatchObject({
      'walk-slopes-across': 1 / 48,
      'slab-thin': 3.5,
      'panel-large': 180,
      'air-low-for-freezing': 0.05,
      'deposit-over-fixed-cap': 1000,
      'deposit-over-one-third': 1 / 3,
    });
  });

  /** A figure on the limit of each rule, and one just beyond. */
  const cases: readonly (readonly [string, string, FigureUnit, number, number])[] = [
    ['slab-thin', 'checks.patio.terrace.thickness', 'in', 3.5, 3.25],
    ['slab-thin-for-cars', 'checks.driveway.drive.thickness', 'in', 4, 3.75],
    ['base-thin-for-cars', 'checks.driveway.drive.base', 'in', 4, 3],
    ['fall-flat', 'checks.walk.front.fall', 'ratio', 0.125 / 12, 0.0625 / 12],
    ['walk-slopes-across', 'checks.walk.front.fall', 'ratio', 0.25 / 12, 0.3 / 12],
    ['panel-long', 'joints.slabs.drive.panel-ratio', 'ratio', 1.5, 1.51],
    ['panel-over-spacing', 'joints.slabs.drive.length-over-limit', 'ratio', 1, 1.01],
    ['panel-corner-sharp', 'joints.slabs.drive.smallest-angle', 'deg', 60, 59],
    ['corner-without-joint', 'joints.slabs.drive.open-corners', 'each', 0, 1],
    ['panel-large', 'joints.slabs.drive.panel-length', 'in', 180, 181],
    ['dowels-in-thin-slab', 'edges.dowelled.drive', 'in', 5, 4.75],
    ['key-in-thin-slab', 'edges.keyed.drive', 'in', 6, 5.75],
    ['lap-on-joint', 'reinforcement.slabs.drive.laps-on-joints', 'each', 0, 1],
    ['steel-cover-small', 'reinforcement.slabs.drive.cover', 'in', 1.5, 1.25],
    ['mix-weak-for-exposure', 'checks.mix.strength-shortfall', 'psi', 0, 500],
    ['air-low-for-freezing', 'checks.mix.air', 'ratio', 0.05, 0.045],
    ['air-low-for-stone', 'checks.mix.air-short-for-stone', 'ratio', 0, 0.005],
    ['air-high-for-stone', 'checks.mix.air-over-for-stone', 'ratio', 0, 0.005],
    ['water-cement-high', 'checks.mix.water-cement-over', 'ratio', 0, 0.01],
    ['fly-ash-high', 'checks.mix.fly-ash', 'ratio', 0.25, 0.26],
    ['slag-high', 'checks.mix.slag', 'ratio', 0.5, 0.51],
    ['slump-by-water', 'checks.mix.slump-by-water', 'in', 5, 5.5],
    ['chloride-on-steel', 'checks.mix.chloride-on-steel', 'each', 0, 1],
    ['stone-large', 'checks.walk.front.stone-share', 'ratio', 1 / 3, 0.34],
    ['probed-shallow', 'checks.walk.front.probed-short', 'in', 0.375, 0.4],
    ['discharge-late', 'concrete.delivery.over-limit', 'h', 0, 0.1],
    ['placing-out-of-reach', 'concrete.placing.total.unreached', 'each', 0, 1],
    ['form-board-low', 'forms.slabs.drive.short-by', 'in', 0, 0.5],
    ['form-strip-low', 'forms.slabs.drive.strip-short-by', 'in', 0, 0.25],
    ['form-strip-breaks', 'forms.slabs.drive.curves.curve-1.radius-short-by', 'in', 0, 0.1],
    ['curve-without-strip', 'forms.slabs.drive.curves-without-strip', 'each', 0, 1],
    ['pour-before-ready', 'crew.total.pour-early', 'days', 0, 1],
    ['pour-over-a-day', 'crew.phases.pour.days', 'days', 1, 2],
    ['area-large-for-finishers', 'crew.total.area-per-finisher', 'sq ft', 400, 401],
    ['pour-not-divided', 'pours.over-most', 'sq ft', 0, 1],
    ['crew-short-of-people', 'crew.total.people-short', 'each', 0, 1],
    ['flight-uneven', 'flights.stays.porch.difference', 'in', 0.375, 0.376],
    ['flight-riser-high', 'flights.stays.porch.highest', 'in', 7.75, 7.76],
    ['steps-riser-high', 'flights.steps.porch.highest', 'in', 7.75, 7.76],
    ['steps-uneven', 'flights.steps.porch.difference', 'in', 0.375, 0.376],
    ['steps-tread-short', 'flights.steps.porch.tread', 'in', 10, 9.99],
    ['steps-tread-slopes', 'flights.steps.porch.tread-slope', 'ratio', 0.25 / 12, 0.021],
    ['steps-narrow', 'flights.steps.porch.width', 'in', 36, 35.9],
    ['steps-landing-short', 'flights.steps.porch.landing', 'in', 36, 35.9],
    ['steps-handrail', 'flights.steps.porch.risers', 'each', 3, 4],
    ['steps-long', 'flights.steps.porch.risers', 'each', 6, 7],
    ['steps-guard', 'flights.steps.porch.rise', 'in', 30, 30.1],
    ['steps-stride-short', 'flights.steps.porch.stride', 'in', 24, 23.9],
    ['wall-covered', 'clearances.siding.buried', 'in', 0, 0.1],
    ['wall-close', 'clearances.siding.short-by', 'in', 0, 0.1],
    ['load-near-payload', 'checks.loads.soil.fullness', 'ratio', 0.95, 0.96],
    ['fabric-laps-little', 'base.geotextile.lap', 'in', 12, 11.75],
    ['licence-group-a', 'checks.fleet.dump-trailer.towed-rating-of-heavy-combination', 'lb', 10_000, 10_001],
    ['licence-group-b', 'checks.truck.rating', 'lb', 26_000, 26_001],
    ['price-below-cost', 'price.margin-share', 'ratio', 0, -0.01],
    ['arcs-meet-with-kink', 'outline.slabs.walk.kinks.point-3', 'deg', 1, 1.2],
    ['walk-pinched', 'outline.slabs.walk.turns.turn-1.pinch', 'in', 0, 0.5],
    ['levels-not-closed', 'levels.total.open-runs', 'each', 0, 1],
    ['public-walk-undecided', 'tie-ins.public-walks.city.undecided', 'each', 0, 1],
    ['public-walk-without-word', 'tie-ins.public-walks.city.without-word', 'each', 0, 1],
    ['public-edge-left', 'tie-ins.public-walks.city.edge-left', 'in', 0, 0.1],
    ['public-walk-lip-later', 'tie-ins.public-walks.city.lip-later', 'in', 0.25, 0.26],
    ['public-walk-bevel', 'tie-ins.public-walks.city.bevel-ground', 'ratio', 0.25 / 12, 0.021],
    ['pipe-in-slab', 'fixtures.under-slab.downspout.in-slab', 'in', 0, 0.1],
    ['drain-without-outlet', 'tie-ins.drains.trench.no-outlet', 'each', 0, 1],
    ['drain-pipe-flat', 'tie-ins.drains.trench.pipe.short-by', 'ratio', 0, 0.001],
    ['garage-lip-none', 'tie-ins.garages.garage.lip', 'in', 0.25, 0.2],
    ['garage-lip-high', 'tie-ins.garages.garage.lip', 'in', 1, 1.1],
    ['garage-seal-on-joint', 'tie-ins.garages.garage.seal', 'in', 1, 0.9],
    ['water-to-kept-dry', 'grades.driveway.drive.towards.lot-line', 'ratio', 0.01, 0.02],
    ['crest-for-cars', 'profiles.middle.beyond.point-2.crest', 'ratio', 0.1, 0.11],
    ['sag-for-cars', 'profiles.middle.beyond.point-1.sag', 'ratio', 0.09, 0.1],
    ['water-to-house', 'grades.driveway.drive.fall-to-house', 'ratio', 0, 0.001],
    ['house-fall-flat', 'grades.porch.porch.fall-from-house', 'ratio', 0.02, 0.019],
    ['house-fall-small', 'grades.patio.terrace.fall-from-house', 'ratio', 0.25 / 12, 0.02],
    ['surface-flat', 'grades.patio.terrace.flattest', 'ratio', 0.125 / 12, 0.01],
    ['drive-steep', 'grades.driveway.drive.steepest', 'ratio', 0.15, 0.151],
    ['walk-steep', 'grades.walk.front.steepest', 'ratio', 0.6 / 12, 0.051],
    ['patio-steep', 'grades.patio.terrace.steepest', 'ratio', 0.5 / 12, 0.042],
    ['walk-falls-across', 'grades.walk.front.across.slope', 'ratio', 0.03, 0.031],
    ['public-way-across', 'grades.walk.front.public-way.slope', 'ratio', 0.25 / 12, 0.021],
    ['public-way-along', 'grades.walk.front.public-way.along', 'ratio', 0.6 / 12, 0.051],
    ['break-in-drive', 'grades.driveway.drive.largest-break', 'ratio', 0.03, 0.031],
    ['water-stands', 'grades.patio.terrace.stands-deep', 'in', 0.125, 0.13],
    ['fall-and-heights-differ', 'grades.patio.terrace.off-stated-fall', 'ratio', 0.125 / 12, 0.011],
    ['fall-runs-elsewhere', 'grades.patio.terrace.off-stated-direction', 'deg', 45, 46],
    ['lip-between-slabs', 'grades.joints.drive-to-walk.lip', 'in', 0.25, 0.26],
    ['break-between-slabs', 'grades.joints.drive-to-walk.break', 'ratio', 0.03, 0.031],
    ['walk-closes-badly', 'outline.slabs.walk.closure.share', 'ratio', 0.005, 0.006],
    ['forecast-of-another-day', 'pour-day.weather.days-apart', 'days', 0, 1],
    ['evaporation-high', 'pour-day.evaporation.most', 'lb/sq ft/h', 0.2, 0.21],
    ['concrete-hot', 'pour-day.weather.concrete', '°F', 95, 96],
    ['concrete-cold', 'pour-day.weather.concrete-too-cold', '°F', 0, 1],
    ['air-cold', 'pour-day.weather.lowest-air', '°F', 40, 39],
    ['base-may-be-frozen', 'pour-day.weather.low-before', '°F', 32, 31],
    ['base-may-be-wet', 'pour-day.weather.rain-before', 'in', 0.25, 0.3],
    ['rain-likely', 'pour-day.weather.rain-chance', 'ratio', 0.3, 0.31],
    ['wind-strong', 'pour-day.weather.strongest-wind', 'mph', 20, 21],
    ['work-in-the-dark', 'pour-day.weather.hours-in-the-dark', 'h', 0, 0.5],
    ['saw-window-closed', 'pour-day.saw.hours-short', 'h', 0, 0.5],
    ['early-saw-window-closed', 'pour-day.early-saw.hours-short', 'h', 0, 0.5],
    ['finishers-short', 'pour-day.finishers.short', 'each', 0, 1],
    ['tools-late', 'pour-day.finishers.tools-late', 'h', 0, 0.5],
    ['curing-film-in-the-way', 'curing.film-in-the-way', 'each', 0, 1],
  ];

  test('every general rule is tried', () => {
    expect(cases.map(([code]) => code)).toEqual(shippedRules('general').map(({ code }) => code));
  });

  test.each(cases)('%s: %s is silent on its limit and found beyond it', (code, id, unit, onLimit, beyond) => {
    const rules = shippedRules('general').filter((rule) => rule.code === code);
    const codes = (value: number) =>
      evaluateRules({
        rules,
        figures: treeOf(id, fig(value, unit)),
        tags: RULE_TAGS,
        acknowledged: [],
      }).findings.map((finding) => finding.code);
    expect(codes(onLimit)).toEqual([]);
    expect(codes(beyond)).toEqual([code]);
  });
});

function treeOf(id: string, leaf: Figure): FigureTree {
  const [first = '', ...rest] = id.split('.');
  return { [first]: rest.length === 0 ? leaf : treeOf(rest.join('.'), leaf) };
}

describe('figures to be checked', () => {
  const checks = calcChecks({
    slabs: {
      drive: aSlab(),
      front: aSlab({ id: 'front', use: 'walk', thicknessIn: 3.5, fall: { ...aSlab().fall, slope: 1 / 96 } }),
    },
    mix: aMix({ strengthPsi: 3000 }),
    mixFigures: mixFigures(aMix({ strengthPsi: 3000 }), fig(3500, 'psi')),
    strengthFloorPsi: fig(3500, 'psi'),
    trailers: { 'dump-trailer': { payload: fig(7000, 'lb') } },
    loads: [
      { streams: ['soil'], trailer: 'dump-trailer', weightLb: 6300 },
      { streams: ['soil'], trailer: 'dump-trailer', weightLb: 6300 },
    ],
    fleet: { towVehicle: { grossRatingLb: 9900, combinedRatingLb: 20_000 }, trailers: {}, hauling: [] },
  });

  test('slabs stand under their use, the shortfall and the fullness are worked by hand', () => {
    expect(checks.driveway?.['drive']?.thickness.value).toBe(4);
    expect(checks.walk?.['front']?.fall.value).toBe(1 / 96);
    expect(checks.patio).toBeUndefined();
    expect(checks.mix['strength-shortfall'].value).toBe(500);
    expect(checks.loads['soil']?.fullness.value).toBeCloseTo(0.9, 12);
  });

  test('of a fleet that hauls nothing there is nothing to check', () => {
    expect([checks.fleet, checks.truck]).toEqual([{}, {}]);
  });

  testExpressions('checks', checks as FigureTree, 8);

  test('tags of a job', () => {
    const slabs = { drive: aSlab(), front: aSlab({ id: 'front', use: 'walk' }) };
    expect(ruleTags({ slabs, steps: {}, mix: { exposure: 'no-freezing' }, loadCount: 0 })).toEqual([
      'any-job',
      'price',
      'driveway',
      'walk',
    ]);
    expect(
      ruleTags({ slabs: {}, steps: { porch: {} }, mix: { exposure: 'freezing-and-deicers' }, loadCount: 3 }),
    ).toEqual(['any-job', 'price', 'steps', 'freezing', 'deicers', 'haul']);
  });
});
