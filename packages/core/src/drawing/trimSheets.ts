import type { LogCabin } from '../block/plan.js';
import { fail } from '../errors/error.js';
import { checkFields, countField } from '../plan/field.js';
import { drawFoundation } from './foundationDrawing.js';
import { drawRoundTemplate } from './roundTemplateDrawing.js';
import { type SheetPage, type SheetWriting, sheetPages, sheetsNeeded } from './sheetPages.js';
import { readSheet, type SheetOptions } from './sheetPaper.js';

/** A page of a trim template. */
export interface TrimSheet extends SheetPage {
  readonly round: number;
}

/** How trim sheets are laid out, and which are wanted. */
export interface TrimSheetOptions extends SheetOptions, SheetWriting {
  /** From 1; left out, every round. */
  readonly round?: number;
}

const WRITING = ['write', 'words', 'scale', 'say'] as const;
const MOST_PAGES = 500;

/**
 * The trim templates of a block at true scale, round by round, on sheets of paper to print at 100 %.
 *
 * They are for checking and tracing, or to be taped under an acrylic ruler; nobody cuts against paper.
 *
 * @throws EighthsError `unknown-choice`, `out-of-range`, `not-a-count`, `too-many-pages`
 * @example
 * const block = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2', strips: { wide: 2, narrow: '1 1/2' } });
 * const sheets = trimSheets(block, { paper: 'a4', margin: '10 mm' });
 * sheets.map(({ round, row, column }) => `${round}: ${row}/${column}`).slice(0, 3); // ["1: 1/1","2: 1/1","3: 1/1"]
 */
export function trimSheets(plan: LogCabin, options: TrimSheetOptions = {}): readonly TrimSheet[] {
  checkFields(options, 'options', ['paper', 'margin', 'round', ...WRITING]);
  const sheet = readSheet(options);
  const wanted = options.round;
  if (wanted !== undefined) countField(wanted, 'round', 1, plan.rounds.length);
  const templates = plan.rounds
    .filter(({ number }) => wanted === undefined || number === wanted)
    .map(({ number: round }) => ({ round, drawing: drawRoundTemplate(plan, round) }));
  const pages = templates.reduce(
    (sum, { drawing }) => sum + sheetsNeeded(drawing, sheet, options),
    0,
  );
  if (pages > MOST_PAGES) {
    fail(
      'too-many-pages',
      'round',
      { pages, most: MOST_PAGES },
      'All rounds would take {pages} sheets of paper, and {most} is the most. Ask for one round at a time.',
    );
  }
  return templates.flatMap(({ round, drawing }) =>
    sheetPages(drawing, sheet, options).map((page) => ({ round, ...page })),
  );
}

/**
 * The foundation of a block at true scale on sheets of paper: mirrored, numbered in sewing order, with
 * the allowance line.
 *
 * @throws EighthsError `unknown-choice`, `out-of-range`, `too-many-pages`
 * @example
 * foundationSheets(logCabin({ rounds: 2, center: 1, log: 1 }), { paper: 'letter' }).length; // 1
 */
export function foundationSheets(
  plan: LogCabin,
  options: SheetOptions & SheetWriting = {},
): readonly SheetPage[] {
  checkFields(options, 'options', ['paper', 'margin', ...WRITING]);
  return sheetPages(drawFoundation(plan), readSheet(options), options);
}
