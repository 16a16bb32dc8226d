/** Parts of walls in the crew work order. */
export const walls = {
  caption: 'Parts of walls that stay clear of what is beside them',
  part: 'Part',
  beside: 'Beside it',
  earth: 'earth',
  height: 'Lowest edge',
  surface: 'Surface there',
  clear: 'Clear by',
  buried: (size: string) => `covered by ${size}`,
  least: 'At least',
  open: 'not covered',
} as const;
