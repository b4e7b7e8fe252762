import { fail } from '../errors/error.js';
import { type LengthInput, length } from '../length/length.js';
import { choiceField, lengthField } from '../plan/field.js';

/** Paper that printers at home have. */
export type Paper = 'letter' | 'a4';

/** How sheets are laid out. */
export interface SheetOptions {
  /** Default `letter`. */
  readonly paper?: Paper;
  /** What the printer leaves free on each side, from 1/8 to 2 inches; default 1/2. */
  readonly margin?: LengthInput;
}

/** A sheet in inches. */
export interface Sheet {
  readonly paper: Paper;
  /** Width and height as SVG has them, in the paper's own unit. */
  readonly size: { readonly width: string; readonly height: string };
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

/** Letter is 8 1/2 by 11 inches, A4 210 by 297 mm (ISO 216, from memory). */
const PAPERS: Readonly<Record<Paper, Sheet['size']>> = {
  letter: { width: '8.5in', height: '11in' },
  a4: { width: '210mm', height: '297mm' },
};

/** @throws EighthsError `unknown-choice`, `out-of-range` or of a length */
export function readSheet({ paper: paperInput = 'letter', margin = '1/2' }: SheetOptions): Sheet {
  const paper = choiceField(paperInput, 'paper', ['letter', 'a4']);
  const value = lengthField(margin, 'margin');
  const [least, most] = [length('1/8'), length(2)];
  if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
    fail(
      'out-of-range',
      'margin',
      { value, least, most },
      'A margin from {least} to {most} is needed here, not {value}.',
    );
  }
  const size = PAPERS[paper];
  return {
    paper,
    size,
    width: length(size.width).toNumber(),
    height: length(size.height).toNumber(),
    margin: value.toNumber(),
  };
}
