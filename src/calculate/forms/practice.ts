/** Width of a saw cut where the company gives none. */
export const SAW_KERF = { widthIn: 1 / 8, source: 'common practice, no source: a framing saw cuts 1/8 in' };

/** Stake to stake behind a thin strip where the company gives nothing: the middle of the range. */
export const STRIP_STAKES = {
  spacingIn: 18,
  source:
    'Masonry and Concrete (2004), fig. 3-16, after the Portland Cement Association (seen): 12 to 24 in on short-radius curves; the middle is taken',
};

/** Stake to stake behind a board sawn to bend, where the company gives nothing: the near end of the range. */
export const BENT_BOARD_STAKES = {
  spacingIn: 24,
  source:
    'Masonry and Concrete (2004), fig. 3-16, after the Portland Cement Association (seen): 2 to 3 ft on long-radius curves in lumber; the nearer is taken',
};

/** A kicker is one stake laid as the brace and one driven behind to hold it. */
export const STAKES_PER_KICKER = {
  count: 2,
  source: 'common practice, no source: a stake as the brace, and one driven to hold it',
};

/** The face of a strip is flush with the straight form where that one's last stake stands back by the strip. */
export const SETBACK_SOURCE = 'common practice, no source: the faces of strip and board are flush';
