/** A rectangle in whole numbers or any numbers that compare exactly. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * What is wrong with boxes that are to be cut from a rectangle by cuts from edge to edge, if anything.
 * Independent of the packer: it looks for a line that goes through no box, and asks again on both
 * sides of it.
 */
export function faultOf(sheet: Box, boxes: readonly Box[]): string | undefined {
  for (const { x, y, width, height } of boxes) {
    if (x < sheet.x || y < sheet.y) return 'off the fabric';
    if (x + width > sheet.x + sheet.width || y + height > sheet.y + sheet.height) {
      return 'off the fabric';
    }
  }
  return cuttable(boxes) ? undefined : 'not cuttable';
}

function cuttable(boxes: readonly Box[]): boolean {
  if (boxes.length <= 1) return true;
  for (const axis of ['x', 'y'] as const) {
    const size = axis === 'x' ? 'width' : 'height';
    for (const { [axis]: at } of boxes) {
      const before = boxes.filter((box) => box[axis] + box[size] <= at);
      const after = boxes.filter((box) => box[axis] >= at);
      if (before.length === 0 || before.length + after.length < boxes.length) continue;
      return cuttable(before) && cuttable(after);
    }
  }
  return false;
}
