import { fail } from '../errors/error.js';
import type { Length, LengthInput } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import { checkFields, countField, lengthField, listField, missing } from '../plan/field.js';
import { type Warning, warningsFrom } from '../plan/notice.js';
import type { Size } from '../plan/size.js';
import { type SeamNoteCode, seamSentences } from './seamSentences.js';

/** Square blocks that came out at other sizes than planned. */
export interface RescueInput {
  /** The blocks as they measure, raw edge to raw edge, one or more. */
  readonly measured: readonly LengthInput[];
  /** What they should finish. */
  readonly finished: LengthInput;
  /** Blocks across and down the quilt. */
  readonly across: number;
  readonly down: number;
  /** Default 1/4. */
  readonly seam?: LengthInput;
  /** What coping strips are cut beyond the exact width; default 1/2. */
  readonly oversize?: LengthInput;
  /** The least that a coping strip should finish; default 1/2. */
  readonly leastStrip?: LengthInput;
}

/** What a way out does to the quilt. */
export interface RescuedQuilt {
  /** What every block finishes. */
  readonly finished: Length;
  /** What every block is trimmed to, raw edge to raw edge. */
  readonly trimTo: Length;
  /** The blocks of the quilt, finished. */
  readonly quilt: Size;
  /** How much larger the quilt is than planned; less than 0 where it is smaller. */
  readonly change: Size;
}

/** Coping strips for the blocks of one measured size. */
export interface CopingStrip {
  readonly measured: Length;
  /** What a strip on each side finishes; 0 or less where the block is trimmed instead. */
  readonly finished: Length;
}

/** Two ways out. */
export interface BlockRescue {
  /** All blocks are trimmed to the smallest. */
  readonly trim: RescuedQuilt;
  /** Strips are sewn round every block, cut generously, and trimmed to the size planned. */
  readonly cope: RescuedQuilt & {
    readonly strips: readonly CopingStrip[];
    /** One width to cut all of them. */
    readonly cut: Length;
  };
  readonly warnings: readonly Warning<SeamNoteCode>[];
}

const warning = warningsFrom(seamSentences);

const MOST_BLOCKS = 1000;

/**
 * What to do with blocks that did not come out alike: trim all to the smallest, or sew coping strips
 * round them that finish (target − finished) / 2 each, cut generously and trimmed (common practice, no
 * source). Says what either does to the quilt's size.
 *
 * @throws EighthsError `list-length` where nothing was measured, `seam-too-wide` for a block smaller
 *   than its seams, and those of single fields
 * @example
 * const rescue = rescueBlocks({ measured: ['9 1/2', '9 1/4', '9 3/8'], finished: 10, across: 4, down: 5 });
 * rescue.trim.quilt.width.toString(); // '35'
 * rescue.cope.strips.map(({ finished }) => finished); // ["1/2","5/8","9/16"]
 * rescue.cope.cut.toString(); // '1 5/8'
 */
export function rescueBlocks(input: RescueInput): BlockRescue {
  checkFields(input, '', [
    'measured',
    'finished',
    'across',
    'down',
    'seam',
    'oversize',
    'leastStrip',
  ]);
  const { measured: sizes = missing('measured'), finished = missing('finished') } = input;
  const { seam: seamInput = '1/4', oversize = '1/2', leastStrip = '1/2' } = input;
  const seam = lengthField(seamInput, 'seam', 'zero or more');
  const allowances = seam.times(2);
  const planned = lengthField(finished, 'finished');
  const across = countField(input.across ?? missing('across'), 'across', 1, MOST_BLOCKS);
  const down = countField(input.down ?? missing('down'), 'down', 1, MOST_BLOCKS);
  const measured = listField(sizes, 'measured', 'sizes').map((size, index) =>
    readBlock(size, `measured[${index}]`, seam),
  );
  const [first] = measured;
  if (first === undefined) {
    return fail(
      'list-length',
      'measured',
      { entries: 0, needed: 1 },
      'At least {needed} measured block is needed here.',
    );
  }
  const smallest = measured.reduce(shorterOf, first);

  const quiltOf = (trimTo: Length): RescuedQuilt => {
    const own = trimTo.minus(allowances);
    const more = own.minus(planned);
    return {
      finished: own,
      trimTo,
      quilt: { width: own.times(across), height: own.times(down) },
      change: { width: more.times(across), height: more.times(down) },
    };
  };
  const target = planned.plus(allowances);
  const strips = measured.map((size) => ({
    measured: size,
    finished: target.minus(size).dividedBy(2),
  }));
  const widest = target.minus(smallest).dividedBy(2);
  const least = lengthField(leastStrip, 'leastStrip', 'zero or more');
  const narrowest = strips.map(({ finished }) => finished).reduce(shorterOf);
  const warnings: Warning<SeamNoteCode>[] = [];
  if (widest.sign() > 0 && narrowest.compareTo(least) < 0) {
    const better = planned.plus(least.minus(narrowest).times(2));
    const values = { finished: narrowest, least, better };
    warnings.push(warning('coping-narrow', 'finished', values));
  }
  const beyond = allowances.plus(lengthField(oversize, 'oversize', 'zero or more'));
  return {
    trim: quiltOf(smallest),
    cope: {
      ...quiltOf(target),
      strips,
      cut: widest.sign() > 0 ? widest.plus(beyond) : widest.times(0),
    },
    warnings,
  };
}

function readBlock(input: LengthInput, field: string, seam: Length): Length {
  const size = lengthField(input, field);
  const finished = size.minus(seam.times(2));
  if (finished.sign() <= 0) {
    fail(
      'seam-too-wide',
      field,
      { seam, finished },
      'Seams of {seam} leave nothing of a block this small. Measure from raw edge to raw edge.',
    );
  }
  return size;
}
