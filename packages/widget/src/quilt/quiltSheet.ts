import { html, nothing, type TemplateResult } from 'lit';
import { sizeMeasure, spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { paintingView } from '../drawing/drawingView.js';
import { paintedQuilt } from './picture.js';
import { type Shown, TINTS } from './shown.js';

function figure({ picture, voice }: Shown): TemplateResult {
  if (picture === undefined) return html`<p .textContent=${voice.say('tooManyCells')}></p>`;
  const { measures } = voice;
  const painting = paintedQuilt(picture, {
    write: measures.figures,
    words: voice.drawingWords,
    scale: measures.units === 'metric' ? 'centimeters' : 'inches',
  });
  return html`<figure>${paintingView(painting, picture.frame, voice, TINTS)}</figure>`;
}

/** The size's name, or what it is called here where it is the reader's own. */
export function sizeName({
  plan,
  recipe,
  voice,
}: Pick<Shown, 'plan' | 'recipe' | 'voice'>): string {
  const { across, down } = plan.layout;
  const isNamed = recipe.sizes.some(({ name }) => name === plan.size);
  return isNamed ? plan.size : voice.say('ownSize', { across, down });
}

/** The pattern's name, what it finishes to, and the quilt itself. */
export function quiltSheet(shown: Shown): TemplateResult {
  const { plan, voice } = shown;
  const { name, about, layout } = plan;
  const count = (value: number): TemplateResult => spokenText(String(value), String(value));
  const setting = layout.setting === 'straight' ? 'inRows' : 'onPoint';
  return html`<div class="sheet" part="sheet">
    <h3 .textContent=${voice.say('patternSize', { name, size: sizeName(shown) })}></h3>
    ${about === undefined ? nothing : html`<p class="about" .textContent=${about}></p>`}
    <p class="headline" part="headline">
      ${sentence('quiltHeadline', { finished: sizeMeasure(plan.finished, voice) }, voice)}
      <span class="minor">
        ${sentence(setting, { across: count(layout.across), down: count(layout.down) }, voice)}
      </span>
    </p>
    ${figure(shown)}
  </div>`;
}
