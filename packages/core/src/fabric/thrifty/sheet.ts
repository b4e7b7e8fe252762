/** The pieces that may lie in rows of one width. */
export interface Level {
  /** The width of the rows, down the fabric. */
  readonly height: number;
  /** Which pieces, by their places among the sizes, longest first. */
  readonly items: readonly number[];
  /** How long each of them lies along the row. */
  readonly sizes: readonly number[];
}

/**
 * A thrifty plan's problem in whole units: cut every size as often as it is needed from strips that
 * are as wide as one of the pieces, and use little fabric. A strip is cut across into sections, a
 * section along into rows, a row across into pieces as wide as the row.
 */
export interface Sheet {
  /** What a row across the whole fabric holds. */
  readonly capacity: number;
  readonly demands: readonly number[];
  /** Widest first; a piece that may be turned stands in two. */
  readonly levels: readonly Level[];
  /** Heights of pieces that lie so high at least, however they lie: at most a few rows fit a strip. */
  readonly tall: readonly number[];
}

/** A row of a section: its level, and how many of each of the level's pieces. */
export interface Row {
  readonly level: number;
  readonly pattern: readonly number[];
}

/** A strip: its level, and the rows of each of its sections. */
export interface Layout {
  readonly level: number;
  readonly sections: readonly (readonly Row[])[];
  /** How many of each size it gives. */
  readonly counts: readonly number[];
}
