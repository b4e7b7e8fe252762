import type { QuiltRecipe } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import {
  choiceField,
  countField,
  type FormContext,
  lengthField,
  named,
  wordField,
} from '../base/fields.js';
import { selectField } from '../base/selectField.js';
import { eachText, onlyOneEach } from './each.js';
import type { QuiltField } from './fields.js';

/** What the quilt element's form needs to know besides. */
export interface QuiltForm extends FormContext<QuiltField> {
  readonly recipe: QuiltRecipe;
  readonly setSize: (name: string) => void;
  readonly setUnits: (units: string) => void;
  readonly isOpen: (part: string) => boolean;
  readonly setOpen: (part: string, open: boolean) => void;
}

/** No size of a recipe has this name: its texts are not empty. */
const OWN = '';

function sizeField(form: QuiltForm): TemplateResult {
  const { recipe, settings, voice, setSize, isLocked, faultAt } = form;
  const { size, across, down } = settings;
  const named = recipe.sizes.find(({ name }) => name === size);
  const isOwn = String(named?.across) !== across || String(named?.down) !== down;
  const sizes = recipe.sizes.map(({ name }) => [name, name] as const);
  const own = isOwn ? [[OWN, voice.say('ownSize', { across, down })] as const] : [];
  const chosen = isOwn ? OWN : size;
  const fault = faultAt('size');
  return html`${selectField('size', voice.say('size'), [...sizes, ...own], {
    isLocked,
    chosen,
    choose: setSize,
  })}
  ${fault === undefined ? nothing : html`<p class="error" .textContent=${voice.error(fault)}></p>`}`;
}

const onToggle =
  (part: string, setOpen: QuiltForm['setOpen']) =>
  ({ target }: Event): void => {
    if (target instanceof HTMLDetailsElement) setOpen(part, target.open);
  };

function more(form: QuiltForm): TemplateResult {
  const { voice, settings, type, setUnits, isOpen, setOpen } = form;
  const { units } = voice.measures;
  return html`<details part="more" .open=${isOpen('more')} @toggle=${onToggle('more', setOpen)}>
    <summary .textContent=${voice.say('moreQuilt')}></summary>
    <div class="fields">
      ${lengthField('fabric-width', { label: voice.say('fabric-width') }, form)}
      ${choiceField('method', voice.say('method'), named(voice, ['plain', 'method-plain'], ['thrifty', 'method-thrifty']), { ...form, chosen: settings.method, choose: (method) => type('method', method, false) })}
      ${choiceField('units', voice.say('units'), named(voice, ['inches', 'inches'], ['metric', 'centimeters']), { ...form, chosen: units, choose: setUnits })}
    </div>
  </details>`;
}

/** Size, numbers of blocks, and what is rarely changed. */
export function quiltForm(form: QuiltForm): TemplateResult {
  const { voice } = form;
  return html`<div class="form" part="form" role="group" aria-label=${voice.say('choices')}>
    <div class="fields">
      ${sizeField(form)} ${countField('across', { label: voice.say('across') }, form)}
      ${countField('down', { label: voice.say('down') }, form)}
    </div>
    ${more(form)}
  </div>`;
}

/** What the library takes a bolt for where nothing is said. */
const USUAL_BOLT = '15 yd';

/** How many people, what each makes, how many kits to spare, and what the shop sells them for. */
export function kitsForm(form: QuiltForm): TemplateResult {
  const { voice, settings, recipe, type, isLocked } = form;
  const each = onlyOneEach(settings.each);
  const count = each === undefined || each.count === '' ? '1' : each.count;
  const kinds = [
    ['', voice.say('eachQuilts')] as const,
    ...recipe.blocks.map(
      ({ id, name = id }) => [id, voice.say('eachBlocks', { block: name })] as const,
    ),
  ];
  const set = (block: string, number: string): void => type('each', eachText(block, number));
  const fixed = { isLocked: (field: string) => each === undefined || isLocked(field) };
  return html`<div class="form kits-form" part="form" role="group" aria-label=${voice.say('kits')}>
    <div class="fields">
      ${countField('people', { label: voice.say('people') }, form)}
      ${countField('spares', { label: voice.say('spares'), placeholder: '0' }, form)}
      ${selectField('each-kind', voice.say('each'), kinds, { isLocked: () => fixed.isLocked('each'), chosen: each?.block ?? settings.each, choose: (block) => set(block, count) })}
      ${countField('each', { label: voice.say('eachCount') }, { ...form, ...fixed, settings: { ...settings, each: each === undefined ? '' : each.count || '1' }, type: (_, text) => set(each?.block ?? '', text) })}
      ${wordField('bolt', { label: voice.say('onBolt'), placeholder: USUAL_BOLT }, form)}
      ${wordField('price', { label: voice.say('kitPrice') }, form)}
      ${countField('margin', { label: voice.say('kitMargin') }, form)}
    </div>
  </div>`;
}
