/**
 * Batting as it is sold in packages, width by height in inches: trade habit, no standard. Editable data:
 * anyone can give other packages instead.
 */
export const BATTING_PACKAGES: readonly { readonly width: number; readonly height: number }[] = [
  { width: 45, height: 60 },
  { width: 72, height: 90 },
  { width: 81, height: 96 },
  { width: 90, height: 108 },
  { width: 120, height: 120 },
];
