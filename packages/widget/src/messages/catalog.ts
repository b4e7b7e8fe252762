import type {
  BackingNoteCode,
  BindingWarningCode,
  BorderWarningCode,
  CuttingStepCode,
  CuttingWarningCode,
  DrawingSentence,
  FabricWarningCode,
  FitCriterion,
  FitNoteCode,
  JoinStepCode,
  KitWarningCode,
  LayoutWarningCode,
  LogCabinWarningCode,
  OnHandStepCode,
  OnHandWarningCode,
  PackStepCode,
  PatternWarningCode,
  PrecutStepCode,
  PrecutWarningCode,
  SeamNoteCode,
  SheetNoteCode,
  SubcutWording,
  TableStepCode,
  ToolWarningCode,
  UnitSentence,
} from '@eighths/core';
import type { en } from './en.js';
import type { enFabric } from './enFabric.js';
import type { enLogCabin } from './enLogCabin.js';
import type { enQuilt } from './enQuilt.js';
import type { enUnit } from './enUnit.js';
import type { SpokenFractions } from './fractions.js';

/** The core's sentences by the room that speaks them: two rooms may use the same code. */
export interface RoomSentences {
  readonly logCabin: LogCabinWarningCode;
  readonly drawing: DrawingSentence;
  readonly table: TableStepCode | ToolWarningCode;
  readonly seam: SeamNoteCode;
  readonly fit: FitCriterion | FitNoteCode;
  readonly sheet: SheetNoteCode;
  readonly unit: UnitSentence;
  readonly pattern: PatternWarningCode;
  readonly layout: LayoutWarningCode;
  readonly borders: BorderWarningCode;
  readonly binding: BindingWarningCode;
  readonly backing: BackingNoteCode;
  readonly kits: KitWarningCode;
  readonly cutting: CuttingStepCode | SubcutWording | CuttingWarningCode;
  readonly pack: PackStepCode;
  readonly join: JoinStepCode | FabricWarningCode;
  readonly precut: PrecutStepCode | PrecutWarningCode;
  readonly onHand: OnHandStepCode | OnHandWarningCode;
}

export type Room = keyof RoomSentences;

/** The texts by the element that says them: two elements may use the same name. */
export interface ElementTexts {
  readonly common: Exclude<keyof typeof en, 'words' | 'sentences' | 'errors'>;
  readonly logCabin: keyof typeof enLogCabin;
  readonly fabric: keyof typeof enFabric;
  readonly quilt: keyof typeof enQuilt;
  readonly unit: keyof typeof enUnit;
}

export type TextGroup = keyof ElementTexts;

/**
 * The elements' words in one language. What is missing here is shown in English. Places in braces are
 * those of the English text, in any order.
 */
export interface Catalog {
  readonly texts: {
    readonly [Each in TextGroup]?: Readonly<Partial<Record<ElementTexts[Each], string>>>;
  };
  /** The names of sides, units, methods, parts and whatever else data calls by a word. */
  readonly words: Readonly<Record<string, string>>;
  readonly sentences: {
    readonly [Each in Room]?: Readonly<Partial<Record<RoomSentences[Each], string>>>;
  };
  /**
   * By code, by code and reason (`length-syntax empty`), or by the English sentence itself where one
   * code has several.
   */
  readonly errors: Readonly<Record<string, string>>;
  /** The words of lengths for the ear; `{length}` is what is spoken otherwise. */
  readonly spoken: {
    readonly fraction: SpokenFractions;
    readonly minus: string;
    readonly about: string;
  };
}
