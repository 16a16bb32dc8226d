export { drawingToDxf } from './dxf.ts';
