import { logCabin } from '../block/logCabin.js';
import type { LogCabinPiece } from '../block/plan.js';
import type { LogCabinSpec } from '../block/spec.js';
import { fail } from '../errors/error.js';
import { cuttingPlan } from '../fabric/cuttingPlan.js';
import type { Length, LengthInput } from '../length/length.js';
import { checkFields, countField, lengthField, listField, missing } from '../plan/field.js';

/** Strips of one fabric and one width that are on hand. */
export interface StripsOnHand {
  readonly fabric: string;
  /** The width that they are cut. */
  readonly width: LengthInput;
  /** From 1 to 10,000. */
  readonly count: number;
}

/** A block, and the strips that are there for it. */
export interface BlocksFromStripsRequest {
  readonly block: LogCabinSpec;
  readonly strips: readonly StripsOnHand[];
  /** The usable length of a strip; default 40. */
  readonly stripLength?: LengthInput;
}

/** How far the strips of one fabric and width go. */
export interface StripShare {
  readonly fabric: string;
  readonly width: Length;
  /** The blocks that these strips give logs for. */
  readonly blocks: number;
  /** Whether it is proven that they give no block more. */
  readonly proven: boolean;
}

/** How many blocks a number of strips gives. */
export interface BlocksFromStrips {
  /** What the strips that run out first allow. */
  readonly blocks: number;
  readonly proven: boolean;
  readonly shares: readonly StripShare[];
  /** Strips that the block needs and that are not among those on hand. */
  readonly needed: readonly { readonly fabric: string; readonly width: Length }[];
}

const FIELDS: readonly (keyof BlocksFromStripsRequest)[] = ['block', 'strips', 'stripLength'];
const USUAL_LENGTH = 40;
const MOST_STRIPS = 10_000;

const isFrom = (piece: LogCabinPiece, fabric: string, width: Length): boolean =>
  piece.part === 'log' && piece.fabric === fabric && piece.width.equals(width);

/** The most blocks whose logs these strips hold: a cutting plan for more would need another strip. */
function shareOf(
  pieces: readonly LogCabinPiece[],
  count: number,
  stripLength: Length,
): { readonly blocks: number; readonly proven: boolean } {
  const stripsFor = (blocks: number) => {
    const many = pieces.map(({ label, width, length, count: each }) => ({
      ...(label !== undefined && { label }),
      width,
      length,
      count: each * blocks,
    }));
    const plan = cuttingPlan({ width: stripLength, method: 'plain', pieces: many });
    const [first] = pieces;
    const bound = first === undefined ? 0 : plan.lowerBound.dividedBy(first.width).toNumber();
    return { used: plan.strips.reduce((sum, strip) => sum + strip.count, 0), bound };
  };
  const perBlock = pieces.reduce((sum, piece) => sum + piece.length.toNumber() * piece.count, 0);
  // One more than their length allows, and one for floating point.
  let tooMany = Math.floor((count * stripLength.toNumber()) / perBlock) + 2;
  let blocks = 0;
  let bound = count + 1;
  while (tooMany - blocks > 1) {
    const tried = Math.floor((blocks + tooMany) / 2);
    const plan = stripsFor(tried);
    if (plan.used <= count) blocks = tried;
    else [tooMany, bound] = [tried, plan.bound];
  }
  return { blocks, proven: bound > count };
}

/**
 * How many blocks a number of strips on hand gives, the logs cut from them to length: as many as the
 * strips that run out first. Each log is cut in one piece; what is left of a strip goes into other
 * blocks.
 *
 * @throws EighthsError `missing-field`, `unknown-choice` for strips that the block does not use,
 *   `piece-too-long`, and as `logCabin`
 * @example
 * const block = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2', strips: { wide: 2, narrow: '1 1/2' } };
 * const strips = [{ fabric: 'wide', width: 2, count: 20 }];
 * blocksFromStrips({ block, strips }).blocks; // 17
 */
export function blocksFromStrips(request: BlocksFromStripsRequest): BlocksFromStrips {
  checkFields(request, '', FIELDS);
  const { block = missing('block'), strips = missing('strips') } = request;
  const { stripLength: lengthInput = USUAL_LENGTH } = request;
  const stripLength = lengthField(lengthInput, 'stripLength');
  const plan = logCabin(block);
  const shares = listField(strips, 'strips', 'strips').map((strip, index): StripShare => {
    const field = `strips[${index}]`;
    checkFields(strip, field, ['fabric', 'width', 'count']);
    const width = lengthField(strip.width, `${field}.width`);
    const count = countField(strip.count, `${field}.count`, 1, MOST_STRIPS);
    const pieces = plan.pieces.filter((piece) => isFrom(piece, strip.fabric, width));
    if (pieces.length === 0) {
      const known = plan.strips.map((each) => `${each.fabric} ${each.width}`).join(', ');
      fail(
        'unknown-choice',
        field,
        { value: `${strip.fabric} ${width}`, choices: known },
        'The block has no logs from strips “{value}”. Its strips are: {choices}.',
      );
    }
    return { fabric: strip.fabric, width, ...shareOf(pieces, count, stripLength) };
  });
  const blocks = shares.length === 0 ? 0 : Math.min(...shares.map((share) => share.blocks));
  return {
    blocks,
    // The strips that run out first are the ones that have to be proven.
    proven: shares.some((share) => share.blocks === blocks && share.proven),
    shares,
    needed: plan.strips
      .filter(({ fabric, width }) =>
        shares.every((share) => share.fabric !== fabric || !share.width.equals(width)),
      )
      .map(({ fabric, width }) => ({ fabric, width })),
  };
}
