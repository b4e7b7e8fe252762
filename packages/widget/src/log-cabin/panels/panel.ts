import type { LogCabin, LogCabinSpec } from '@eighths/core';
import type { CSSResult, ReactiveControllerHost, TemplateResult } from 'lit';
import type { Voice } from '../../base/voice.js';
import type { MessageName, Messages } from '../../messages/messages.js';
import type { GivenSettings } from '../defaults.js';
import type { LogCabinSettings } from '../fields.js';
import type { PanelState } from './state.js';

/** A block with the spec that it was made from. */
export interface MadeBlock {
  readonly plan: LogCabin;
  readonly spec: LogCabinSpec;
}

/** What a panel knows of the element that it stands in. */
export interface BlocklessContext {
  readonly voice: Voice;
  /** The same for the ear: its figures are words. */
  readonly spoken: Voice;
  /** What stands in the element’s own inputs. */
  readonly settings: LogCabinSettings;
  /** The finished size as it was typed, or as it was worked out. */
  readonly finished: string;
  /** The block of these settings; where they make none, the last one, if there was any. */
  readonly block: MadeBlock | undefined;
  readonly blocks: number;
  readonly hand: 'left' | 'right';
  readonly isLocked: (field: string) => boolean;
  /** Puts texts into the element’s own inputs, but for those that the page fixes. */
  readonly fill: (texts: GivenSettings) => void;
  readonly state: PanelState;
  /** The element and its style sheet, to print what it shows. */
  readonly host: HTMLElement;
  readonly css: string;
}

/** What a panel knows once there is a block. */
export interface PanelContext extends BlocklessContext, MadeBlock {}

interface CommonPanel {
  /** By which a page names it. */
  readonly name: string;
  readonly summary: MessageName;
}

/** Something more to do with a block, folded away below it; rendered only where it is open. */
export type LogCabinPanel =
  | (CommonPanel & {
      readonly needsPlan: true;
      readonly render: (context: PanelContext) => TemplateResult;
    })
  | (CommonPanel & {
      readonly needsPlan: false;
      readonly render: (context: BlocklessContext) => TemplateResult;
    });

/** Panels with all that they say and how they look, for an element that is to have them. */
export interface Workshop {
  readonly panels: readonly LogCabinPanel[];
  /** The messages of an element that has them. */
  readonly messages: (own: Messages) => Messages;
  readonly looks: CSSResult;
  /** What an element keeps of what is typed there. */
  readonly begin: (element: ReactiveControllerHost) => PanelState;
  /** The panels that a page wants, below the sheet. */
  readonly show: (wanted: WantedPanels, context: BlocklessContext) => TemplateResult | undefined;
}

/** What a page says of the panels. */
export interface WantedPanels {
  readonly panels: readonly LogCabinPanel[];
  /** The names of those to show, separated by spaces; all where nothing is said. */
  readonly names: string | undefined;
  /** The names of those that are open at first. */
  readonly opened: string | undefined;
}
