import type { FabricPlan, Length, YardageAlternative } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { amountOf } from '../base/amount.js';
import { measure, rectangleMeasure, spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import { joinList } from './joinList.js';
import { blockLayout, stripLayout } from './layouts.js';
import { stepList } from './stepList.js';
import { isWhole, type Yards } from './yards.js';

/** What the shop measures in, by what it cuts in: no part of a yard is whole centimeters. */
export const shopUnit = (increment: Length): 'yd' | 'm' =>
  increment.isOnGrid('1 cm') ? 'm' : 'yd';

const countText = (count: number): TemplateResult =>
  html`<span translate="no" .textContent=${String(count)}></span>`;

/** An amount in the shop's own measure. */
function shopAmount(value: Length, { increment }: Yards, voice: Voice): TemplateResult {
  const { figures, spoken } = amountOf(value, shopUnit(increment), voice.measures);
  return spokenText(figures, spoken);
}

/** What to buy, in the shop's own measure and the other one. */
function toBuy(fabric: string | undefined, bought: Yards, voice: Voice): TemplateResult {
  const { buy, increment } = bought;
  const yards = shopAmount(buy, bought, voice);
  const other = amountOf(buy, shopUnit(increment) === 'm' ? 'yd' : 'm', voice.measures).figures;
  const name = html`<span .textContent=${fabric ?? ''}></span>`;
  const metric = html`<bdi dir="ltr" translate="no" .textContent=${other}></bdi>`;
  return html`<p class="headline" part="headline">
    ${sentence(fabric === undefined ? 'buy' : 'buyFabric', { yards, fabric: name }, voice)}
    <span class="minor">${sentence('meters', { meters: metric }, voice)}</span>
  </p>`;
}

/** What the thrifty plan saves in fabric and costs in cuts. */
function comparison(bought: Yards, voice: Voice): TemplateResult | typeof nothing {
  const by = (method: YardageAlternative['method']) =>
    bought.alternatives.find((each) => each.method === method);
  const [plain, thrifty] = [by('plain'), by('thrifty')];
  if (plain === undefined || thrifty === undefined) return nothing;
  const places = { cuts: countText(thrifty.cuts), plainCuts: countText(plain.cuts) };
  const said = (name: MessageName, saved: TemplateResult): TemplateResult =>
    html`<p>${sentence(name, { saved, ...places }, voice)}</p>`;
  const less = plain.buy.minus(thrifty.buy);
  if (less.sign() > 0) return said('thriftySaves', shopAmount(less, bought, voice));
  const shorter = plain.bare.minus(thrifty.bare);
  if (shorter.sign() > 0) return said('thriftySame', measure(shorter, voice));
  return said('thriftyNothing', html``);
}

/** What is proven: of this method's plans, or of both methods' where either might have been used. */
function proof({ plan, purchaseProven }: Yards, asked: string, voice: Voice): TemplateResult {
  const plain = asked === 'plain';
  const used = isWhole(plan) ? (plan.across?.method ?? 'thrifty') : plan.method;
  const isAbout = plain || used === 'thrifty';
  if (plan.optimal && isAbout) return sentence(plain ? 'proven' : 'provenThrifty', {}, voice);
  if (purchaseProven)
    return sentence(plain ? 'purchaseProven' : 'purchaseProvenThrifty', {}, voice);
  const lowerBound = measure(plan.lowerBound, voice);
  return sentence(isAbout ? 'unproven' : 'purchaseUnproven', { lowerBound }, voice);
}

/** What the amount is made up of, what is proven of it, and what is left. */
function reckoning(bought: Yards, asked: string, voice: Voice): TemplateResult {
  const { bare, spare, straightening, shrinkage, need, plan, leftOver } = bought;
  const shown = (value: Length) => measure(value, voice);
  const share = (used: number) =>
    sentence(
      'share',
      { percent: html`<span translate="no" .textContent=${(used * 100).toFixed(0)}></span>` },
      voice,
    );
  return html`<p>
    ${sentence(
      'need',
      {
        bare: shown(bare),
        spare: shown(spare),
        straightening: shown(straightening),
        shrinkage: shown(shrinkage),
        need: shown(need),
      },
      voice,
    )}
    ${proof(bought, asked, voice)} ${isWhole(plan) ? nothing : share(plan.used)}
    ${sentence('leftOver', { leftOver: rectangleMeasure(leftOver.width, leftOver.height, voice) }, voice)}
  </p>`;
}

/** Which piece of the list something on the fabric is cut for. */
const placesIn = (plan: FabricPlan): readonly number[] =>
  plan
    .placements()
    .map((placed) =>
      placed.kind === 'piece' ? placed.piece : (plan.joined?.runs[placed.run]?.pieces[0] ?? 0),
    );

/** The block along the length, what is beside it, then the strips, and how those are joined. */
function wholeLayout(plan: FabricPlan, rows: readonly number[], voice: Voice): TemplateResult {
  const { along, beside, across, joined } = plan;
  const places = placesIn(plan);
  const strips = across?.placements() ?? [];
  const inBlock = places.length - strips.length;
  const placeOfStrip = (piece: number): number =>
    places[inBlock + strips.findIndex((placed) => placed.piece === piece)] ?? 0;
  const block = () => {
    if (along === undefined) return nothing;
    const placements = plan
      .placements()
      .slice(0, inBlock)
      .map((placed, at) => ({ ...placed, piece: places[at] ?? 0 }));
    const unused = along.leftOver.filter((_, at) => beside.every(({ from }) => from !== at));
    const leftOver = [...unused, ...beside.flatMap((each) => each.leftOver)];
    const rests = html`${leftOver.map(
      ({ width, height }, at) =>
        html`${at === 0 ? '' : voice.template('comma')}${rectangleMeasure(width, height, voice)}`,
    )}`;
    const steps = [...along.steps, ...beside.flatMap((each) => each.steps)];
    return html`<h3 .textContent=${voice.say('block')}></h3>
      ${stepList(steps, 1, voice)}
      ${leftOver.length === 0 ? nothing : html`<p>${sentence('beside', { rests }, voice)}</p>`}
      ${blockLayout({ width: plan.width, length: along.length, placements }, rows, voice)}`;
  };
  const acrossSteps = [...(across?.steps ?? []), ...(joined?.steps ?? [])];
  return html`${block()}
    ${acrossSteps.length === 0 ? nothing : stepList(acrossSteps, 0, voice)}
    ${joined === undefined ? nothing : joinList(joined, rows, voice)}
    ${
      across === undefined
        ? nothing
        : stripLayout(
            across,
            across.pieces.map((_, piece) => placeOfStrip(piece)),
            rows,
            voice,
          )
    }`;
}

/** What to buy by the yard, how to cut it, and where everything lies. */
export function yardsAnswer(
  fabric: string | undefined,
  bought: Yards,
  rows: readonly number[],
  asked: string,
  voice: Voice,
): TemplateResult {
  const { plan } = bought;
  const layout = isWhole(plan)
    ? wholeLayout(plan, rows, voice)
    : html`${stepList(plan.steps, 0, voice)}
      ${stripLayout(
        plan,
        plan.pieces.map((_, at) => at),
        rows,
        voice,
      )}`;
  return html`${toBuy(fabric, bought, voice)} ${comparison(bought, voice)}
  ${reckoning(bought, asked, voice)} ${layout}`;
}
