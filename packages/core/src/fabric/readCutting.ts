import { fail } from '../errors/error.js';
import type { Length } from '../length/length.js';
import { checkFields, choiceField, countField, lengthField, missing } from '../plan/field.js';
import type { Piece } from '../plan/piece.js';
import { readPieces } from './readPieces.js';
import { type CuttingMethod, type CuttingSpec, DEFAULT_EFFORT, MOST_PIECES } from './spec.js';
import { type StripGroup, stripGroups } from './stripGroups.js';
import { fractionOf } from './units.js';

/** A spec that was read: what to cut, by the widths of its strips. */
export interface CuttingTask {
  readonly width: Length;
  readonly pieces: readonly Piece[];
  readonly method: CuttingMethod;
  /** Widest first. */
  readonly groups: readonly StripGroup[];
  readonly effort: number;
  readonly layers: number;
}

const METHODS: readonly CuttingMethod[] = ['thrifty', 'plain'];
const SPEC_FIELDS = ['width', 'pieces', 'method', 'effort', 'layers'] as const;

/**
 * What a spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so.
 */
export function readCutting(spec: CuttingSpec): CuttingTask {
  checkFields(spec, '', SPEC_FIELDS);
  const width = lengthField(spec.width ?? missing('width'), 'width');
  const room = fractionOf(width, 'width');
  const inputs = spec.pieces ?? missing('pieces');
  const pieces = readPieces(inputs, 'pieces', MOST_PIECES, ({ length }, field) => {
    const { n, d } = fractionOf(length, `${field}.length`);
    if (n * room.d <= room.n * d) return;
    fail(
      'piece-too-long',
      `${field}.length`,
      { length, width },
      'A piece {length} long does not fit across fabric that is {width} wide. Make it at most {width}, turn it, or join it from shorter ones.',
    );
  });
  const rational = pieces.every((piece) => piece.width.toFraction() !== undefined);
  return {
    width,
    pieces,
    method: choiceField(spec.method ?? (rational ? 'thrifty' : 'plain'), 'method', METHODS),
    groups: stripGroups(room, pieces),
    effort: countField(spec.effort ?? DEFAULT_EFFORT, 'effort', 0, Number.MAX_SAFE_INTEGER),
    layers: countField(spec.layers ?? 1, 'layers', 1, 100),
  };
}
