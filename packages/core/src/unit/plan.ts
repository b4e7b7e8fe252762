import type { Length } from '../length/length.js';
import type { Step, Warning } from '../plan/notice.js';
import type { Piece } from '../plan/piece.js';
import type { Size } from '../plan/size.js';
import type { UnitPoint } from './point.js';
import type { UnitSentence } from './sentences/all.js';

/** What is cut first. A `template` is cut out round a template from a rectangle of that size. */
export type CutShape = 'square' | 'rectangle' | 'strip' | 'triangle' | 'template';

/** The names of what is cut; an element brings its own language's. */
export type CutLabel =
  | 'square'
  | 'rectangle'
  | 'strip'
  | 'goose'
  | 'sky'
  | 'center'
  | 'corner'
  | 'side'
  | 'base'
  | 'large triangle'
  | 'diamond'
  | 'first strip set'
  | 'second strip set'
  | 'inside curve'
  | 'outside curve';

/** One kind of piece in one set of cuts. */
export interface UnitCut {
  readonly label: CutLabel;
  readonly fabric: string;
  readonly shape: CutShape;
  /** What to cut: on the grid, rounded up from `exact`. A strip's width is that of the fabric. */
  readonly width: Length;
  /** For a strip, its width across. */
  readonly height: Length;
  /** What was rounded up, once: the seams and the oversize are in it. */
  readonly exact: Size;
  readonly count: number;
  /** How often each is cut from corner to corner, before or after sewing. */
  readonly diagonalCuts: 0 | 1 | 2;
}

/** An arc of a patch, from the point of that index to the next one. */
export interface UnitArc {
  readonly from: number;
  readonly center: UnitPoint;
  readonly radius: Length;
}

/** A patch of the finished unit, where it lies. */
export interface UnitPatch {
  readonly fabric: string;
  readonly points: readonly UnitPoint[];
  /** Whether the threads run along the sides of the drawn unit, or at 45 degrees to them. */
  readonly grain: 'straight' | 'diagonal';
  readonly arc?: UnitArc;
}

/** A line of the ruler, measured on the trimmed unit from its top left corner. */
export interface TrimLine {
  readonly kind: 'line';
  /** `diagonal` is a seam at 45 degrees, `seam` one at another slant, `center` a centering line. */
  readonly role: 'diagonal' | 'seam' | 'center';
  readonly from: UnitPoint;
  readonly to: UnitPoint;
}

/** Where a point, or the crossing of seams, lies on the trimmed unit. */
export interface TrimPoint {
  readonly kind: 'point';
  readonly role: 'point' | 'crossing';
  readonly at: UnitPoint;
}

/** What to lay on the ruler when a unit is trimmed: a line, or a point. */
export type TrimMark = TrimLine | TrimPoint;

/** Edges of patches that lie on the bias, in one unit. They stretch. */
export interface BiasEdges {
  /** On the outside of the unit. */
  readonly outside: number;
  /** In its seams; each side of a seam counts. */
  readonly seams: number;
  /** Whether those in the seams are sewn before they are cut, so that nobody handles them. */
  readonly sewnFirst: boolean;
}

/** How a shape is cut from a strip. */
export interface StripCuts {
  /** The width of the strip: on the grid. */
  readonly width: Length;
  /** The usable width of the fabric: how long the strip is. */
  readonly usable: Length;
  /** What the first angled cut takes off the strip's end. */
  readonly first: Length;
  /** How far apart the cuts are, along the strip's edge: for the plan, not for the person. */
  readonly step: Length;
  /** The ruler's line that is laid on the cut edge: on the grid. */
  readonly rulerLine: Length;
  /** How many a strip of the usable width yields. */
  readonly perStrip: number;
}

/** The corners that stitch and flip cuts away, sewn in pairs. */
export interface BonusTriangles {
  /** The half-square triangles' finished side. */
  readonly finished: Length;
  /** How many, of all units. */
  readonly count: number;
}

/** A template with its seam allowance: straight sides and one arc about `center`. */
export interface CurveTemplate {
  readonly piece: CutLabel;
  /** From corner to corner, in inches from the top left corner of its square. */
  readonly points: readonly UnitPoint[];
  readonly center: UnitPoint;
  readonly radius: Length;
  /** Which point the arc begins at; it ends at the next one. */
  readonly arcFrom: number;
}

/** Two lengths between which a value lies that is not exact by nature. */
export interface Enclosure {
  readonly least: Length;
  readonly most: Length;
}

/** A pieced unit in numbers to cut, sew and trim by. Lengths are exact inches. */
export interface UnitPlan {
  /** The unit's name in the registry. */
  readonly unit: string;
  readonly method: string;
  readonly finished: Size;
  readonly seam: Length;
  readonly grid: Length;
  readonly oversize: Length;
  /** The units asked for. */
  readonly count: number;
  /** One set of cuts. */
  readonly cuts: readonly UnitCut[];
  /** Units from one set of cuts. */
  readonly yield: number;
  /** Sets of cuts for `count` units. */
  readonly sets: number;
  /** Units that those sets make beyond `count`. */
  readonly leftOver: number;
  /** The unfinished unit, raw edge to raw edge; not rounded. */
  readonly trimTo: Size;
  readonly trim: readonly TrimMark[];
  /** The corners of the finished unit. */
  readonly outline: readonly UnitPoint[];
  readonly patches: readonly UnitPatch[];
  readonly bias: BiasEdges;
  /** Lines of sewing in one set. */
  readonly seams: number;
  /** How often something is squared up in one set. */
  readonly trims: number;
  /** Where the shape is cut from strips. */
  readonly strip?: StripCuts;
  readonly bonus?: BonusTriangles;
  /** What cannot be rotary cut, in the order of its patches. */
  readonly templates?: readonly CurveTemplate[];
  /** Whether a number in it is an enclosure rounded outward, because it is not exact by nature. */
  readonly approximate: boolean;
  /** What all units take, ready for a cutting plan. */
  readonly pieces: readonly Piece[];
  readonly steps: readonly Step<UnitSentence>[];
  readonly warnings: readonly Warning<UnitSentence>[];
}
