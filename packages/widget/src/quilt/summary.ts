import { amountOf } from '../base/amount.js';
import type { Voice } from '../base/voice.js';
import { incrementOf, unitsFor } from './amounts.js';
import { sizeName } from './quiltSheet.js';
import type { MadeQuilt } from './shown.js';

/** What a screen reader is told when a change has settled. */
export function summaryOf({ recipe, plan }: MadeQuilt, voice: Voice): string {
  const buys = plan.fabrics.map((fabric) => {
    const [unit] = unitsFor(incrementOf(fabric));
    const { spoken: yards } = amountOf(fabric.buy, unit, voice.measures);
    return voice.say('buyOne', { fabric: fabric.name, yards });
  });
  return voice.speak('quiltSummary', {
    size: sizeName({ recipe, plan, voice }),
    finished: plan.finished,
    buys: buys.join('; '),
  });
}
