import { EighthsError } from '../errors/error.js';
import { type Length, length } from '../length/length.js';
import { choiceField } from '../plan/field.js';
import { areaOf } from '../plan/piece.js';
import type { SizeInput } from '../plan/size.js';
import type { UnitCut, UnitPlan } from './plan.js';
import { unitNames } from './planUnit.js';
import { polygonArea } from './point.js';
import type { UnitSpec } from './spec.js';
import { UNITS, type UnitName } from './units.js';

/** One method for a number of units, in numbers to compare. Areas are square inches. */
export interface MethodComparison {
  readonly method: string;
  readonly plan: UnitPlan;
  readonly cuts: readonly UnitCut[];
  readonly sets: number;
  readonly leftOver: number;
  /** The area of all pieces. */
  readonly fabric: Length;
  /** The part of it that shows in the finished units. */
  readonly shows: Length;
  /** The rest: seam allowances, what is trimmed or cut away, units left over. */
  readonly waste: Length;
  /** Edges on the bias that somebody handles before they are sewn, in all units. */
  readonly biasEdges: number;
  /** Edges on the bias on the outside of all units. */
  readonly biasOutside: number;
  /** Lines of sewing, in all sets. */
  readonly seams: number;
  /** How often something is squared up, in all sets. */
  readonly trims: number;
}

/** A method that does not make this unit in this size, and why. */
export interface MethodRefusal {
  readonly method: string;
  readonly error: EighthsError;
}

/** The methods that make a unit, and those that don't. */
export interface UnitComparison {
  readonly methods: readonly MethodComparison[];
  readonly refused: readonly MethodRefusal[];
}

function compared(plan: UnitPlan): MethodComparison {
  const { method, cuts, sets, leftOver, bias, count } = plan;
  const fabric = areaOf(plan.pieces);
  const shows = plan.patches
    .reduce((sum, { points }) => sum.plus(polygonArea(points)), length(0))
    .times(count);
  return {
    method,
    plan,
    cuts,
    sets,
    leftOver,
    fabric,
    shows,
    waste: fabric.minus(shows),
    biasEdges: count * (bias.outside + (bias.sewnFirst ? 0 : bias.seams)),
    biasOutside: count * bias.outside,
    seams: sets * plan.seams,
    trims: sets * plan.trims,
  };
}

/**
 * The methods of a unit side by side: cuts, fabric, waste, bias edges, seams and trims for a number of
 * units. Nothing is rounded but the cuts. A method that cannot make this size is among the `refused`,
 * with its error.
 *
 * @throws EighthsError `unknown-choice` where there is no such unit; the first error where no method
 *   can make it
 * @example
 * const { methods } = compareMethods('half-square-triangles', 3, 16);
 * methods.map(({ method, fabric }) => `${method}: ${fabric}`)[0]; // 'two-at-a-time: 240 1/4'
 */
export function compareMethods(
  unit: UnitName,
  finished: SizeInput,
  count: number,
  options: UnitSpec = {},
): UnitComparison {
  const definition = UNITS[choiceField(unit, 'unit', unitNames())];
  const methods: MethodComparison[] = [];
  const refused: MethodRefusal[] = [];
  for (const { name, part } of definition.methods) {
    if (part) continue;
    try {
      methods.push(compared(definition.plan({ ...options, finished, count, method: name })));
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      refused.push({ method: name, error });
    }
  }
  const [first] = refused;
  if (methods.length === 0 && first !== undefined) throw first.error;
  return { methods, refused };
}
