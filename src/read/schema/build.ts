import * as z from 'zod';
import { bearing } from './angles.ts';
import { lazily, TEXT_OR_NUMBER } from './leaf.ts';
import { outlineKeys } from './outline.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, count, FROM_ZERO, length, quantity, share, times, yesNo } from './quantities.ts';
import { byId, byNumber, choice, reference, thing } from './shape.ts';
import { crewText, publicText } from './text.ts';

const reinforcement = () =>
  thing('reinforcement', {
    mesh: choice(
      ['6x6-w1.4', '6x6-w2.1', '6x6-w2.9', '6x6-w4.0', '4x4-w1.4', '4x4-w2.9'],
      'Style of the welded wire.',
    ).optional(),
    bars: choice(['3', '4', '5'], 'Bar size, in eighths of an inch.')
      .meta({ ...TEXT_OR_NUMBER, enum: ['3', '4', '5', 3, 4, 5] })
      .optional(),
    spacing: length(
      { least: '3 in', most: '4 ft' },
      'Bar to bar, both ways unless spacing-across says otherwise; only with bars.',
      '18 in',
    ).optional(),
    'spacing-across': length(
      { least: '3 in', most: '4 ft' },
      'Bar to bar of those that run across the longer side; as spacing if not given.',
      '24 in',
    ).optional(),
    material: choice(['steel', 'glass-fibre'], 'What bars are of; steel if not given.').optional(),
    corners: choice(
      ['crossed', 'bent'],
      'At outer corners bars cross and are tied (crossed, if not given), or bent pieces go round. Glass fibre is bent where it is made, never here.',
    ).optional(),
    from: choice(['sheets', 'rolls'], 'What mesh comes in; sheets if not given.').optional(),
    cover: length(
      { ...ABOVE_ZERO, most: '2 ft' },
      'Concrete over the steel, from the top and from the edges; 2 in if not given.',
      '2 in',
    ).optional(),
  });

const thickenedEdge = () =>
  thing('thickened-edge', {
    depth: length(
      { ...ABOVE_ZERO, most: '4 ft' },
      'From the top of the slab to the bottom of the edge.',
      '10 in',
    ),
    width: length({ ...ABOVE_ZERO, most: '6 ft' }, 'How wide its flat bottom is.', '8 in'),
    taper: length(
      { ...FROM_ZERO, most: '6 ft' },
      'How far along the ground it rises from there to the underside of the slab; upright if not given.',
      '6 in',
    ).optional(),
  });

const jointLine = () =>
  thing('joint-line', {
    from: place('Where it starts, on this shape.', ['12 ft', '0 ft']),
    to: place('Where it ends; square to the edge it starts from if not given.', [
      '12 ft',
      '18 ft',
    ]).optional(),
  });

const jointing = () =>
  thing('joints', {
    cut: choice(
      ['tooled', 'wet-sawn', 'early-entry'],
      'How they are made: with a groover while it is finished, with a wet saw, or with a light dry saw soon after; sawn wet if not given.',
    ).optional(),
    lines: byId(
      jointLine(),
      'Joints that have their place, in the order they are cut: each runs on to the next edge or joint.',
    ).optional(),
    propose: choice(
      ['rest', 'nothing'],
      'What is proposed beside the lines given: the rest, or nothing; the rest if not given.',
    ).optional(),
    sealed: yesNo('Whether joints and soft strips get a sealant; no if not given.').optional(),
  });

const edgeJoint = () =>
  thing('edge-joint', {
    how: choice(
      ['free', 'isolated', 'dowelled', 'tied', 'keyed'],
      'What is done along it: nothing, a soft strip full depth, smooth dowels greased at one end, deformed bars, or a key.',
    ),
    into: choice(
      ['new-slab', 'old-slab', 'garage', 'house', 'public'],
      'What it is joined to; what stands at the edge if not given. All but a new slab is drilled.',
    ).optional(),
    'post-tensioned': yesNo(
      'Whether a garage or house slab has tendons; nothing is drilled into it until this is no.',
    ).optional(),
    'known-by': crewText('How that is known.', 'Builder drawings, sheet S2').optional(),
    detail: crewText(
      'The detail of the authority that is followed into public concrete.',
      'County detail R-12',
    ).optional(),
  });

