import { ceilCount } from '../../units/index.ts';

type Sides = { readonly lengthIn: number; readonly widthIn: number };

/**
 * Sheets that cover one side of a box, each over the one before by the lap.
 *
 * @param made.sideIn  Side to cover [in], above 0.
 * @param made.sheetIn Side of the sheet that runs along it [in], above the lap.
 * @param made.lapIn   [in], 0 or more.
 * @throws {RangeError} If a value is outside its range.
 *
 * n = ceil((L - lap) / (sheet - lap)), at least 1.
 */
export function sheetsAlong(made: { sideIn: number; sheetIn: number; lapIn: number }): number {
  const { sideIn, sheetIn, lapIn } = made;
  if (!(sideIn > 0 && sideIn < Infinity)) throw new RangeError(`sideIn must be above 0, got ${sideIn}`);
  if (!(lapIn >= 0 && lapIn < sheetIn && sheetIn < Infinity)) {
    throw new RangeError(`lapIn must be 0 or more and below the sheet of ${sheetIn}, got ${lapIn}`);
  }
  return Math.max(1, ceilCount((sideIn - lapIn) / (sheetIn - lapIn)));
}

/**
 * Whole sheets laid over a box with the lap each way, in the turning that takes fewer.
 *
 * @throws {RangeError} As `sheetsAlong`.
 */
export function meshSheetCount(made: {
  readonly box: Sides;
  readonly sheet: Sides;
  readonly lapIn: number;
}): number {
  const { box, sheet, lapIn } = made;
  const laid = (alongIn: number, acrossIn: number) =>
    sheetsAlong({ sideIn: box.lengthIn, sheetIn: alongIn, lapIn }) *
    sheetsAlong({ sideIn: box.widthIn, sheetIn: acrossIn, lapIn });
  return Math.min(laid(sheet.lengthIn, sheet.widthIn), laid(sheet.widthIn, sheet.lengthIn));
}

/**
 * Weight of whole sheets by the published weight of the style.
 *
 * @throws {RangeError} If a value is below 0 or not finite.
 */
export function meshWeightLb(made: { sheetCount: number; sheet: Sides; lbPer100SqFt: number }): number {
  const { sheetCount, lbPer100SqFt } = made;
  const { lengthIn, widthIn } = made.sheet;
  for (const [name, value] of Object.entries({ sheetCount, lengthIn, widthIn, lbPer100SqFt })) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  return (((sheetCount * lengthIn * widthIn) / 144) * lbPer100SqFt) / 100;
}

/**
 * Length of roll that is laid in strips side by side over a box, in the turning that takes less.
 *
 * @throws {RangeError} As `sheetsAlong`.
 *
 * Strips = ceil((side - lap) / (width - lap)), each as long as the other side.
 */
export function meshStripsIn(made: { box: Sides; rollWidthIn: number; lapIn: number }): number {
  const { box, rollWidthIn: sheetIn, lapIn } = made;
  return Math.min(
    sheetsAlong({ sideIn: box.widthIn, sheetIn, lapIn }) * box.lengthIn,
    sheetsAlong({ sideIn: box.lengthIn, sheetIn, lapIn }) * box.widthIn,
  );
}
