import type { BarMaterial, BarSize } from '../job.ts';

/*
 * Steel: deformed bars, ASTM A615, nominal diameter, area and weight as in the PCI Design Handbook,
 * 7th edition, Design Aid 15.4.1, and Concrete Construction, "Rebar size and weights" (both seen).
 *
 * Glass fibre: solid round bars, ASTM D7957, which has the nominal diameters and areas of steel (memory). A
 * weight is not in the standard: it is the area at 131 lb/cu ft, the upper density of ACI 440.1R, table 4.1
 * (memory), a little above the quarter of steel that the Florida DOT gives (seen).
 */

export type BarRow = { readonly diameterIn: number; readonly areaSqIn: number; readonly lbPerFt: number };

const steel: Readonly<Record<BarSize, BarRow>> = {
  3: { diameterIn: 0.375, areaSqIn: 0.11, lbPerFt: 0.376 },
  4: { diameterIn: 0.5, areaSqIn: 0.2, lbPerFt: 0.668 },
  5: { diameterIn: 0.625, areaSqIn: 0.31, lbPerFt: 1.043 },
};

const glassFibre: Readonly<Record<BarSize, BarRow>> = {
  3: { diameterIn: 0.375, areaSqIn: 0.11, lbPerFt: 0.1 },
  4: { diameterIn: 0.5, areaSqIn: 0.2, lbPerFt: 0.18 },
  5: { diameterIn: 0.625, areaSqIn: 0.31, lbPerFt: 0.28 },
};

export const barTable: Readonly<Record<BarMaterial, Readonly<Record<BarSize, BarRow>>>> = {
  steel,
  'glass-fibre': glassFibre,
};

export const BAR_SOURCE: Readonly<Record<BarMaterial, string>> = {
  steel: 'ASTM A615 in the PCI Design Handbook, 7th ed., Design Aid 15.4.1 (seen)',
  'glass-fibre':
    'ASTM D7957, nominal diameters and areas; weight at 131 lb/cu ft, ACI 440.1R, table 4.1 (both from memory)',
};

/** What a saw takes of a glass fibre bar where the company says nothing [in]: it is never sheared. */
export const GLASS_FIBRE_KERF = {
  lengthIn: 1 / 8,
  source: 'ACI 440.5: cut with a saw, not sheared (memory); width of the cut common practice, no source',
} as const;
