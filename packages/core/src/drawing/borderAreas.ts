import type { Place } from '../block/places.js';
import type { Length } from '../length/length.js';
import { runsAcross, SIDES, type Side, turnSide } from '../plan/side.js';
import type { QuiltBorder } from '../quilt/borders/plan.js';
import { polygon } from './cellAreas.js';
import type { Area, Point } from './drawing.js';
import { cornerOf, grown, point, sizeOf } from './points.js';
import { fabricArea } from './shapes.js';

/** A strip that meets its neighbors on the diagonal. */
function miteredArea(fabric: string, inner: Place, outer: Place, side: Side): Area {
  const [before, after] = [turnSide(side, -1), turnSide(side, 1)];
  return polygon(fabric, [
    cornerOf(outer, side, before),
    cornerOf(outer, side, after),
    cornerOf(inner, side, after),
    cornerOf(inner, side, before),
  ]);
}

/** Where a straight strip lies: sides are as long as the top, top and bottom reach over them or not. */
function stripPlace(inner: Place, outer: Place, side: Side, squares: boolean): Place {
  if (!runsAcross(side)) {
    const { left, right } =
      side === 'left'
        ? { left: outer.left, right: inner.left }
        : { left: inner.right, right: outer.right };
    return { left, right, top: inner.top, bottom: inner.bottom };
  }
  const { top, bottom } =
    side === 'top'
      ? { top: outer.top, bottom: inner.top }
      : { top: inner.bottom, bottom: outer.bottom };
  const { left, right } = squares ? inner : outer;
  return { left, right, top, bottom };
}

/** The repeat units of a pieced strip, side by side. */
function unitAreas(fabric: string, strip: Place, side: Side, units: number): readonly Area[] {
  const { left, top, right, bottom } = strip;
  const { width, height } = sizeOf(strip);
  const step = (runsAcross(side) ? width : height).dividedBy(units);
  return Array.from({ length: units }, (_, index) => {
    const [from, to] = [step.times(index), step.times(index + 1)];
    const place = runsAcross(side)
      ? { left: left.plus(from), right: left.plus(to), top, bottom }
      : { left, right, top: top.plus(from), bottom: top.plus(to) };
    return fabricArea(fabric, place);
  });
}

/** The squares in the corners of a border. */
function squareAreas(fabric: string, inner: Place, outer: Place): readonly Area[] {
  return SIDES.map((side) => {
    const next = turnSide(side, 1);
    const corner = (a: Place, b: Place): Point =>
      runsAcross(side) ? point(b[next], a[side]) : point(a[side], b[next]);
    return polygon(fabric, [
      corner(inner, inner),
      corner(outer, inner),
      corner(outer, outer),
      corner(inner, outer),
    ]);
  });
}

/** A border round a place, and the place it makes. */
export function borderAreas(
  { width, style, corners, parts }: QuiltBorder,
  inner: Place,
  fabrics: { readonly border: string; readonly corner: string },
): { readonly areas: readonly Area[]; readonly outer: Place } {
  const outer = grown(inner, width);
  if (style === 'mitered') {
    return { areas: SIDES.map((side) => miteredArea(fabrics.border, inner, outer, side)), outer };
  }
  const squares = corners === 'squares';
  const unitsOf = (side: Side): number => {
    const part = runsAcross(side) ? 'top-and-bottom' : 'sides';
    return parts.find((each) => each.part === part)?.units ?? 1;
  };
  const strips = SIDES.flatMap((side) =>
    unitAreas(fabrics.border, stripPlace(inner, outer, side, squares), side, unitsOf(side)),
  );
  return {
    areas: squares ? [...strips, ...squareAreas(fabrics.corner, inner, outer)] : strips,
    outer,
  };
}

/** The binding round a place, mitered. */
export function bindingAreas(
  inner: Place,
  width: Length,
  fabric: string,
): { readonly areas: readonly Area[]; readonly outer: Place } {
  const outer = grown(inner, width);
  return { areas: SIDES.map((side) => miteredArea(fabric, inner, outer, side)), outer };
}
