import {
  type EighthsError,
  foundationSheets,
  type LogCabin,
  type Paper,
  type SheetPage,
  trimSheets,
} from '@eighths/core';
import { SettingsReader } from '../../base/settingsReader.js';
import type { Voice } from '../../base/voice.js';

export type SheetField = 'sheet-kind' | 'sheet-round' | 'sheet-paper';
export type SheetTexts = Readonly<Record<SheetField, string>>;

export const PAPERS = ['letter', 'a4'] as const satisfies readonly Paper[];
export const SHEET_KINDS = ['trim', 'foundation'] as const;

/** Where people cut by the centimeter, printers hold A4. */
export const usualSheets = (metric: boolean): SheetTexts => ({
  'sheet-kind': 'trim',
  'sheet-round': '',
  'sheet-paper': metric ? 'a4' : 'letter',
});

/** The pages to print, or why there are none. */
export interface SheetsModel {
  readonly kind: (typeof SHEET_KINDS)[number];
  readonly paper: Paper;
  /** Empty for every round. */
  readonly round: string;
  readonly pages: readonly SheetPage[];
  readonly faults: ReadonlyMap<SheetField, EighthsError>;
}

export function sheetsModel(texts: SheetTexts, plan: LogCabin, voice: Voice): SheetsModel {
  const kind = SHEET_KINDS.find((each) => each === texts['sheet-kind']) ?? 'trim';
  const paper = PAPERS.find((each) => each === texts['sheet-paper']) ?? 'letter';
  // A round that the block has no longer.
  const round = plan.rounds.find(({ number }) => String(number) === texts['sheet-round'])?.number;
  const options = {
    paper,
    write: voice.measures.figures,
    words: voice.drawingWords,
    scale: voice.measures.units === 'metric' ? 'centimeters' : 'inches',
    say: voice.notice,
  } as const;
  const reader = new SettingsReader<SheetField>(texts, voice.measures);
  const pages = reader.attempt(
    () =>
      kind === 'foundation'
        ? foundationSheets(plan, options)
        : trimSheets(plan, { ...options, ...(round !== undefined && { round }) }),
    () => 'sheet-round',
  );
  return {
    kind,
    paper,
    round: round === undefined ? '' : String(round),
    pages: pages ?? [],
    faults: reader.faults,
  };
}