const slab = () =>
  thing('slab', {
    label: publicText('What it is called on paper.', 'Driveway'),
    use: choice(['driveway', 'walk', 'patio', 'porch'], 'What it is for.'),
    ...outlineKeys(),
    thickness: length({ ...ABOVE_ZERO, most: '2 ft' }, 'How thick the new concrete is.', '4 in'),
    'thickened-edges': byNumber(
      thickenedEdge(),
      'Edge number to how it is thickened, dug by hand below the slab; a rounded corner between two such edges too.',
    ).optional(),
    'form-height': length(
      { ...ABOVE_ZERO, most: '2 ft' },
      'How high the form tops stand above what the forms stand on; the height of the board if not given.',
      '4 in',
    ).optional(),
    'probed-depth': length(
      { ...ABOVE_ZERO, most: '2 ft' },
      'Average depth from a string over the form tops down to the base, probed when the forms stand. Concrete is then ordered by it, with nothing added for a base that is not level.',
      '4 1/4 in',
    ).optional(),
    base: length({ ...FROM_ZERO, most: '4 ft' }, 'Compacted stone below it; 0 in for none.', '4 in'),
    dig: length({ ...FROM_ZERO, most: '6 ft' }, 'Soil dug out below the old slab; 0 in for none.', '4 in'),
    geotextile: yesNo(
      'Fabric between the ground and the base: it keeps them apart and takes the place of no stone. Rolling it out is part of the pace of base; no if not given.',
    ).optional(),
    fall: thing('fall', {
      slope: quantity('slope', FROM_ZERO, 'How much it falls.', '1/4 in per ft'),
      towards: publicText('Where the water goes.', 'the street'),
      direction: bearing(
        'Which way on the plan that is, clockwise from up: an arrow is drawn where no heights tell, and held against them where they do.',
        '90 deg',
      ).optional(),
    }),
    'public-way': yesNo(
      'Whether the public walks on it, or somebody wants it held to the rules of public ways: how it falls across and along is then held against them; no if not given.',
    ).optional(),
    reinforcement: reinforcement().optional(),
    'edge-joints': byNumber(
      edgeJoint(),
      'What is done along an edge, by its number; isolated at the house and at old concrete and free elsewhere if not given.',
    ).optional(),
    finish: choice(['broom', 'float', 'exposed-aggregate'], 'How the top is finished.'),
    'joint-spacing': length(
      { least: '1 ft', most: '40 ft' },
      'Only where the job asks for its own; the table is taken if not given.',
      '10 ft',
    ).optional(),
    joints: jointing().optional(),
    board: reference('Id of a form board of the company.', '2x4'),
    'curve-form': reference(
      'Id of a form strip of the company that its curves are bent of; boards sawn to bend if not given.',
      'hardboard',
    ).optional(),
    'short-board': choice(
      ['drop-base', 'pack'],
      'What is done where the board is lower than the slab is thick.',
    ),
    note: publicText(
      'A line about this slab for the client.',
      'The two corners at the street are rounded.',
    ).optional(),
    'crew-note': crewText(
      'A line about this slab for the crew.',
      'Stretch the string from the porch step',
    ).optional(),
  });

const steps = () =>
  thing('steps', {
    label: publicText('What they are called on paper.', 'Step at the back door'),
    width: length(ABOVE_ZERO, 'Width of the flight and of its landing.', '5 ft'),
    risers: count(
      { least: 1, most: 30 },
      'How many steps up; between two heights as few as a model code allows if not given.',
      '2',
    ).optional(),
    riser: length(
      { ...ABOVE_ZERO, most: '2 ft' },
      'Height of one step; not where two heights give it.',
      '6 1/2 in',
    ).optional(),
    from: reference(
      'Id of the point of the heights at their foot: the new surface there.',
      'walk-end',
    ).optional(),
    to: reference(
      'Id of the point of the heights at their top: the landing, or what they end on.',
      'porch-floor',
    ).optional(),
    tread: length({ ...ABOVE_ZERO, most: '6 ft' }, 'Depth of one step.', '12 in'),
    'tread-fall': quantity(
      'slope',
      FROM_ZERO,
      'How much a tread falls to its front; level if not given.',
      '1/8 in per ft',
    ).optional(),
    landing: length(FROM_ZERO, 'Depth of the landing at the top; 0 in for none.', '3 ft'),
    room: length(
      ABOVE_ZERO,
      'The room for treads and landing along the ground, where it is tight.',
      '6 ft',
    ).optional(),
  });

/** What a plant adds to a mix. */
export const ADDITIVES = [
  'water-reducer',
  'retarder',
  'accelerator',
  'calcium-chloride',
  'fibers',
  'shrinkage-reducer',
] as const;

const mix = () =>
  thing('mix', {
    strength: quantity(
      'strength',
      { least: '1,000 psi' },
      'Compressive strength at 28 days; the published minimum for the exposure if not given.',
      '4000 psi',
    ).optional(),
    air: share(
      { ...FROM_ZERO, most: '12 %' },
      'Air content; the published one for the exposure and the largest stone if not given.',
      '6 %',
    ).optional(),
    'water-cement': times(
      { least: '0.3', most: '0.8' },
      'Water to cementitious material, by weight; nothing is held against its limit if not given.',
      '0.45',
    ).optional(),
    'fly-ash': share(
      { ...FROM_ZERO, most: '60 %' },
      'Of the cementitious material; none if not given.',
      '15 %',
    ).optional(),
    slag: share(
      { ...FROM_ZERO, most: '80 %' },
      'Of the cementitious material; none if not given.',
      '25 %',
    ).optional(),
    additives: z
      .array(choice(ADDITIVES, 'An additive.'))
      .meta({ description: 'What is added to the mix.', examples: [['fibers']] })
      .optional(),
    slump: length({ ...FROM_ZERO, most: '12 in' }, 'How far it sinks in the cone.', '4 in'),
    aggregate: length({ ...ABOVE_ZERO, most: '3 in' }, 'Largest stone.', '3/4 in'),
    exposure: choice(
      ['no-freezing', 'freezing', 'freezing-and-deicers'],
      'What the weather and the salt do to it.',
    ),
  });

/** What will be there. */
export const buildSection = lazily(() =>
  thing('build', {
    slabs: byId(slab(), 'The new slabs, each under an id.'),
    steps: byId(steps(), 'Straight flights of solid steps, each under an id.').optional(),
    mix: mix(),
  }),
);

export type BuildSection = z.output<ReturnType<typeof buildSection>>;
export type SlabInput = z.output<ReturnType<typeof slab>>;
