import { num } from '../figure.ts';
import { LEVEL_ENOUGH_IN, type TreadFigures } from './split-figures.ts';

/** What has to be done to a tread, and whether what is laid there can be as thick or as thin. */
export type TreadWork = 'as-it-is' | 'lay' | 'too-thin' | 'too-thick' | 'not-said' | 'take-off';

/** Of a topping as thick as its thinnest or thickest, the noise of its arithmetic [in]. */
const NOISE_IN = 1e-9;

/** What is laid may be too thin or too thick only where the job says how thin and thick it may be. */
export function treadWork(tread: TreadFigures): TreadWork {
  if (num(tread['take-off']) >= LEVEL_ENOUGH_IN) return 'take-off';
  if (num(tread.add) < LEVEL_ENOUGH_IN) return 'as-it-is';
  const { 'too-thin-by': thin, 'too-thick-by': thick } = tread;
  if (thin === undefined || thick === undefined) return 'not-said';
  if (num(thin) > NOISE_IN) return 'too-thin';
  return num(thick) > NOISE_IN ? 'too-thick' : 'lay';
}
