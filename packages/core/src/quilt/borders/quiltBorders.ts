import type { Length } from '../../length/length.js';
import { shorterOf } from '../../length/longer.js';
import type { Warning } from '../../plan/notice.js';
import type { Piece } from '../../plan/piece.js';
import { grownBy, type Size } from '../../plan/size.js';
import { warningsFrom } from '../../unit/say.js';
import { type JoinedStrips, joinedStrips } from '../joinedStrips.js';
import { borderParts, type Inside, leastMitered, runningLength } from './borderParts.js';
import type { BorderPart, QuiltBorder, QuiltBorders } from './plan.js';
import { type BordersTask, type BorderTask, readBorders } from './readBorders.js';
import { type BorderWarningCode, borderSentences } from './sentences.js';
import type { QuiltBordersSpec } from './spec.js';

const warn = warningsFrom(borderSentences);

/** Whether a strip of the border is longer than its fabric is wide, so that strips are joined. */
const isJoined = ({ style, cut, fabricWidth }: BorderTask, parts: readonly BorderPart[]): boolean =>
  style !== 'pieced' &&
  cut === 'crosswise' &&
  parts.some((part) => part.cut.length.compareTo(fabricWidth) > 0);

/** What to cut: whole strips where they are joined, else each strip by itself. */
function piecesOf(
  border: BorderTask,
  parts: readonly BorderPart[],
  joined: JoinedStrips | undefined,
): readonly Piece[] {
  const lengthwise = border.cut === 'lengthwise';
  const pieces = parts
    .filter(({ part }) => part === 'corners' || (border.style !== 'pieced' && joined === undefined))
    .map(({ part, cut, count }): Piece => {
      const along = lengthwise && part !== 'corners';
      return {
        label: part === 'corners' ? 'border corner' : 'border',
        width: along ? cut.length : cut.width,
        length: along ? cut.width : cut.length,
        count,
      };
    });
  const strip = parts[0]?.cut.width;
  if (joined === undefined || strip === undefined) return pieces;
  const strips = { width: strip, length: border.fabricWidth, count: joined.count };
  return [{ label: 'border', ...strips, joinable: true }, ...pieces];
}

function makeBorder(border: BorderTask, inside: Inside, task: BordersTask): QuiltBorder {
  const { width, style, corners, cut, fabricWidth, unit, field } = border;
  const parts = borderParts(border, inside, task);
  const strip = parts[0]?.cut.width ?? width;
  const joined = isJoined(border, parts)
    ? joinedStrips(runningLength(parts), strip, fabricWidth, `${field}.fabricWidth`)
    : undefined;
  const units = parts.reduce((sum, part) => sum + (part.units ?? 0) * part.count, 0);
  return {
    width,
    style,
    corners,
    cut,
    fabricWidth,
    parts,
    ...(joined && { joined }),
    ...(style === 'mitered' && { least: leastMitered(border, inside, task) }),
    ...(unit && { units }),
    finished: grownBy(inside.planned, width),
    pieces: piecesOf(border, parts, joined),
  };
}

function warningsOf(
  { width, field }: BorderTask,
  quilt: Size,
  seam: Length,
): Warning<BorderWarningCode>[] {
  const warnings: Warning<BorderWarningCode>[] = [];
  if (width.compareTo(seam.times(2)) < 0)
    warnings.push(warn('narrow-border', `${field}.width`, { width }));
  if (width.times(2).compareTo(shorterOf(quilt.width, quilt.height)) > 0)
    warnings.push(warn('wide-border', `${field}.width`, { width, quilt }));
  return warnings;
}

/**
 * The borders of a quilt: what to cut for each, in the order of sewing, and the size it then has.
 *
 * Straight borders take two sides as long as the quilt, then top and bottom as wide as it has become.
 * Mitered strips measure at least the outer finished edge and 2s(1 + √2), and are cut `extra` longer.
 * Lengths to cut are rounded up to the grid, once. Where the sewn top was `measured`, strips are cut to
 * that, and each says how much it differs from the plan. Strips longer than the fabric is wide are
 * joined on the diagonal, n of them making nU − (n − 1)w.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `not-positive`, `not-a-count`,
 *   `conflicting-fields`, `repeat-does-not-fit`, `strip-too-wide`, `out-of-range` and others
 * @example
 * const { borders, finished } = quiltBorders({
 *   quilt: { width: 60, height: 72 },
 *   borders: [{ width: 2, fabricWidth: 42 }, { width: 5, style: 'mitered', cut: 'lengthwise' }],
 * });
 * finished; // {"width":"74","height":"86"}
 * borders[0].parts.map(({ part, cut }) => `${part} ${cut.length}`); // ["sides 72 1/2","top-and-bottom 64 1/2"]
 * borders[0].joined.count; // 7
 * borders[1].least; // {"width":"75 1/4","height":"87 1/4"}
 */
export function quiltBorders(spec: QuiltBordersSpec): QuiltBorders {
  const task = readBorders(spec);
  const { quilt, measured, seam, grid } = task;
  const made: QuiltBorder[] = [];
  const warnings: Warning<BorderWarningCode>[] = [];
  const raw = grownBy(quilt, seam);
  if (measured && !(measured.width.equals(raw.width) && measured.height.equals(raw.height)))
    warnings.push(warn('measured-differs', 'measured', { measured, planned: raw }));
  let inside: Inside = {
    planned: quilt,
    measured: measured ? grownBy(measured, seam.negated()) : quilt,
  };
  for (const border of task.borders) {
    warnings.push(...warningsOf(border, inside.planned, seam));
    const next = makeBorder(border, inside, task);
    made.push(next);
    inside = { planned: next.finished, measured: grownBy(inside.measured, border.width) };
  }
  return {
    quilt,
    seam,
    grid,
    borders: made,
    finished: inside.planned,
    unfinished: grownBy(inside.planned, seam),
    pieces: made.flatMap(({ pieces }) => pieces),
    warnings,
  };
}
