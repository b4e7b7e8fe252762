import { fail } from '../errors/error.js';
import { formatLength } from '../length/format.js';
import { type Length, type LengthInput, length } from '../length/length.js';
import { atOnce } from '../plan/atOnce.js';
import { checkFields, lengthField } from '../plan/field.js';
import type { Size } from '../plan/size.js';
import { cutsIn } from './cutsIn.js';
import { type CuttingProgress, cuttingPlanInParts } from './cuttingPlan.js';
import type { CuttingPlan } from './plan.js';
import type { CuttingMethod, CuttingSpec } from './spec.js';

/** What is bought beyond the bare need, and in which steps. */
export interface YardageOptions {
  /**
   * What the shop cuts in multiples of, default an eighth of a yard; of several, such as
   * `['1/8 yd', '1/3 yd']`, whichever buys least. `0.1 m` where fabric is sold by the meter.
   */
  readonly increment?: LengthInput | readonly LengthInput[];
  /**
   * The part of its length that the fabric loses when it is washed before it is cut, from 0 up to 1,
   * default 0. The plan's fabric width is what it is after that.
   */
  readonly shrinkage?: number | string;
  /** What squaring up the end takes, default 1 inch. */
  readonly straightening?: LengthInput;
  /** What is bought in case of a wrong cut, default one strip, as wide as the widest. */
  readonly spare?: LengthInput;
  /** Which plans may be made where none is given; default what the spec says. */
  readonly method?: CuttingMethod;
}

/** What one method would buy, and cost in cuts. */
export interface YardageAlternative {
  readonly method: CuttingMethod;
  readonly buy: Length;
  /** What the strips of its plan take. */
  readonly bare: Length;
  /** How many cuts its plan takes, each strip cut by itself. */
  readonly cuts: number;
}

/** How much to buy of one fabric, and what it is made up of. */
export interface Yardage {
  /** The length to buy: the need, up to the shop's next increment. */
  readonly buy: Length;
  /** The increment that this is a multiple of. */
  readonly increment: Length;
  /** The same in yards, exactly, as people write it: `1⅜ yd`. */
  readonly yards: string;
  /** The same in meters, never less, up to the next centimeter where it is no whole one. */
  readonly meters: string;
  readonly plan: CuttingPlan;
  /** What either method would buy, plain first, where both were asked; else the plan's alone. */
  readonly alternatives: readonly YardageAlternative[];
  /** Whether it is proven that no plan of the method that was asked for could buy less. */
  readonly purchaseProven: boolean;
  /** What the strips of the plan take, and nothing else. */
  readonly bare: Length;
  readonly straightening: Length;
  readonly spare: Length;
  /** What washing takes of the need. */
  readonly shrinkage: Length;
  /** All four together: what must be bought at least. */
  readonly need: Length;
  /** What is left after washing, straightening and cutting, where nothing went wrong. */
  readonly leftOver: Size;
}

const OPTION_FIELDS = ['increment', 'shrinkage', 'straightening', 'spare', 'method'] as const;

/**
 * How much fabric to buy: the plan's bare need, one strip to spare and what straightening takes,
 * divided by what washing leaves of it, up to the shop's next increment. Exact; rounded only there.
 *
 * Shrinkage divides: fabric that loses a tenth needs 40 inches to keep 36, not 39 6/10. That squaring
 * up takes up to an inch, and one strip to spare, are common practice, no source.
 *
 * Where thrifty plans may be made, the plain plan is made too, and is the one to cut by where both
 * buy the same.
 *
 * @param specOrPlan what to cut, or a finished plan of it.
 * @throws EighthsError as `cuttingPlan`; `not-a-shrinkage`, `not-positive` or `length-syntax`.
 * @example
 * const { buy, yards, bare, spare } = yardage({
 *   width: 42,
 *   pieces: [{ width: 5, length: 5, count: 12 }],
 * });
 * bare.toString(); // '10'
 * spare.toString(); // '5'
 * buy.toString(); // '18'
 * yards; // '½ yd'
 */
export function yardage(
  specOrPlan: CuttingSpec | CuttingPlan,
  options: YardageOptions = {},
): Yardage {
  return atOnce(yardageInParts(specOrPlan, options));
}

