import { fail } from '../errors/error.js';
import { choiceField } from '../plan/field.js';
import { opposite, type PerSide, perSide, SIDES, type Side, turnSide } from '../plan/side.js';
import { firstOfPair, sewingOrder } from './sewingOrder.js';
import type { Direction, Layout, LogCabinSpec, LogKind } from './spec.js';

/** Which logs lie where, and in which order they are sewn. */
export interface Arrangement {
  readonly layout: Layout;
  readonly direction: Direction;
  /** The sides of a round in sewing order. */
  readonly sides: readonly Side[];
  readonly kinds: PerSide<LogKind>;
}

const DIRECTIONS: readonly Direction[] = ['clockwise', 'counterclockwise'];
const CURVED_LAYOUTS: readonly Layout[] = ['spiral', 'courthouse'];
export const LAYOUTS: readonly Layout[] = [...CURVED_LAYOUTS, 'quarter'];

function readWideSides(input: readonly Side[]): readonly [Side, Side] {
  if (!Array.isArray(input)) {
    fail(
      'wrong-kind',
      'wideSides',
      { expected: 'two sides' },
      'A list of two sides is needed here.',
    );
  }
  const [one, other, ...more] = input;
  if (one === undefined || other === undefined || more.length > 0) {
    return fail(
      'list-length',
      'wideSides',
      { entries: input.length, needed: 2 },
      'Two sides are needed here, not {entries}.',
    );
  }
  choiceField(one, 'wideSides[0]', SIDES);
  choiceField(other, 'wideSides[1]', SIDES);
  if (turnSide(one, 1) !== other && turnSide(one, -1) !== other) {
    fail(
      'sides-not-adjacent',
      'wideSides',
      { one, other },
      'Wide sides lie next to each other, such as right and bottom; {one} and {other} do not.',
    );
  }
  return [one, other];
}

function arrangeCurved(spec: LogCabinSpec, direction: Direction): [PerSide<LogKind>, Side] {
  const { wideSides = ['right', 'bottom'], first: firstInput = 'wide' } = spec;
  const wide = readWideSides(wideSides);
  const first = choiceField(firstInput, 'first', ['wide', 'narrow']);
  const pair: readonly [Side, Side] =
    first === 'wide' ? wide : [opposite(wide[0]), opposite(wide[1])];
  return [
    perSide((side) => (wide.includes(side) ? 'wide' : 'narrow')),
    firstOfPair(pair, direction),
  ];
}

/** @throws EighthsError `unknown-choice`, `list-length` or `sides-not-adjacent` */
export function arrange(spec: LogCabinSpec): Arrangement {
  const plain = spec.log !== undefined;
  const { layout: layoutInput = 'spiral', direction: directionInput = 'clockwise' } = spec;
  const layout = choiceField<Layout>(layoutInput, 'layout', plain ? LAYOUTS : CURVED_LAYOUTS);
  const direction = choiceField(directionInput, 'direction', DIRECTIONS);
  const [kinds, usualStart] = plain
    ? [perSide<LogKind>(() => 'log'), 'right' as const]
    : arrangeCurved(spec, direction);
  const start = choiceField(spec.start === undefined ? usualStart : spec.start, 'start', SIDES);
  return { layout, direction, sides: sewingOrder(layout, direction, start), kinds };
}
