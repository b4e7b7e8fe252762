import {
  drawFoundation,
  drawRoundTemplate,
  foundationSheets,
  logCabin,
  type SheetPage,
  type TrimSheetOptions,
  trimSheets,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

const nine = {
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
} as const;
const block = logCabin(nine);
const large = logCabin({ rounds: 8, center: 2, log: 1, strips: { log: 2 } });

/** The part of the drawing that a sheet shows: left, top, width and height. */
function part({ svg }: SheetPage): readonly number[] {
  const [, text = ''] = /viewBox="([^"]*)" overflow="hidden"/.exec(svg) ?? [];
  return text.split(' ').map(Number);
}

describe('trim sheets', () => {
  it.each<[TrimSheetOptions, string, string]>([
    [{ paper: 'letter' }, 'width="8.5in"', 'height="11in"'],
    [{ paper: 'a4' }, 'width="210mm"', 'height="297mm"'],
  ])('are sheets of the paper asked for, in real inches: %j', (options, width, height) => {
    const sheets = trimSheets(block, options);
    expect(new Set(sheets.map(({ round }) => round))).toEqual(new Set([1, 2, 3, 4]));
    for (const { svg } of sheets) {
      expect(svg).toContain(width);
      expect(svg).toContain(height);
      expect(svg).toContain('measure this square');
      expect(svg).toContain('Never cut');
      expect(svg).not.toMatch(/<script|<style|\sid=|href|url\(/);
    }
  });

  it('are tiled where the paper is smaller: the parts cover the whole and share half an inch', () => {
    const sheets = trimSheets(large, { round: 8 });
    expect(sheets.length).toBeGreaterThan(1);
    const { rows = 0, columns = 0 } = sheets[0] ?? {};
    expect(sheets.length).toBe(rows * columns);
    const [first, second] = sheets;
    if (first === undefined || second === undefined) throw new Error('There are two sheets.');
    const [left = 0, top, width = 0] = part(first);
    expect(part(second)[0]).toBeCloseTo(left + width - 0.5, 4);
    expect(part(second)[1]).toBe(top);
    // 18 1/2 inches of template, from the drawing's left edge to its right one.
    const last = sheets.at(-1);
    const [lastLeft = 0, , lastWidth = 0] = last === undefined ? [] : part(last);
    expect(lastLeft + lastWidth - left).toBeGreaterThan(18.5);
    expect(sheets.every(({ svg }) => svg.includes('>A</text>'))).toBe(true);
    expect(sheets[0]?.notes.map(({ code }) => code)).toContain('join');
    expect(trimSheets(block, { round: 1 })[0]?.notes.map(({ code }) => code)).not.toContain('join');
  });

  it('speak another language and write other measures', () => {
    const [sheet] = trimSheets(block, {
      round: 1,
      say: ({ code }) => `«${code}»`,
      write: (value) => `${(value.toNumber() * 25.4).toFixed(2)} mm`,
    });
    expect(sheet?.svg).toContain('«measure-first»');
    expect(sheet?.svg).toContain('107.95 mm');
  });

  it.each<[string, string, TrimSheetOptions]>([
    ['unknown-choice', 'paper', { paper: JSON.parse('"a5"') }],
    ['out-of-range', 'margin', { margin: 3 }],
    ['not-positive', 'margin', { margin: 0 }],
    ['not-a-count', 'round', { round: 5 }],
    ['unknown-field', 'options.size', JSON.parse('{"size":1}')],
  ])('%s of %s is refused', (code, field, options) => {
    const error = refusal(() => trimSheets(block, options));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('of a block without end are refused', () => {
    const huge = logCabin({ rounds: 50, center: 2, log: 3, strips: { log: 4 } });
    expect(refusal(() => trimSheets(huge)).code).toBe('too-many-pages');
  });
});

describe('a template', () => {
  it('has the trimmed edge, the center’s seam and the last seams of its round', () => {
    const { shapes, title } = drawRoundTemplate(block, 2);
    expect(title.text).toBe('Round 2: trim to 6');
    const measures = shapes.flatMap((shape) =>
      shape.kind === 'dimension' ? [inches(shape.measure)] : [],
    );
    // Round 2: 1 1/4 left and above, 2 3/4 right and below; the block is trimmed to 6.
    expect(measures).toEqual(['1 1/4', '2 3/4', '1 1/4', '2 3/4', '6', '6']);
    expect(shapes.filter((shape) => shape.kind === 'line' && shape.role === 'seam')).toHaveLength(
      4,
    );
  });
});

describe('a foundation', () => {
  it('is mirrored: wide logs on the right of the block lie on its left', () => {
    const { shapes } = drawFoundation(block);
    const firstLog = shapes.find((shape) => shape.kind === 'label');
    // Log 1 lies right of the center, from 2 to 3 1/4; its middle, mirrored, is at −2 5/8.
    expect(firstLog?.kind === 'label' && [firstLog.at.x, firstLog.at.y].map(inches)).toEqual([
      '-2 5/8',
      '1',
    ]);
  });

  it('is numbered in sewing order, with the allowance beyond the finished edge', () => {
    const { shapes } = drawFoundation(block);
    const numbers = shapes.flatMap((shape) =>
      shape.kind === 'label' && 'count' in shape.text ? [shape.text.count] : [],
    );
    expect(numbers).toEqual(Array.from({ length: 16 }, (_, i) => i + 1));
    const outline = shapes.find((shape) => shape.kind === 'area' && shape.role === 'outline');
    const xs = outline?.kind === 'area' ? outline.points.map(({ x }) => x.toNumber()) : [];
    expect(Math.max(...xs) - Math.min(...xs)).toBe(9.5);
  });

  it('comes on paper at true scale', () => {
    const pages = foundationSheets(block, { paper: 'letter' });
    expect(pages.length).toBe((pages[0]?.rows ?? 0) * (pages[0]?.columns ?? 0));
    expect(pages[0]?.svg).toContain('1 inch');
  });
});
