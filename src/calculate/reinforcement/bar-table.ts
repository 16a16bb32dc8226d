import type { BarSize } from '../job.ts';

/*
 * Deformed bars, ASTM A615: nominal diameter, area and weight as in the PCI Design Handbook,
 * 7th edition, Design Aid 15.4.1, and Concrete Construction, "Rebar size and weights" (both seen).
 */

export type BarRow = { readonly diameterIn: number; readonly areaSqIn: number; readonly lbPerFt: number };

export const barTable: Readonly<Record<BarSize, BarRow>> = {
  3: { diameterIn: 0.375, areaSqIn: 0.11, lbPerFt: 0.376 },
  4: { diameterIn: 0.5, areaSqIn: 0.2, lbPerFt: 0.668 },
  5: { diameterIn: 0.625, areaSqIn: 0.31, lbPerFt: 1.043 },
};

export const BAR_SOURCE = 'ASTM A615 in the PCI Design Handbook, 7th ed., Design Aid 15.4.1 (seen)';
