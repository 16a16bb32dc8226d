import { arcOf, pointOnArc } from './arc.ts';
import { edgesOf, type Point, type Ring } from './outline.ts';

export type Chord = { readonly edgeNumber: number; readonly from: Point; readonly to: Point };

/** Sixty-four chords to a full circle: on a 3 ft radius they leave the arc by less than 1/16 in. */
const chordSweepRad = Math.PI / 32;

const chordsOfRing = new WeakMap<Ring, readonly Chord[]>();

/** The ring as straight chords, each knowing the edge it came from. For drawing and for crossings only. */
export function chordsOf(ring: Ring): readonly Chord[] {
  const known = chordsOfRing.get(ring);
  if (known !== undefined) return known;
  const chords = cutIntoChords(ring);
  chordsOfRing.set(ring, chords);
  return chords;
}

function cutIntoChords(ring: Ring): readonly Chord[] {
  return edgesOf(ring).flatMap((edge): Chord[] => {
    if (edge.from.bulge === 0) return [{ edgeNumber: edge.number, from: edge.from, to: edge.to }];
    const arc = arcOf(edge.from, edge.to);
    const count = Math.ceil(Math.abs(arc.sweepRad) / chordSweepRad);
    return Array.from({ length: count }, (_, step) => ({
      edgeNumber: edge.number,
      from: step === 0 ? edge.from : pointOnArc(arc, step / count),
      to: step === count - 1 ? edge.to : pointOnArc(arc, (step + 1) / count),
    }));
  });
}
