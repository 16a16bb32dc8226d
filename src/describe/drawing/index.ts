export type {
  DotPrimitive,
  Drawing,
  HatchPrimitive,
  Layer,
  LayerName,
  LinePrimitive,
  PathPart,
  PathPrimitive,
  Primitive,
  Scale,
  TextPrimitive,
} from './drawing.ts';
export { drawPlan, type PlanArea, type PlanView } from './plan.ts';
export type { UnitSystem } from './scales.ts';
