import type { LogCabin } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import {
  choiceField,
  countField,
  type FormContext,
  fractionRow,
  lengthField,
  named,
} from '../base/fields.js';
import type { MessageName } from '../messages/messages.js';
import type { LogCabinField, LogCabinSettings } from './fields.js';

/** A log cabin's form needs to know besides: what was solved, and what is set outside the spec. */
export interface LogCabinForm extends FormContext<LogCabinField> {
  readonly plan: LogCabin | undefined;
  /** The length input that was used last. */
  readonly target: LogCabinField;
  readonly units: 'inches' | 'metric';
  readonly setUnits: (units: string) => void;
}

const ALWAYS_IN_SIGHT: readonly string[] = ['finished', 'rounds', 'center', 'blocks'];

/** Whether a field has an input in sight, where its error stands. */
export function isInSight(field: string, { kind }: LogCabinSettings): boolean {
  const own = kind === 'plain' ? /^(strips-)?log$/ : /^(strips-)?(wide|narrow)$/;
  return ALWAYS_IN_SIGHT.includes(field) || own.test(field);
}

type LengthFieldName = LogCabinField & MessageName;

/** The inputs that most people need: the block, its logs, and how many. */
function essentials(form: LogCabinForm): TemplateResult {
  const { voice, settings, plan } = form;
  const label = voice.say;
  const curved = settings.kind !== 'plain';
  const input = (field: LengthFieldName, placeholder?: string) =>
    lengthField(
      field,
      { label: label(field), ...(placeholder === undefined ? {} : { placeholder }) },
      form,
    );
  const solved = plan === undefined ? label('solved') : undefined;
  const worked = (size: LogCabin['finished'] | undefined) =>
    solved ?? (size === undefined ? '' : voice.measures.typed(size.width));
  return html`<div class="fields" part="essentials">
    ${input('finished', worked(plan?.finished))}
    ${countField('rounds', { label: label('rounds') }, form)}
    ${choiceField('kind', label('kind'), named(voice, ['plain', 'plain'], ['curved', 'curved']), {
      ...form,
      chosen: settings.kind,
      choose: (kind) => form.type('kind', kind, false),
    })}
    ${curved ? [input('wide'), input('narrow')] : input('log')}
    ${
      curved
        ? [input('strips-wide', label('usual')), input('strips-narrow', label('usual'))]
        : input('strips-log', label('usual'))
    }
    ${input('center', worked(plan?.center.finished))}
    ${countField('blocks', { label: label('blocks') }, form)}
  </div>
  ${fractionRow(form.target, form)}`;
}

/** What has a usual answer, out of the way until it is wanted. */
function more(form: LogCabinForm): TemplateResult {
  const { voice, settings } = form;
  const curved = settings.kind !== 'plain';
  const choice = (
    field: LogCabinField & MessageName,
    chosen: string,
    ...choices: readonly (readonly [string, MessageName])[]
  ) =>
    choiceField(field, voice.say(field), named(voice, ...choices), {
      ...form,
      chosen,
      choose: (value) => form.type(field, value, false),
    });
  const layouts = [
    ['spiral', 'spiral'],
    ['courthouse', 'courthouse'],
  ] as const;
  return html`<details part="more">
    <summary .textContent=${voice.say('more')}></summary>
    <div class="fields">
      ${
        curved
          ? [
              choice('layout', settings.layout || 'spiral', ...layouts),
              choice(
                'first',
                settings.first || 'wide',
                ['wide', 'first-wide'],
                ['narrow', 'first-narrow'],
              ),
            ]
          : choice('layout', settings.layout || 'spiral', ...layouts, ['quarter', 'quarter'])
      }
      ${choice(
        'direction',
        settings.direction || 'clockwise',
        ['clockwise', 'clockwise'],
        ['counterclockwise', 'counterclockwise'],
      )}
      ${choice(
        'trim-after',
        settings['trim-after'],
        ['', 'trim-usual'],
        ['round', 'trim-round'],
        ['log', 'trim-log'],
        ['never', 'trim-never'],
      )}
      ${lengthField('seam', { label: voice.say('seam'), placeholder: voice.measures.typed('1/4') }, form)}
      ${lengthField('extra', { label: voice.say('extra'), placeholder: '0' }, form)}
      ${choiceField(
        'units',
        voice.say('units'),
        named(voice, ['inches', 'inches'], ['metric', 'centimeters']),
        { ...form, chosen: form.units, choose: form.setUnits },
      )}
    </div>
  </details>`;
}

export const logCabinForm = (form: LogCabinForm): TemplateResult =>
  html`<div class="form" part="form" role="group" aria-label=${form.voice.say('sizes')}>
    ${essentials(form)}${more(form)}
  </div>`;
