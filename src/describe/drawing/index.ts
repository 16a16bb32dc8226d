export type {
  DotPrimitive,
  Drawing,
  HatchPrimitive,
  Layer,
  LayerName,
  LinePrimitive,
  PaperPoint,
  PathPart,
  PathPrimitive,
  Primitive,
  Scale,
  TextPrimitive,
} from './drawing.ts';
export { drawPlan } from './plan.ts';
export type { Fall, PhotoPoint, PlanArea, PlanView } from './plan-view.ts';
export { drawProfile } from './profile.ts';
export type { ProfileView } from './profile-view.ts';
export type { UnitSystem } from './scales.ts';
