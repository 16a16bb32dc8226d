/*
 * Layers on concrete that goes, by their unit weight in place.
 *
 * overlay  130 lb/cu ft, mortar of cement: ASCE 7 commentary, table of minimum densities (from
 *          memory).
 * tile     16 lb/sq ft for 3/4 in of ceramic or quarry tile on 1/2 in of mortar bed, which is
 *          153.6 lb/cu ft of both: ASCE 7 commentary, table of minimum design dead loads (from
 *          memory). The thickness is that of the tile with its bed.
 *
 * Both break up like concrete, so they swell like it. Paint, sealer and epoxy are films: their weight
 * is nothing beside the slab.
 *
 * All five send the concrete to the coated stream, paint and a clear sealer too: yards often refuse
 * concrete with anything on its face as clean, and a refused load costs more than the dearer fee
 * (common practice, no source).
 */
export const LAYERS = {
  overlay: {
    unitWeightLbPerCuFt: 130,
    source: 'ASCE 7 commentary, table of minimum densities: mortar, cement or lime (from memory)',
  },
  tile: {
    unitWeightLbPerCuFt: 16 / ((3 / 4 + 1 / 2) / 12),
    source:
      'ASCE 7 commentary, table of minimum design dead loads: ceramic or quarry tile, 3/4 in on 1/2 in of mortar bed, 16 lb/sq ft (from memory)',
  },
} as const;
