import {
  type Area,
  BLOCK_SETTINGS,
  type BlockFace,
  blockTurns,
  type Drawing,
  drawBlockTurns,
  drawQuilt,
  halfSquareTriangles,
  length,
  logCabin,
  logCabinFace,
  plainFace,
  type QuiltDrawingSpec,
  quiltBorders,
  quiltLayout,
  toSvg,
  unitFace,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';
import { areasOf } from '../drawing/shapes.js';
import { doubleArea } from './chords.js';

const block = logCabin({ rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' });

/** A fabric and where it lies, whichever corner it begins at. */
const written = ({ fabric, points }: Area): string =>
  `${fabric}: ${points
    .map(({ x, y }) => `${x},${y}`)
    .sort()
    .join(' ')}`;

const areaOf = (areas: readonly Area[]) =>
  areas.reduce(
    (sum, { points }) =>
      sum.plus(
        doubleArea({ kind: 'block', row: 0, column: 0, turn: 0, corners: points }).dividedBy(2),
      ),
    length(0),
  );

/** The middle of an area, as numbers. */
function middle({ points }: Area): readonly [number, number] {
  const [xs, ys] = [points.map(({ x }) => x.toNumber()), points.map(({ y }) => y.toNumber())];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

const fabricsOf = (drawing: Drawing) => areasOf(drawing, 'fabric');

describe('a quilt is drawn', () => {
  it.each(BLOCK_SETTINGS)('of %s with every log where drawing the turns alone has it', (turns) => {
    const layout = quiltLayout({ block: 9, across: 4, down: 2, turns });
    const quilt = drawQuilt({ layout, blocks: [logCabinFace(block)], binding: 0 });
    const alone = drawBlockTurns(block, blockTurns(turns, 4, 2));
    expect(fabricsOf(quilt).map(written).sort()).toEqual(fabricsOf(alone).map(written).sort());
  });

  it('on point as a straight one turned by half a quarter clockwise', () => {
    const turns = 'streak-of-lightning';
    const spec = { block: 9, setting: 'on-point', across: 2, down: 3, turns } as const;
    const layout = quiltLayout(spec);
    const quilt = drawQuilt({ layout, blocks: [logCabinFace(block)], binding: 0 });
    // Its 4 by 4 lattice, about the same middle; the corners of the lattice are cut off.
    const alone = drawBlockTurns(block, blockTurns(turns, 4, 4));
    const [right, below] = [9 * Math.SQRT2, 13.5 * Math.SQRT2];
    const turned = new Set(
      fabricsOf(alone).map((area) => {
        const [x, y] = middle(area).map((at) => at - 18) as [number, number];
        return `${area.fabric} ${((x - y) * Math.SQRT1_2 + right).toFixed(3)} ${((x + y) * Math.SQRT1_2 + below).toFixed(3)}`;
      }),
    );
    const logs = fabricsOf(quilt).filter(({ fabric }) => !fabric?.endsWith('triangle'));
    expect(logs).toHaveLength(8 * 17);
    for (const area of logs) {
      const [x, y] = middle(area);
      expect(turned.has(`${area.fabric} ${x.toFixed(3)} ${y.toFixed(3)}`)).toBe(true);
    }
  });

  it('with borders and binding that fill it to its edge exactly', () => {
    const sashing = { width: 1, outer: true, cornerstones: true };
    const layout = quiltLayout({ block: 9, across: 2, down: 3, sashing });
    const borders = quiltBorders({
      quilt: layout.finished,
      borders: [
        { width: 2 },
        { width: 1, corners: 'squares' },
        { width: 1, style: 'pieced', unit: '1/2', corners: 'squares' },
        { width: 3, style: 'mitered' },
      ],
    });
    const drawing = drawQuilt({
      layout,
      borders,
      blocks: [logCabinFace(block)],
      fabrics: { sash: 'ground', borders: ['ground'], borderCorners: ['ground', 'red'] },
    });
    const [width, height] = [borders.finished.width, borders.finished.height];
    expect(areaOf(fabricsOf(drawing))).toEqual(width.plus('3/4').times(height.plus('3/4')));
    expect(drawing.fabrics).toEqual([
      'cornerstone',
      'ground',
      'center',
      'wide',
      'narrow',
      'border 2',
      'red',
      'border 3',
      'border 4',
      'binding',
    ]);
    const dimensions = drawing.shapes.flatMap((shape) =>
      shape.kind === 'dimension' ? [shape.measure] : [],
    );
    expect(dimensions).toEqual([width, height]);
  });

  it('with blocks in the places that were said, or taking turns', () => {
    const layout = quiltLayout({ block: 3, across: 2, down: 2 });
    const blocks = [plainFace(3, 'a'), plainFace(3, 'b')];
    const order = (spec: Partial<QuiltDrawingSpec>) =>
      fabricsOf(drawQuilt({ layout, blocks, binding: 0, ...spec })).map(({ fabric }) => fabric);
    expect(order({})).toEqual(['a', 'b', 'a', 'b']);
    expect(order({ places: [1, 1, 0, 1] })).toEqual(['b', 'b', 'a', 'b']);
  });

  it('with units, in words and as a picture', () => {
    const layout = quiltLayout({ block: 3, setting: 'on-point', across: 2, down: 2 });
    const blocks = [unitFace(halfSquareTriangles({ finished: 3 }))];
    const drawing = drawQuilt({ layout, blocks });
    expect(drawing.title.text).toBe('A quilt of 2 by 2 blocks on point, about 8.485 finished');
    expect(drawing.description.text).toContain('5 blocks that finish 3. Borders: 0.');
    expect(toSvg(drawing)).toContain('<title');
  });

  it('with a curved block’s wide half right and below, whichever sides are wide', () => {
    const other = logCabin({
      rounds: 4,
      center: 2,
      wide: '1 1/4',
      narrow: '1/2',
      wideSides: ['left', 'top'],
    });
    const centerOf = ({ areas: [center] }: BlockFace) =>
      center?.points.map(({ x, y }) => `${x},${y}`).sort();
    expect(centerOf(logCabinFace(other))).toEqual(centerOf(logCabinFace(block)));
  });
});

describe('refused', () => {
  const layout = quiltLayout({ block: 9, across: 2, down: 2 });
  const blocks = [logCabinFace(block)];
  it.each<[string, string, QuiltDrawingSpec]>([
    ['block-size-differs', 'blocks[0]', { layout, blocks: [plainFace(6, 'a')] }],
    ['not-a-count', 'blocks', { layout, blocks: [] }],
    ['list-length', 'places', { layout, blocks, places: [0] }],
    ['not-a-count', 'places[1]', { layout, blocks, places: [0, 1, 0, 0] }],
    ['not-positive', 'binding', { layout, blocks, binding: -1 }],
    ['unknown-field', 'block', JSON.parse('{"block":9}')],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => drawQuilt(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});
