export { type CheckedFigures, calcChecks } from './checked-figures.ts';
export { evaluateRules, type Finding, isBeyond } from './evaluate-rules.ts';
export { ruleTags } from './tags.ts';
