import { lbPerCuYdToLbPerCuFt } from '../../units/index.ts';
import type { Material } from '../job.ts';
import { swellRatio } from './swell.ts';
import { unitWeightOfPavingLbPerCuFt } from './weight.ts';

/*
 * Unit weights in place and swell of what goes. Heavy values are taken on purpose: they set the
 * weight of a load. A job may give a unit weight of its own.
 *
 * concrete  4,050 lb/yd3 solid, which is 150 lb/cu ft: "C&D Debris Weight to Volume Conversion"
 *           training sheet, docslib.org/doc/8340850 (seen). Plain concrete is published as 140
 *           (Concrete Masonry Association of California and Nevada, "Density", seen) and 144
 *           (ASCE 7 commentary, table of minimum densities, from memory), with steel as 145 to 150
 *           ("Densities for Common Residential Construction Materials", seen). Light mesh does not
 *           change the weight; one value serves for plain and reinforced.
 *           Swell 60 % is common practice for slab pieces in a box; published values bracket it:
 *           blasted rock 50 % (US Army FM 5-434, table 1-1, from memory), and 69 % from 2,400 lb/yd3
 *           loose (California waste agency, C&D site tools, "Calculations", seen). Plates thrown in
 *           on edge reach 125 % (1,800 lb/yd3: City of Oakland, "C&D Materials Conversion
 *           Worksheet", seen).
 * brick     130 lb/cu ft, hard brick masonry: ASCE 7 commentary, the same table (from memory), the
 *           upper end of 100 to 130 in "Densities for Common Residential Construction Materials"
 *           (seen). Loose 0.7 ton/yd3, brick, broken: City of Oakland worksheet (seen).
 * block     hollow concrete block. 135 lb/cu ft of block concrete, the upper end of 85 to 135 (Concrete
 *           Masonry Association of California and Nevada, "Density", and "Densities for Common
 *           Residential Construction Materials"; both seen). Of the wall 55 % is solid: common practice
 *           for units 8 in wide, no source; a unit is hollow below 75 % (ASTM C90 until 2023, told in
 *           ASTM work item WK89380, seen). Cells that are filled are heavier: the job says its own unit
 *           weight. Loose 0.6 ton/yd3, block, broken: City of Oakland worksheet (seen).
 * asphalt   115 lb an inch and square yard (4,140 lb/yd3): training sheet as for concrete (seen).
 *           Loose 2,400 lb/yd3, debris, asphalt or concrete: California waste agency (seen).
 * soil      3,400 lb/yd3 in place and 2,700 loose, a swell of 26 %: a worked haul problem on
 *           expertsmind.com, question 30170401 (seen), which gives both states of one moist soil.
 *           The California waste agency's earth (2,100 lb/yd3 loose and dry, plus 30 % when
 *           compacted: 2,730; seen) is dry; what lies under a slab is not, and a load counted as
 *           dry soil would go over its payload. The same page has 3,000 lb/yd3 for wet earth once
 *           excavated (seen).
 * gravel    120 lb/cu ft, sand and gravel, wet: ASCE 7 commentary, table of minimum densities (from
 *           memory). Swell 15 %, sand and gravel: estimating textbook ch. 9, issuhub.com id 4050 (seen).
 *           Loose that is 2,817 lb/yd3, between 2,600 dry and 3,120 wet (2,600 and 20 %: California
 *           waste agency, seen).
 */

/** Share of a wall of hollow block that is solid; common practice for units 8 in wide, no source. */
const BLOCK_SOLID_RATIO = 0.55;
const BLOCK_LB_PER_CU_FT = 135 * BLOCK_SOLID_RATIO;

export type MaterialRow = {
  readonly unitWeightLbPerCuFt: number;
  readonly unitWeightSource: string;
  readonly swellRatio: number;
  readonly swellSource: string;
};

export const MATERIALS: Readonly<Record<Material | 'soil' | 'gravel', MaterialRow>> = {
  concrete: {
    unitWeightLbPerCuFt: lbPerCuYdToLbPerCuFt(4050),
    unitWeightSource:
      '"C&D Debris Weight to Volume Conversion" training sheet: concrete, solid, 4,050 lb/yd3 (seen)',
    swellRatio: 0.6,
    swellSource: 'common practice for slab pieces, no source; published values run from 50 % to 125 %',
  },
  brick: {
    unitWeightLbPerCuFt: 130,
    unitWeightSource: 'ASCE 7 commentary, table of minimum densities: brick masonry, hard (from memory)',
    swellRatio: swellRatio({ inPlace: 130 * 27, loose: 1400 }),
    swellSource:
      'City of Oakland, "C&D Materials Conversion Worksheet": brick, broken, 0.7 ton/yd3 (seen), against 130 lb/cu ft in place',
  },
  block: {
    unitWeightLbPerCuFt: BLOCK_LB_PER_CU_FT,
    unitWeightSource:
      '135 lb/cu ft of block concrete ("Densities for Common Residential Construction Materials", seen), of which 55 % is there in hollow block (common practice, no source)',
    swellRatio: swellRatio({ inPlace: BLOCK_LB_PER_CU_FT * 27, loose: 1200 }),
    swellSource:
      'City of Oakland, "C&D Materials Conversion Worksheet": block, broken, 0.6 ton/yd3 (seen), against the unit weight of the wall',
  },
  asphalt: {
    unitWeightLbPerCuFt: unitWeightOfPavingLbPerCuFt(115),
    unitWeightSource:
      '"C&D Debris Weight to Volume Conversion" training sheet: asphalt pavement, 115 lb an inch and sq yd (seen)',
    swellRatio: swellRatio({ inPlace: 4140, loose: 2400 }),
    swellSource:
      'California waste agency, C&D site tools, "Calculations": debris, asphalt or concrete, 2,400 lb/yd3 loose (seen), against 4,140 in place',
  },
  soil: {
    unitWeightLbPerCuFt: lbPerCuYdToLbPerCuFt(3400),
    unitWeightSource:
      'worked haul problem, expertsmind.com question 30170401: soil 3,400 lb/yd3 in place, 2,700 loose (seen)',
    swellRatio: swellRatio({ inPlace: 3400, loose: 2700 }),
    swellSource:
      'worked haul problem, expertsmind.com question 30170401: soil 3,400 lb/yd3 in place, 2,700 loose (seen)',
  },
  gravel: {
    unitWeightLbPerCuFt: 120,
    unitWeightSource: 'ASCE 7 commentary, table of minimum densities: sand and gravel, wet (from memory)',
    swellRatio: 0.15,
    swellSource: 'estimating textbook ch. 9, issuhub.com id 4050: sand and gravel swell 15 % (seen)',
  },
};
