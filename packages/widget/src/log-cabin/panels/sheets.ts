import { html, nothing, type TemplateResult } from 'lit';
import { copyInto, paperCss } from '../../actions/answerCopy.js';
import { printAlone } from '../../actions/printAlone.js';
import { saveFile } from '../../actions/saveFile.js';
import { choiceField, named } from '../../base/fields.js';
import { selectField } from '../../base/selectField.js';
import { putSheets, sheetCss, sheetFile } from '../printing/sheetDocument.js';
import { svgElement } from '../printing/svgNodes.js';
import { textsOf } from './form.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { action } from './said.js';
import { type SheetField, type SheetsModel, sheetsModel, usualSheets } from './sheetsModel.js';

interface Prepared extends SheetsModel {
  /** The first page, to be shown small. */
  readonly preview?: Element;
}

const known = new Memory<Prepared>();

function printChart({ host, css, voice }: PanelContext): void {
  const root = host.shadowRoot;
  if (root === null) return;
  const title = voice.say('trimChart');
  const fill = (page: Document): void => copyInto(page, host, css);
  printAlone(root, { title, css: paperCss, fill }, () => window.print());
}

function saveSheets({ kind, paper, pages }: SheetsModel, { voice }: PanelContext): void {
  const title = voice.say(kind === 'trim' ? 'sheets-trim' : 'sheets-foundation');
  saveFile(`${kind}-${paper}.html`, sheetFile(title, pages), 'text/html');
}

function printSheets(model: SheetsModel, context: PanelContext): void {
  const root = context.host.shadowRoot;
  if (root === null) return;
  const { pages } = model;
  const title = context.voice.say('printed');
  const fill = (page: Document): void => putSheets(page, pages);
  printAlone(root, { title, css: sheetCss(pages), fill }, () => saveSheets(model, context));
}

function sheetForm({ kind, paper, round }: SheetsModel, context: PanelContext): TemplateResult {
  const { voice, state, plan } = context;
  const choices = (field: SheetField, chosen: string) => ({
    isLocked: () => false,
    chosen,
    choose: (value: string) => state.type({ [field]: value }, false),
  });
  const rounds = plan.rounds.map(
    ({ number }) => [String(number), voice.say('tableRound', { round: number })] as const,
  );
  return html`<div class="fields" role="group" aria-label=${voice.say('panelSheets')}>
    ${choiceField(
      'sheet-kind',
      voice.say('sheetKind'),
      named(voice, ['trim', 'sheets-trim'], ['foundation', 'sheets-foundation']),
      choices('sheet-kind', kind),
    )}
    ${choiceField(
      'sheet-paper',
      voice.say('paper'),
      named(voice, ['letter', 'letter'], ['a4', 'a4']),
      choices('sheet-paper', paper),
    )}
    ${
      kind === 'trim'
        ? selectField(
            'sheet-round',
            voice.say('sheetRound'),
            [['', voice.say('everyRound')], ...rounds],
            choices('sheet-round', round),
          )
        : nothing
    }
  </div>`;
}

/** The chart by itself, and the trim templates and the foundation at true scale. */
export const sheets: LogCabinPanel = {
  name: 'sheets',
  summary: 'panelSheets',
  needsPlan: true,
  render: (context) => {
    const { voice, state, plan, settings } = context;
    const metric = voice.measures.units === 'metric';
    const texts = textsOf<SheetField>(usualSheets(metric), state.texts);
    const model = known.of(state, [texts, settings, metric], () => {
      const made = sheetsModel(texts, plan, voice);
      const [first] = made.pages;
      return first === undefined ? made : { ...made, preview: svgElement(document, first.image) };
    });
    const { pages, preview, kind, faults } = model;
    return html`<div class="actions">
        ${action(voice.say('printChart'), () => printChart(context))}
      </div>
      ${sheetForm(model, context)}
      ${[...faults.values()].map((fault) => html`<p class="error" .textContent=${voice.error(fault)}></p>`)}
      ${
        preview === undefined
          ? nothing
          : html`<div class="beside">
              <figure class="preview" aria-label=${voice.say('firstSheet')}>${preview}</figure>
              <div>
                <p>
                  <span translate="no" .textContent=${voice.say('sheetCount', { pages: pages.length })}></span>
                </p>
                <p .textContent=${voice.say(kind === 'trim' ? 'sheetUse' : 'foundationUse')}></p>
                <div class="actions">
                  ${action(voice.say('printSheets'), () => printSheets(model, context))}
                  ${action(voice.say('saveSheets'), () => saveSheets(model, context))}
                </div>
              </div>
            </div>`
      }`;
  },
};
