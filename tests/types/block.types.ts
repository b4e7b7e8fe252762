/** Lines that must and must not compile; `tsc -p tsconfig.json` reads them, nothing runs them. */
import {
  type CurvedLogCabinSpec,
  type Drawing,
  drawLogCabin,
  drawTrim,
  type EighthsError,
  type Hand,
  type Length,
  type LogCabin,
  type LogCabinSpec,
  type LogCabinWarningCode,
  length,
  logCabin,
  type PlainLogCabinSpec,
  type Side,
  toSvg,
  trimCuts,
} from '@eighths/core';

// A plain block, with everything that may be said of it.
const plain: PlainLogCabinSpec = {
  rounds: 4,
  layout: 'quarter',
  log: ['1', 1.5, length('1 1/4'), 2n],
  direction: 'counterclockwise',
  start: 'left',
  center: { width: 2, height: '2 1/2' },
  finished: '10',
  seam: '1/4',
  strips: { log: 2 },
  trim: { after: 'round' },
  extra: '1/2',
  fabrics: { center: 'rust', log: ['fern', 'moss', 'oat', 'ink'], left: 'slate' },
  grid: '1/8',
  cornerstones: true,
};

// A curved block.
const curved: CurvedLogCabinSpec = {
  rounds: 4,
  layout: 'courthouse',
  center: 2,
  wide: '1 1/4',
  narrow: ['1/2', '1/2', '3/8', '3/8'],
  wideSides: ['right', 'bottom'],
  first: 'narrow',
  strips: { wide: 2, narrow: '1 1/2' },
  trim: { after: 'log' },
};
const specs: readonly LogCabinSpec[] = [plain, curved];
const plans: readonly LogCabin[] = specs.map(logCabin);

// A spec that is made up as one goes along fits where its kind is not known yet.
declare const unknownKind: LogCabinSpec;
logCabin({ ...unknownKind, rounds: 3 });

// What a spec needs.
// @ts-expect-error nothing at all
logCabin();
// @ts-expect-error null
logCabin(null);
// @ts-expect-error no rounds
logCabin({ center: 2, log: 1 });
// @ts-expect-error neither log nor wide and narrow
logCabin({ rounds: 1, center: 2 });
// @ts-expect-error wide without narrow
logCabin({ rounds: 1, center: 2, wide: 1 });
// @ts-expect-error narrow without wide
logCabin({ rounds: 1, center: 2, narrow: 1 });

// What excludes what.
// @ts-expect-error log and wide
logCabin({ rounds: 1, center: 2, log: 1, wide: 1, narrow: 1 });
// @ts-expect-error log and wide sides
logCabin({ rounds: 1, center: 2, log: 1, wideSides: ['right', 'bottom'] });
// @ts-expect-error log and which pair comes first
logCabin({ rounds: 1, center: 2, log: 1, first: 'wide' });
// @ts-expect-error a quarter block takes log only
logCabin({ rounds: 1, layout: 'quarter', center: 2, wide: 1, narrow: 1 });
// @ts-expect-error strips of a kind that the block does not have
logCabin({ rounds: 1, center: 2, log: 1, strips: { wide: 2 } });
// @ts-expect-error strips of a kind that the block does not have
logCabin({ rounds: 1, center: 2, wide: 1, narrow: 1, strips: { log: 2 } });

// Words and kinds.
// @ts-expect-error a misspelled field
logCabin({ rounds: 1, center: 2, log: 1, seams: '1/4' });
// @ts-expect-error a field that is there but undefined
logCabin({ rounds: 1, center: 2, log: 1, seam: undefined });
// @ts-expect-error null is no default
logCabin({ rounds: 1, center: 2, log: 1, strips: null });
// @ts-expect-error rounds in quotes
logCabin({ rounds: '4', center: 2, log: 1 });
// @ts-expect-error an unknown layout
logCabin({ rounds: 1, center: 2, log: 1, layout: 'pineapple' });
// @ts-expect-error an unknown side
logCabin({ rounds: 1, center: 2, log: 1, start: 'up' });
// @ts-expect-error three wide sides
logCabin({ rounds: 1, center: 2, wide: 1, narrow: 1, wideSides: ['top', 'left', 'right'] });
// @ts-expect-error an unknown time to trim
logCabin({ rounds: 1, center: 2, log: 1, trim: { after: 'sewing' } });
// @ts-expect-error a size of one side
logCabin({ rounds: 1, center: { width: 2 }, log: 1 });
// @ts-expect-error cornerstones in words
logCabin({ rounds: 1, center: 2, log: 1, cornerstones: 'yes' });
// @ts-expect-error a fabric for a part that is not there
logCabin({ rounds: 1, center: 2, log: 1, fabrics: { border: 'fern' } });

// A plan is read, not changed, and says what is what.
for (const plan of plans) {
  const finished: Length = plan.finished.width;
  // @ts-expect-error a plan is read-only
  plan.finished = { width: finished, height: finished };
  // @ts-expect-error so are its lists
  plan.logs.push(plan.logs[0]);
  // @ts-expect-error an entry may be missing
  const first: LogCabin['logs'][number] = plan.logs[0];
  const code: LogCabinWarningCode | undefined = plan.warnings[0]?.code;
  // @ts-expect-error the codes of warnings are a closed list
  const isThere = code === 'no-such-warning';
  for (const round of plan.rounds) {
    const away: Length = round.trimAway.left;
    // @ts-expect-error sides have names
    round.trimAway.front;
    const cuts = trimCuts(plan, round, 'left');
    // @ts-expect-error a hand is left or right
    trimCuts(plan, round, 'both');
    // @ts-expect-error a hand is needed
    trimCuts(plan, round);
    void [away, cuts];
  }
  const drawing: Drawing = drawLogCabin(plan, { round: 1 });
  // @ts-expect-error which round is needed
  drawTrim(plan, {});
  // @ts-expect-error the ruler's hand is left or right
  drawTrim(plan, { round: 1, hand: 'both' });
  // @ts-expect-error a plan is no drawing
  toSvg(plan);
  const svg: string = toSvg(drawing, { size: 'true', words: { finished: 'fertig' } });
  // @ts-expect-error a word that no drawing has
  toSvg(drawing, { words: { unfinished: 'roh' } });
  void [first, isThere, svg];
}

// Sides and hands are words, not just any text.
// @ts-expect-error no side
const side: Side = 'front';
// @ts-expect-error no hand
const hand: Hand = 'both';
// @ts-expect-error no code of an error
const wrong: EighthsError['code'] = 'no-such-error';
void [side, hand, wrong];
