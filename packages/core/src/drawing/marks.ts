import type { AreaRole, LineRole } from './drawing.js';

/** What a mark stands for: the hook for its color and line, in a style sheet or by `look`. */
export type MarkRole =
  | AreaRole
  | LineRole
  | 'hatch'
  | 'measure'
  | 'extension'
  | 'scale'
  | 'order'
  | 'cut'
  | 'hold';

/** A path, in inches. */
export interface PathMark {
  readonly kind: 'path';
  readonly role: MarkRole;
  readonly d: string;
  /** For fabrics: the place of its tint, from 0. */
  readonly tint?: number;
}

/** A text centered on its height, in inches. */
export interface TextMark {
  readonly kind: 'text';
  readonly role: MarkRole;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Whether it reads upward. */
  readonly upward: boolean;
  readonly text: string;
}

/** All that is left to do for a painter of any kind: draw these in order. */
export type Mark = PathMark | TextMark;

/** A drawing in marks, and the rectangle of inches that holds them. */
export interface Painting {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}
