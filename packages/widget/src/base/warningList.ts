import { html, nothing, type TemplateResult } from 'lit';
import type { Voice } from './voice.js';

/** What a plan warns of, below its inputs. */
export const warningList = (
  warnings: readonly Parameters<Voice['notice']>[0][],
  voice: Voice,
): TemplateResult | typeof nothing =>
  warnings.length === 0
    ? nothing
    : html`<ul class="warnings" part="warnings" aria-label=${voice.say('warnings')}>
        ${warnings.map((warning) => html`<li .textContent=${voice.notice(warning)}></li>`)}
      </ul>`;
