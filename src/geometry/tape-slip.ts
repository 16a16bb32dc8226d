/** A way a tape reading often goes wrong, and how far the change is from just that. */
export type TapeSlip = {
  readonly kind: 'whole-foot' | 'swapped-digits' | 'six-for-nine';
  readonly offIn: number;
};

/** How near a change must come to a slip [in]; readings are to 1/4 in or finer. Common practice, no source. */
const NEAR_IN = 0.25;

/**
 * The slip that would explain a reading, if any.
 *
 * - `whole-foot`: off by one foot or more, whole ones: the foot mark was read wrong.
 * - `swapped-digits`: two digits beside each other exchanged, in a reading noted in whole inches.
 * - `six-for-nine`: a 6 taken for a 9 or the other way, in the inches, all of them or past the last foot.
 *
 * Whole inches tell nothing: one change in two comes within 1/4 in of one.
 *
 * @param reading.tapedIn   As noted [in], above 0.
 * @param reading.wouldBeIn As it would have to be [in], above 0.
 *
 * Sources: exchanged digits are a typical blunder: fountainware.com, help page "Blunder Errors" (seen);
 * six and nine mistaken for each other: JoVE, "Introduction to Surveying" ch. 24, Errors in taping (seen);
 * the wrong foot mark: common practice, no source.
 */
export function tapeSlipOf(reading: {
  readonly tapedIn: number;
  readonly wouldBeIn: number;
}): TapeSlip | null {
  const changeIn = reading.wouldBeIn - reading.tapedIn;
  const wholeIn = Math.floor(reading.tapedIn);
  const feetIn = 12 * Math.round(changeIn / 12);
  return (
    slip('whole-foot', [feetIn], changeIn) ??
    slip('swapped-digits', swapsOf(wholeIn), changeIn) ??
    slip('six-for-nine', sixForNine(wholeIn), changeIn)
  );
}

function slip(kind: TapeSlip['kind'], changesIn: readonly number[], changeIn: number): TapeSlip | null {
  const offsIn = changesIn.filter((byIn) => byIn !== 0).map((byIn) => Math.abs(changeIn - byIn));
  const offIn = Math.min(...offsIn);
  return offIn <= NEAR_IN ? { kind, offIn } : null;
}

/** What each exchange of two digits side by side would change [in]. */
function swapsOf(wholeIn: number): number[] {
  const digits = String(wholeIn);
  return [...digits].slice(1).map((digit, index) => {
    const swapped = digits.slice(0, index) + digit + digits.charAt(index) + digits.slice(index + 2);
    return Number(swapped) - wholeIn;
  });
}

/** What taking each 6 for a 9, or 9 for a 6, would change [in]: digits of all the inches, or past the foot. */
function sixForNine(wholeIn: number): number[] {
  const digits = [...String(wholeIn)];
  const changesIn = digits.flatMap((digit, index) => {
    const placeIn = 10 ** (digits.length - 1 - index);
    return digit === '6' ? [3 * placeIn] : digit === '9' ? [-3 * placeIn] : [];
  });
  const pastFootIn = wholeIn % 12;
  if (pastFootIn === 6) changesIn.push(3);
  if (pastFootIn === 9) changesIn.push(-3);
  return changesIn;
}