/**
 * The yardage in the making: pauses every few milliseconds of work, and stops for good when it is
 * asked for no more. Returns what `yardage` returns.
 *
 * @throws EighthsError as `yardage`, before the first pause.
 * @example
 * const making = yardageInParts({ width: 42, pieces: [{ width: 5, length: 5, count: 12 }] });
 * let step = making.next();
 * // A page waits for its next frame between two steps, or leaves.
 * while (!step.done) step = making.next();
 * step.value.yards; // '½ yd'
 */
export function* yardageInParts(
  specOrPlan: CuttingSpec | CuttingPlan,
  options: YardageOptions = {},
): Generator<CuttingProgress, Yardage, undefined> {
  checkFields(options, '', OPTION_FIELDS);
  const shrinkage = readShrinkage(options.shrinkage ?? 0);
  const straightening = lengthField(options.straightening ?? 1, 'straightening', 'zero or more');
  const increments = readIncrements(options.increment ?? '1/8 yd');
  const given =
    options.spare === undefined ? undefined : lengthField(options.spare, 'spare', 'zero or more');
  const kept = length(1).minus(shrinkage);
  // Strips stand widest first.
  const spareOf = ({ strips }: CuttingPlan): Length => given ?? strips[0]?.width ?? length(0);
  const bought = (plan: CuttingPlan, bare: Length) => {
    const need = bare.plus(straightening).plus(spareOf(plan)).dividedBy(kept);
    return { plan, need, ...purchase(need, increments) };
  };

  const method = options.method === undefined ? {} : { method: options.method };
  const asked =
    'strips' in specOrPlan ? specOrPlan : yield* cuttingPlanInParts({ ...specOrPlan, ...method });
  const plans = [asked];
  if (!('strips' in specOrPlan) && asked.method === 'thrifty') {
    plans.unshift(yield* cuttingPlanInParts({ ...specOrPlan, method: 'plain' }));
  }
  const ways = plans.map((plan) => bought(plan, plan.length));
  // The plain plan stands first, and is as good where it buys the same.
  const { plan, need, buy, increment } = ways.reduce((best, way) =>
    way.buy.compareTo(best.buy) < 0 ? way : best,
  );
  const spare = spareOf(plan);
  return {
    buy,
    increment,
    yards: formatLength(buy, { unit: 'yd' }),
    meters: formatLength(buy, { unit: 'm', grid: '1 cm', mode: 'up' }),
    plan,
    alternatives: ways.map((way) => ({
      method: way.plan.method,
      buy: way.buy,
      bare: way.plan.length,
      cuts: cutsIn(way.plan),
    })),
    purchaseProven: bought(plan, asked.lowerBound).buy.compareTo(buy) >= 0,
    bare: plan.length,
    straightening,
    spare,
    shrinkage: need.times(shrinkage),
    need,
    leftOver: {
      width: plan.width,
      height: buy.times(kept).minus(straightening).minus(plan.length),
    },
  };
}

interface Purchase {
  readonly buy: Length;
  readonly increment: Length;
}

/** The least multiple of one of the increments that is enough; of equals the first. */
const purchase = (need: Length, [first, ...others]: readonly [Length, ...Length[]]): Purchase => {
  const upTo = (increment: Length): Purchase => ({ buy: need.toGrid(increment, 'up'), increment });
  return others
    .map(upTo)
    .reduce((best, other) => (other.buy.compareTo(best.buy) < 0 ? other : best), upTo(first));
};

const isList = (input: LengthInput | readonly LengthInput[]): input is readonly LengthInput[] =>
  Array.isArray(input);

function readIncrements(
  input: LengthInput | readonly LengthInput[],
): readonly [Length, ...Length[]] {
  if (!isList(input)) return [lengthField(input, 'increment')];
  const [first, ...others] = input.map((each, i) => lengthField(each, `increment[${i}]`));
  if (first !== undefined) return [first, ...others];
  return fail(
    'wrong-kind',
    'increment',
    { expected: '1/8 yd' },
    'Give at least one length that the shop cuts in, such as {expected}.',
  );
}

function readShrinkage(input: number | string): Length {
  const value = lengthField(input, 'shrinkage', 'any');
  if (value.sign() >= 0 && value.compareTo(1) < 0 && value.toFraction() !== undefined) return value;
  return fail(
    'not-a-shrinkage',
    'shrinkage',
    { value },
    'Shrinkage is a part of the length, from 0 up to but not including 1 (0.05 for five in a hundred), not {value}.',
  );
}
