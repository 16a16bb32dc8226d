import type { Drawing, Layer } from './drawing.ts';
import { frame } from './plan-layers.ts';
import { profileFrame } from './profile-frame.ts';
import { axisPrimitives, lineNames, stationPrimitives } from './profile-letters.ts';
import { beyondLine, newLines, oldLines } from './profile-lines.ts';
import type { ProfileView } from './profile-view.ts';
import { titleStrip } from './strip.ts';

/**
 * What is there now against what will be, along a line: new top, underside of slab and base, old top and
 * what is left of the ground. Distances to scale, heights so many times as large as is written in its strip.
 *
 * @param view At least one reach.
 * @throws {RangeError} If nothing is met, a name uses a character outside the font, or no scale fits.
 */
export function drawProfile(view: ProfileView): Drawing {
  if (view.reaches.length === 0) throw new RangeError(`the profile ${view.id} meets no slab`);
  const placed = profileFrame(view);
  const { scale, times, bottomIn } = placed;
  const scaleText = view.words.profileScale(scale.text, `${times}`);
  const strip = titleStrip({
    title: view.title,
    widthIn: view.sheet.widthIn,
    scale,
    scaleText,
    system: view.system,
    lengthOf: view.words.lengthOf,
    north: null,
  });
  const heightIn = bottomIn + strip.heightIn;
  const layers: Layer[] = [
    { name: 'new-slab', primitives: view.reaches.flatMap((reach) => newLines(reach, placed)) },
    {
      name: 'existing-goes',
      primitives: [
        ...view.reaches.flatMap((reach) => oldLines(reach, placed)),
        ...beyondLine(view.beyond, placed),
      ],
    },
    { name: 'dimensions', primitives: axisPrimitives(view, placed) },
    { name: 'labels', primitives: [...stationPrimitives(view, placed), ...lineNames(view, placed)] },
    { name: 'frame', primitives: frame(view.sheet.widthIn, heightIn, bottomIn, strip.primitives) },
  ];
  return {
    id: view.id,
    title: view.title,
    widthIn: view.sheet.widthIn,
    heightIn,
    scale: { paperInPerIn: scale.paperInPerIn, text: scaleText },
    origin: placed.at(0, 0),
    layers,
  };
}
