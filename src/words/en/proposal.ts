import type { PublicText } from '../../problems/text.ts';
import { homeowner as h } from '../homeowner.ts';

type P = PublicText;

/** The homeowner proposal: plain words, no trade shorthand unexplained. */
export const proposal = {
  offer: (company: P, label: P, address: P, total: P) =>
    h`${company} offers to do this work at ${address}: ${label}. The whole of it, as written on these pages, costs ${total}.`,
  validUntil: h`Offer holds until`,
  startsOn: h`We start`,
  finishesOn: h`Forms off and clean`,
  walkOn: h`Walk on it from`,
  driveOn: h`Drive on it from`,
  preparedFor: h`Prepared for`,
  total: h`Price of the whole work`,
  next: {
    heading: h`What happens next`,
    read: h`Read the pages that follow; ask us about anything that is not clear.`,
    sign: h`Sign on the last page, and send us a copy. We countersign it.`,
    tick: h`Tick what you choose, sign on the last page, and send us a copy. We countersign it.`,
    marks: h`We have the underground lines marked before anything is broken out.`,
  },
  whatYouGet: {
    caption: h`What you get`,
    part: h`New`,
    size: h`Size`,
    thickness: h`Thickness`,
    surface: h`Surface`,
    risers: (count: P) => h`${count} risers`,
  },
  signing: h`Both signatures stand on the last page.`,
  water: {
    heading: h`Where the water will go`,
    arrows: h`An arrow points the way the water runs.`,
    planned: (towards: P, slope: P) => h`Towards ${towards}, ${slope}, as it is planned.`,
    measured: (towards: P, slope: P) => h`Towards ${towards}, ${slope} over all, from the heights we took.`,
    atHouse: {
      'from-it': (runs: P) => h`${runs} Beside the house it falls away from the wall.`,
      'to-it': (runs: P) =>
        h`${runs} A part of it falls towards the house, and we settle with you where that water goes.`,
    },
    stands: (runs: P, deep: P) =>
      h`${runs} Up to ${deep} of water would stand in a hollow, which we settle before forming.`,
  },
  areas: {
    heading: h`What we will do, area by area`,
    area: h`Area`,
    thickness: h`Thickness`,
    base: h`Stone base`,
    baseValue: (size: P) => h`${size} under it, compacted`,
    noBase: h`None laid; the ground there is kept`,
    fall: h`Water runs`,
    fallValue: (slope: P, towards: P) => h`towards ${towards}, ${slope}`,
    steel: h`Steel in the slab`,
    steelNone: h`None`,
    steelMesh: h`Welded wire mesh, held up on chairs`,
    bars: {
      steel: {
        bothWays: (spacing: P) => h`Steel bars every ${spacing} both ways, held up on chairs`,
        eachWay: (along: P, across: P) =>
          h`Steel bars every ${along} along and every ${across} across, held up on chairs`,
      },
      'glass-fibre': {
        bothWays: (spacing: P) => h`Glass fibre bars every ${spacing} both ways, held up on chairs`,
        eachWay: (along: P, across: P) =>
          h`Glass fibre bars every ${along} along and every ${across} across, held up on chairs`,
      },
    },
    finish: h`Surface`,
    finishes: {
      broom: h`Broomed, so that it is not slippery`,
      float: h`Floated, an even sandy face`,
      'exposed-aggregate': h`Stones of the mix washed free`,
    },
    joints: h`Control joints`,
    jointsValue: (spacing: P) =>
      h`Grooves at most ${spacing} apart, where the slab may crack in a straight line`,
    noJoints: h`None needed at this size`,
    curves: (radii: readonly P[]) =>
      radii.length === 1
        ? h`Curved with a radius of ${radii[0] as P}.`
        : h`Curved with radii of ${radii.join(', ') as P}.`,
    arrows: h`The arrows on the plan show which way water runs.`,
    fabric: h`A fabric between the ground and the stone keeps the two apart; the stone is as thick as it would be without it.`,
    house: h`Along the house a soft strip keeps the slab free of the wall.`,
    lid: (label: P) => h`${label}: set to the new height.`,
    pipe: (label: P) => h`${label}: laid in the ground under it before it is poured.`,
    stays: h`Where it meets concrete that stays, a soft strip keeps the two apart.`,
    dowels: h`Smooth pins into concrete that stays keep the two at one height and let both move.`,
    ties: h`Bars into concrete that stays tie the two together.`,
    steps: (risers: number, riser: P, tread: P, width: P) =>
      h`${risers} risers of ${riser}, treads of ${tread}, ${width} wide, solid concrete.`,
    stepsFact: h`Steps`,
    garageFact: h`Where the new concrete meets it`,
    garageBelow: (size: P) => h`it stays ${size} below the floor`,
    garageLevel: h`it comes up level with the floor`,
    drainFact: h`Water is led`,
    drainTo: (to: P) => h`through a pipe to ${to}`,
    drainOpen: h`nowhere yet; we settle this with you before work starts`,
    flightFact: h`Lowest step`,
    flightOne: (then: P, now: P) =>
      h`${then} high once the surface before it is new, ${now} now; the other steps stay as they are.`,
    flightFrom: (least: P, most: P, now: P) =>
      h`${least} to ${most} high once the surface before it is new, ${now} now; the other steps stay as they are.`,
    mix: h`Strength`,
    mixValue: (strength: P) => h`${strength} after 28 days`,
  },
  removal: {
    heading: h`What we take away`,
    item: (label: P, area: P, thickness: P) => h`${label}: ${area}, ${thickness} thick as measured.`,
    assumed: (label: P, area: P, thickness: P, thickest: P) =>
      h`${label}: ${area}, taken as ${thickness} thick, hauling planned for up to ${thickest}; we see the true thickness when the first edge is open.`,
    withCoating: (sentence: P, coating: P) => h`${sentence} ${coating}`,
    coatings: {
      paint: h`There is paint on it.`,
      sealer: h`There is a sealer on it.`,
      epoxy: h`There is an epoxy coat on it.`,
      tile: h`There is tile on it.`,
      overlay: h`There is an overlay on it.`,
    },
    hollow: (label: P, parts: readonly P[]) => h`${label}: ${parts.join(', ') as P}.`,
    walls: (height: P, thickness: P) => h`its walls, ${height} high and ${thickness} thick`,
    footing: h`the footing below them`,
    fills: { soil: h`the soil inside`, gravel: h`the gravel inside`, concrete: h`the concrete inside` },
    posts: (label: P, count: P) =>
      h`${label}: ${count} footings of concrete; the holes are filled in layers.`,
    oldSteps: (label: P, risers: P, width: P) => h`${label}: ${risers} steps, ${width} wide.`,
    chip: (label: P, area: P, thickness: P) =>
      h`${label}: ${area}, about ${thickness} thick, chipped off; the concrete under it stays.`,
    green: (label: P, volume: P) => h`${label}: ${volume} once it is cut and loaded.`,
    soil: (areas: readonly P[]) => h`Soil dug out so that the new base fits: under ${areas.join(', ') as P}.`,
    total: (tons: P) => h`Together about ${tons}, hauled to places that may take it.`,
    totalUpTo: (tons: P) =>
      h`Together up to about ${tons} if what nobody can see yet is as thick as it may be, hauled to places that may take it.`,
  },
  stays: h`What stays and is protected`,
  prices: {
    caption: h`Price`,
    part: h`Part of the work`,
    amount: h`Amount`,
    groups: {
      'tear-out-and-haul': h`Take out the old concrete, haul it away, dispose of it`,
      'base-and-forms': h`Dig, base, forms and steel`,
      concrete: h`Concrete, placed, finished and cured`,
      'finish-and-clean': h`Forms off, ground put back along the edges, clean up`,
      other: h`Permits and other costs of this job`,
    },
    minimum: h`Up to our minimum charge for coming out`,
    tax: h`Sales tax`,
    total: h`Total`,
  },
  payments: {
    caption: h`When you pay`,
    step: h`When this is done`,
    share: h`Share`,
    amount: h`Amount`,
    total: h`Total`,
  },
  hidden: {
    heading: h`Agreed prices for what nobody can see beforehand`,
    intro: h`If one of these shows up, work stops there, you are told and shown, and the price changes by the amount below. Nothing is added without your word in writing.`,
    caption: h`Agreed prices`,
    condition: h`If this shows up`,
    difference: h`Added to the price`,
    noChange: h`No change`,
  },
  notIncluded: h`What is not included`,
  calendar: {
    caption: h`Your calendar`,
    day: h`Day`,
    work: h`What happens`,
    use: h`What you cannot use`,
    /** On one line. */
    span: (first: P, last: P) => h`${first}\u00a0to\u00a0${last}`,
    cure: h`The concrete cures`,
    saw: h`We come back to cut the joints`,
    /** What happens on one day, joined. */
    sentence: (parts: readonly P[]) => parts.join('. ') as P,
    useWork: h`The area and its way in`,
    useKeepOff: h`Keep off the new concrete`,
    walk: h`You may walk on it`,
    drive: h`You may drive on it`,
    useWheels: h`No wheels yet`,
    nothing: h`Nothing`,
    weather: h`Rain or frost moves the days; we tell you the evening before. Holidays are not counted in these dates.`,
  },
  access: {
    heading: h`How we get in`,
    truck: (where: P) => h`Where our trucks and the trailer stand: ${where}.`,
    cars: h`Cars that sleep on the area move out before the first working day and stay out until the day written above.`,
  },
  before: {
    heading: h`Before we come`,
    items: [
      h`Move cars, pots, furniture and hoses off the area and one step around it.`,
      h`Switch off sprinklers near it from the day before until a day after the pour.`,
      h`Tell us about anything buried that you put in yourself: lamp wires, irrigation, drains, a fence for a dog. Public markers do not mark those.`,
      h`Keep children and pets inside while machines run.`,
    ],
  },
  about: {
    heading: h`What concrete does`,
    grooves: h`It shrinks as it dries. The grooves make most cracks run where they do not show; a hairline crack beside one can still come and is no fault.`,
    noGrooves: h`It shrinks as it dries. A hairline crack can come and is no fault.`,
    items: [
      h`Its colour is never quite even and never quite that of the slab beside it; it lightens over the first months.`,
      h`A crack that opens wide enough for a coin, or one side of which stands higher than the other, is a fault. Call us.`,
    ],
  },
  care: {
    heading: h`Care in the first month`,
    items: [h`No de-icing salt in the first winter; sand instead.`],
    curing: {
      'curing-compound': (date: P) =>
        h`Keep the curing film on until ${date}: no scrubbing, no dragging of furniture.`,
      'wet-cover': (date: P) => h`Leave the wet covers where they are until ${date}, and keep them wet.`,
      sheeting: (date: P) => h`Leave the sheeting where it is until ${date}.`,
    },
    sealerOn: (date: P) => h`A sealer, if wanted, goes on from ${date}, on a dry slab.`,
    trucksUntil: (date: P) => h`No truck of any kind on it before ${date}.`,
    cold: h`In cold weather all these days come later; we tell you when.`,
    estimated: h`These days follow the temperatures that are forecast, and are never sooner than our rules allow; a test of the concrete would count for more.`,
  },
  terms: {
    heading: h`Questions people ask`,
    valid: h`How long does this price hold?`,
    validAnswer: (date: P) => h`Until ${date}. After that, ask; material prices move.`,
    warranty: h`What do you stand behind?`,
    changes: h`What if I want something changed?`,
    changesAnswer: h`We write the change and its price down, you sign it, then we do it. Not the other way round.`,
    cancel: h`Can I change my mind?`,
    cancelAnswer: h`Your state may give you a right to cancel for some days after you sign at home. Ask us for the notice and check local law; this page does not decide it.`,
    permit: h`Who gets permits and who calls the line markers?`,
    permitAnswer: h`We do, where a permit is in the price. What the authority having jurisdiction asks for comes first.`,
    licence: h`Are you licensed and insured?`,
    licenceAnswer: (licence: P, insurance: P) => h`${licence}. ${insurance}.`,
  },
  standards: h`Sizes are as measured on site; strengths and joints follow published practice named on our calculation sheet. Local codes and the authority having jurisdiction decide.`,
  signatures: {
    heading: h`Signatures`,
    sentence: (label: P, total: P, number: P, revision: number) =>
      h`We agree on the work written here, ${label}, job ${number}, revision ${revision}, for ${total}.`,
    withHidden: (label: P, total: P, number: P, revision: number) =>
      h`We agree on the work written here, ${label}, job ${number}, revision ${revision}, for ${total}, and on the agreed prices for hidden conditions.`,
    owner: h`Homeowner`,
    company: (name: P) => h`For ${name}`,
    date: h`Date`,
  },
} as const;
