import { HOLE_OVER_IN, jointSteel } from '../../src/calculate/edges/index.ts';
import type { BarMaterial, BarSize } from '../../src/calculate/job.ts';
import {
  barLapIn,
  barTable,
  chairSpacingFt,
  dragAreaSqInPerFt,
  meshTable,
  steelAreaSqInPerFt,
  wireDiameterIn,
} from '../../src/calculate/reinforcement/index.ts';
import { someBars } from '../calculate/slabs.ts';
import { runChecks } from './load.ts';

type Spaced = { size: BarSize; spacingIn: number };

function barsSqInPerFt({ size, spacingIn }: Spaced): number {
  return steelAreaSqInPerFt({ areaSqIn: barTable.steel[size].areaSqIn, spacingIn });
}

function sizes({ diameterIn, lengthIn, spacingIn }: ReturnType<typeof jointSteel>): readonly number[] {
  return [diameterIn, lengthIn, spacingIn];
}

runChecks('reinforcement', {
  dowels: (given) => sizes(jointSteel('dowelled', given.thicknessIn)),
  'tie bars': (given) => sizes(jointSteel('tied', given.thicknessIn)),
  'tie bars length and spacing': (given) => sizes(jointSteel('tied', given.thicknessIn)).slice(1),
  'hole wider than its bar in': () => HOLE_OVER_IN,
  'drag sq in per ft': (given) =>
    dragAreaSqInPerFt({
      frictionRatio: given.frictionRatio,
      lengthFt: given.lengthFt,
      weightLbPerSqFt: given.weightLbPerSqFt,
      stressPsi: given.stressPsi,
    }),
  'spacing drag bars were chosen at sq in per ft': (given: Spaced) => barsSqInPerFt(given),
  'wire diameter in': (given) => wireDiameterIn(given.wireNumber),
  'lightest style': (given: { wireSpacingIn: number }) => {
    const styles = Object.entries(meshTable).filter(([, row]) => row.wireSpacingIn === given.wireSpacingIn);
    return styles.sort(([, one], [, other]) => one.lbPer100SqFt - other.lbPer100SqFt)[0]?.[0] ?? '';
  },
  'glass fibre bar': (given: { size: BarSize }) => {
    const { diameterIn, areaSqIn, lbPerFt } = barTable['glass-fibre'][given.size];
    return [diameterIn, areaSqIn, lbPerFt];
  },
  'glass fibre weight over steel': (given: { size: BarSize }) =>
    barTable['glass-fibre'][given.size].lbPerFt / barTable.steel[given.size].lbPerFt,
  'chair spacing of glass fibre ft': (given: { size: BarSize }) =>
    chairSpacingFt(someBars({ size: given.size, material: 'glass-fibre' })),
  'lap in': (given: { material: BarMaterial; size: BarSize; diameters: number }) =>
    barLapIn({ lapDiameters: given.diameters, diameterIn: barTable[given.material][given.size].diameterIn }),
  'steel ratio': (given: Spaced & { thicknessIn: number }) => barsSqInPerFt(given) / (12 * given.thicknessIn),
  'sq in per ft of wires': (given) =>
    steelAreaSqInPerFt({ areaSqIn: given.areaSqIn, spacingIn: given.spacingIn }),
});
