export { type CheckedFigures, calcChecks } from './checked-figures.ts';
export { evaluateRules, type Finding, isBeyond } from './evaluate-rules.ts';
export { COMMERCIAL_VEHICLE_LB, combinationRatingLb, towedOfHeavyLb } from './fleet-figures.ts';
export { ruleTags } from './tags.ts';
