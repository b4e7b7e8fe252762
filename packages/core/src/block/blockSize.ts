import { fail } from '../errors/error.js';
import { type Length, length } from '../length/length.js';
import { missing } from '../plan/field.js';
import type { Side } from '../plan/side.js';
import { type Size, sizeField } from '../plan/size.js';
import type { Arrangement } from './arrangement.js';
import type { LogCabinSpec } from './spec.js';
import type { FinishedWidths } from './widths.js';

/** What the logs of all rounds add to the center, across and down. */
function addedByLogs(arrangement: Arrangement, widths: FinishedWidths, rounds: number): Size {
  const { sides, kinds } = arrangement;
  const addedOn = (side: Side): Length => {
    let sum = length(0);
    if (!sides.includes(side)) return sum;
    for (let index = 0; index < rounds; index += 1) sum = sum.plus(widths(kinds[side], index));
    return sum;
  };
  return {
    width: addedOn('left').plus(addedOn('right')),
    height: addedOn('top').plus(addedOn('bottom')),
  };
}

function solveCenter(finished: Length, logs: Length): Length {
  const center = finished.minus(logs);
  if (center.sign() <= 0) {
    fail(
      'center-not-positive',
      'finished',
      { finished, logs, center },
      'The logs add up to {logs}, which leaves {center} for the center of a block that finishes {finished}. Use narrower logs, fewer rounds or a larger block.',
    );
  }
  return center;
}

function checkSum(finished: Length, sum: Length): void {
  if (finished.equals(sum)) return;
  fail(
    'sizes-disagree',
    'finished',
    { finished, sum },
    'The center and the logs add up to {sum}, but the finished size is given as {finished}. Change one of them, or leave the center out and it is worked out.',
  );
}

/**
 * The center and the block, finished: the one that is not given is solved; if both are, they must
 * agree. Finished = center + logs (finished sizes simply add up: every seam takes its allowances).
 *
 * @throws EighthsError `missing-field`, `center-not-positive`, `sizes-disagree` or of a length
 */
export function solveSizes(
  spec: LogCabinSpec,
  arrangement: Arrangement,
  widths: FinishedWidths,
): { readonly center: Size; readonly finished: Size } {
  const logs = addedByLogs(arrangement, widths, spec.rounds);
  if (spec.center === undefined) {
    const { finished: finishedInput = missing('finished') } = spec;
    const finished = sizeField(finishedInput, 'finished');
    const center = {
      width: solveCenter(finished.width, logs.width),
      height: solveCenter(finished.height, logs.height),
    };
    return { center, finished };
  }
  const center = sizeField(spec.center, 'center');
  const finished = {
    width: center.width.plus(logs.width),
    height: center.height.plus(logs.height),
  };
  if (spec.finished !== undefined) {
    const given = sizeField(spec.finished, 'finished');
    checkSum(given.width, finished.width);
    checkSum(given.height, finished.height);
  }
  return { center, finished };
}
