import type { Length } from '../length/length.js';
import type { Notice } from '../plan/notice.js';
import type { Side } from '../plan/side.js';
import type { DrawingSentence } from './sentences.js';

/** A point in inches: `x` to the right, `y` down. */
export interface Point {
  readonly x: Length;
  readonly y: Length;
}

/** What an area stands for. */
export type AreaRole = 'fabric' | 'waste' | 'ruler' | 'outline';

/** What a line stands for. */
export type LineRole =
  | 'raw-edge'
  | 'finished-edge'
  | 'seam'
  | 'center-seam'
  | 'trim-line'
  | 'ruler-line'
  | 'diagonal'
  | 'selvage';

/** Words that stand in drawings; an element brings its own language's. */
export type DrawingWord =
  | 'finished'
  | 'trim to'
  | 'center'
  | 'center seam'
  | 'last seam'
  | 'trimmed edge'
  | 'hold'
  | 'selvage to selvage'
  | 'inside curve'
  | 'outside curve'
  | '1 inch'
  | '5 cm'
  | 'Print at 100 %.'
  | 'Measure both squares first.'
  | 'Never cut against paper.';

/** A filled polygon. */
export interface Area {
  readonly kind: 'area';
  readonly role: AreaRole;
  readonly points: readonly Point[];
  /** For `fabric`: which of the drawing's fabrics. */
  readonly fabric?: string;
}

/** A line from point to point. */
export interface Line {
  readonly kind: 'line';
  readonly role: LineRole;
  readonly points: readonly Point[];
}

/** A figure or a word in place, such as a log's number in the sewing order. */
export interface Label {
  readonly kind: 'label';
  readonly role: 'order' | 'cut' | 'hold';
  readonly at: Point;
  readonly text: { readonly count: number } | { readonly word: DrawingWord };
}

/** A dimension line outside the drawing, as in a technical drawing. */
export interface Dimension {
  readonly kind: 'dimension';
  readonly from: Point;
  readonly to: Point;
  /** The side of the drawing where it stands, and in which row from there, from 0. */
  readonly away: Side;
  readonly row: number;
  readonly measure: Length;
  readonly word?: DrawingWord;
}

/** Ruled marks along an edge, as on a ruler, counted from one end. */
export interface Scale {
  readonly kind: 'scale';
  /** The mark 0. */
  readonly from: Point;
  readonly to: Point;
  /** The side to which the marks point. */
  readonly toward: Side;
}

/** The one small vocabulary that every drawing is made of. */
export type Shape = Area | Line | Label | Dimension | Scale;

/** A drawing as data: shapes in inches with roles, painted in their order. */
export interface Drawing {
  readonly title: Notice<DrawingSentence>;
  readonly description: Notice<DrawingSentence>;
  /** The fabrics in it, in the order of their tints. */
  readonly fabrics: readonly string[];
  readonly shapes: readonly Shape[];
}
