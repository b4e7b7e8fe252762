import type { Binding } from '../binding/plan.js';
import type { QuiltPlan } from '../pattern/plan.js';
import { type DocumentPart, heading, items, table } from './document.js';
import { inUnits } from './inUnits.js';
import type { Writing } from './writing.js';

const STRIP_NAMES = {
  sides: 'sides',
  'top-and-bottom': 'top and bottom',
  corners: 'corner squares',
} as const;

/** The strips of all borders. */
export function borderParts({ borders }: QuiltPlan, writing: Writing): readonly DocumentPart[] {
  if (borders === undefined) return [];
  return [
    heading('Borders'),
    table(
      'Cut to the measured top; these are the sizes by the plan',
      ['Border', 'Strips', 'Cut#', 'How many#', 'The quilt then finishes#'],
      borders.borders.flatMap((border, index) =>
        border.parts.map(({ part, cut, count, units }) => [
          `${index + 1}, ${border.style}`,
          STRIP_NAMES[part],
          units === undefined
            ? writing.size({ width: cut.width, height: cut.length })
            : `${units} blocks each`,
          String(count),
          writing.size(border.finished),
        ]),
      ),
    ),
  ];
}

/** Backing, batting and binding. */
export function finishing(plan: QuiltPlan, writing: Writing): readonly DocumentPart[] {
  const { binding, backing, batting } = plan;
  const texts = [
    backing &&
      `Backing: ${writing.size(backing.target)} at least; ${backing.best.panels} of ${writing.length(backing.best.panel)} by the width of fabric${backing.best.seams === 'none' ? '' : `, ${backing.best.seams} seams`}.`,
    ...(backing?.nearMisses ?? []).map(({ note }) => inUnits(note, writing)),
    batting && `Batting: ${writing.size(batting.target)} at least.`,
    binding && bindingText(binding, writing),
  ];
  const told = texts.filter((text) => text !== undefined);
  return told.length === 0 ? [] : [heading('Finishing'), ...items(told)];
}

function bindingText(binding: Binding, writing: Writing): string {
  const { strip, length, needed } = binding;
  const amount = `${writing.length(length)}, ${writing.length(needed)} needed`;
  switch (binding.cut) {
    case 'straight':
      return `Binding: ${binding.strips} strips ${writing.length(strip)} wide, joined on the diagonal: ${amount}.`;
    case 'bias-strips':
      return `Binding: ${binding.strips} bias strips ${writing.length(strip)} wide from ${writing.length(binding.fabric)} of fabric: ${amount}.`;
    case 'bias-continuous':
      return `Binding: continuous bias ${writing.length(strip)} wide from ${binding.squares} squares of ${writing.length(binding.square)}: ${amount}.`;
  }
}
