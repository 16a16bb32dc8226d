/** Steps in the crew work order: those that stay, and those that are built. */
export const flights = {
  stays: {
    caption: 'Steps that stay: what the new surface at their foot does to the lowest one',
    flight: 'Steps',
    spot: 'Seen from below',
    spots: { left: 'Left end', middle: 'Middle', right: 'Right end' },
    now: 'Lowest step now',
    afterwards: 'Then',
    surface: 'New surface there',
    asPlanned: 'as planned',
    lower: (size: string) => `at least ${size} lower`,
    higher: (size: string) => `at least ${size} higher`,
    noHelp: 'no height helps',
    others: (sizes: string) => `The others from the bottom up, as they are: ${sizes}.`,
    and: ', ',
    difference: (now: string, then: string, limit: string) =>
      `Highest step less lowest: ${now} now, ${then} then; a model code allows ${limit}, and the local code decides.`,
    othersUneven:
      'The steps above the lowest are uneven or high by themselves, so no height of the surface makes this flight even.',
    mustRise: (least: string, most: string) =>
      `The lowest step is high as it is: the surface has to come up ${least} to ${most} against what is there now, or steps have to be changed.`,
    mustDrop: (least: string, most: string) =>
      `The lowest step is low as it is: the surface has to go down ${least} to ${most} against what is there now, or steps have to be changed.`,
    steep: 'The surface slopes too much along the step: bring its ends closer together.',
    mayMove: (rise: string, drop: string) =>
      `The surface may come up ${rise} or go down ${drop} against what is there now, and no step has to be touched.`,
  },
  tops: {
    caption: 'Steps to build: tops of the forms above the surface at the foot',
    flight: 'Steps',
    part: 'From the bottom up',
    tread: (number: string) => `Tread ${number}`,
    landing: 'Landing, front',
    top: 'What they end on',
    front: 'Front',
    back: 'Back',
    none: '',
    height: 'Front, against the datum',
    form: (count: string, form: string, tread: string) =>
      `${count} forms of ${form}; each tread rises ${tread} to its back.`,
    level: (count: string, form: string) => `${count} forms of ${form}; treads level.`,
  },
  splits: {
    caption: 'The same steps made equal instead: treads from the bottom up',
    flight: 'Steps',
    landing: 'Landing',
    asItIs: 'as it is',
    raised: (size: string) => `${size} laid on it`,
    each: 'Each step',
    tread: 'Tread',
    change: 'Change',
    up: (size: string) => `up ${size}`,
    down: (size: string) => `down ${size}`,
    none: 'none',
    work: 'Can it be done',
    works: {
      'as-it-is': 'leave it',
      lay: 'yes, lay it',
      'too-thin': 'no, too thin to lay',
      'too-thick': 'no, too thick to lay',
      'not-said': 'if what is laid may be that thick',
      'take-off': 'only by taking concrete off',
    },
    topping: (thinnest: string, thickest: string) => `What is laid is ${thinnest} to ${thickest} thick.`,
  },
} as const;
