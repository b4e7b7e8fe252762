import {
  type LengthInput,
  type LogCabinSpec,
  type LogCabinWarningCode,
  length,
  logCabin,
  logCabinSentences,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulations } from './designs.js';
import { specOf } from './simulation.js';
import { sixtyFourths } from './support.js';

const nine = {
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
} as const;

type Case = readonly [
  what: string,
  spec: LogCabinSpec,
  warnings: readonly (readonly [code: LogCabinWarningCode, field: string, text: string])[],
];

const cases: readonly Case[] = [
  ['a block on the grid', nine, []],
  ['logs that finish half an inch', { rounds: 2, center: 2, log: '1/2' }, []],
  [
    'logs that finish less than half an inch',
    { ...nine, narrow: '3/8' },
    [
      [
        'narrow-log',
        'narrow',
        'Logs that finish 3/8 are narrower than two seam allowances: each seam will catch the allowances of the one before.',
      ],
    ],
  ],
  [
    'logs narrower than two allowances of 3/8',
    { rounds: 1, center: 2, log: '5/8', seam: '3/8' },
    [
      [
        'narrow-log',
        'log',
        'Logs that finish 5/8 are narrower than two seam allowances: each seam will catch the allowances of the one before.',
      ],
    ],
  ],
  [
    'narrow logs from strips of two widths',
    { rounds: 2, center: 2, log: '3/8', strips: { log: [1, '1 1/4'] } },
    [
      [
        'narrow-log',
        'log',
        'Logs that finish 3/8 are narrower than two seam allowances: each seam will catch the allowances of the one before.',
      ],
    ],
  ],
  ['a center that finishes half an inch', { rounds: 1, center: '1/2', log: 1 }, []],
  [
    'a center lower than two allowances',
    { rounds: 1, center: { width: 1, height: '3/8' }, log: 1 },
    [
      [
        'narrow-center',
        'center',
        'A center that finishes 3/8 is narrower than two seam allowances: its seams will catch each other.',
      ],
    ],
  ],
  [
    // Two rounds, a log left and one right in each: 4 times what a strip is wider.
    'logs off the grid that are not trimmed',
    { rounds: 2, center: 2, log: ['1 1/16', '1 1/16'] },
    [
      [
        'log-off-grid',
        'log',
        'A strip for logs that finish 1 1/16 is exactly 1 9/16 wide. Cut at 1 5/8, it adds 1/4 to a block that is not trimmed.',
      ],
    ],
  ],
  [
    // Two on the left, for one wide and one narrow side; only one of each pair lies across.
    'wide logs off the grid that are not trimmed',
    { rounds: 2, center: 2, wide: '1 1/16', narrow: 1 },
    [
      [
        'log-off-grid',
        'wide',
        'A strip for logs that finish 1 1/16 is exactly 1 9/16 wide. Cut at 1 5/8, it adds 1/8 to a block that is not trimmed.',
      ],
    ],
  ],
  [
    'strips off the grid, for logs that are trimmed',
    { rounds: 2, center: 2, log: 1, strips: { log: '1 11/16' } },
    [
      [
        'strip-off-grid',
        'strips.log',
        'A strip 1 11/16 wide lies between two lines of the grid: it is cut at 1 3/4, and trimming takes off the difference.',
      ],
    ],
  ],
  [
    'one strip off the grid for logs of two widths',
    { rounds: 2, center: 2, log: [1, '7/8'], strips: { log: '1 11/16' } },
    [
      [
        'strip-off-grid',
        'strips.log',
        'A strip 1 11/16 wide lies between two lines of the grid: it is cut at 1 3/4, and trimming takes off the difference.',
      ],
    ],
  ],
  [
    'a center off the grid',
    { rounds: 1, center: '2 1/16', log: 1 },
    [
      [
        'center-off-grid',
        'center',
        'The center is exactly 2 9/16 when cut. Cut at 2 5/8, it adds 1/16 to the block unless it is trimmed first.',
      ],
      [
        'finished-off-grid',
        'finished',
        'The block finishes 4 1/16, which is 1/16 beyond a line of the 1/8 grid.',
      ],
    ],
  ],
  [
    'a block that finishes off the grid one way',
    { rounds: 1, center: { width: '2 1/16', height: 2 }, log: 1, grid: '1/16' },
    [],
  ],
  [
    'trim lines off the grid in the second round only',
    { rounds: 3, center: 2, log: [1, '1 1/16', '1 1/16'], strips: { log: 2 } },
    [
      [
        'trim-off-grid',
        'grid',
        'In round 2 a trim line lies between two lines of the 1/8 grid, 1/16 beyond one.',
      ],
    ],
  ],
  [
    'a block that finishes off the grid across',
    { rounds: 1, center: { width: '2 1/16', height: 2 }, log: 1 },
    [
      [
        'center-off-grid',
        'center',
        'The center is exactly 2 9/16 when cut. Cut at 2 5/8, it adds 1/16 to the block unless it is trimmed first.',
      ],
      [
        'finished-off-grid',
        'finished',
        'The block finishes 4 1/16, which is 1/16 beyond a line of the 1/8 grid.',
      ],
    ],
  ],
  [
    'a block that finishes off the grid down',
    { rounds: 1, center: { width: 2, height: '2 1/16' }, log: 1 },
    [
      [
        'center-off-grid',
        'center',
        'The center is exactly 2 9/16 when cut. Cut at 2 5/8, it adds 1/16 to the block unless it is trimmed first.',
      ],
      [
        'finished-off-grid',
        'finished',
        'The block finishes 4 1/16, which is 1/16 beyond a line of the 1/8 grid.',
      ],
    ],
  ],
  [
    // 1/32 beyond a line after the first round, 1/16 after the second.
    'trim lines off the grid, the later one by more',
    { rounds: 2, center: 2, log: ['1 1/32', '1 1/32'], strips: { log: 2 } },
    [
      [
        'trim-off-grid',
        'grid',
        'In round 1, 2 a trim line lies between two lines of the 1/8 grid, 1/16 beyond one.',
      ],
    ],
  ],
  [
    // 3/32 beyond a line after the first round, 1/32 after the second.
    'trim lines off the grid, the earlier one by more',
    { rounds: 2, center: 2, log: ['1 3/32', '1 15/16'], strips: { log: 3 } },
    [
      [
        'finished-off-grid',
        'finished',
        'The block finishes 8 1/16, which is 1/16 beyond a line of the 1/8 grid.',
      ],
      [
        'trim-off-grid',
        'grid',
        'In round 1, 2 a trim line lies between two lines of the 1/8 grid, 3/32 beyond one.',
      ],
    ],
  ],
  ...(
    [
      ['1 1/16', '1 1/32'],
      ['1 1/32', '1 1/16'],
    ] as const
  ).map(
    ([wide, narrow]): Case => [
      `trim lines off the grid on sides of ${wide} and of ${narrow}, told by the more`,
      { rounds: 1, center: 2, wide, narrow, strips: { wide: 2, narrow: 2 } },
      [
        [
          'finished-off-grid',
          'finished',
          'The block finishes 4 3/32, which is 3/32 beyond a line of the 1/8 grid.',
        ],
        [
          'trim-off-grid',
          'grid',
          'In round 1 a trim line lies between two lines of the 1/8 grid, 1/16 beyond one.',
        ],
      ],
    ],
  ),
  [
    // A seam of 7/32 puts every strip and every line off the grid of eighths: 1 7/16, 7/32 over 1 1/8.
    'a seam off the grid',
    { rounds: 2, center: 2, log: 1, seam: '7/32', trim: { after: 'round' } },
    [
      [
        'center-off-grid',
        'center',
        'The center is exactly 2 7/16 when cut. Cut at 2 1/2, it adds 1/16 to the block unless it is trimmed first.',
      ],
      [
        'trim-off-grid',
        'grid',
        'In round 1, 2 a trim line lies between two lines of the 1/8 grid, 3/32 beyond one.',
      ],
    ],
  ],
];

describe('a person is warned before cutting of', () => {
  it.each(cases.map(([what, spec, warnings]) => ({ what, spec, warnings })))(
    '$what',
    ({ spec, warnings }) => {
      expect(logCabin(spec).warnings.map(({ code, field, text }) => [code, field, text])).toEqual(
        warnings,
      );
    },
  );

  it('nothing else: every sentence occurs above', () => {
    const said = new Set(cases.flatMap(([, , warnings]) => warnings.map(([code]) => code)));
    expect([...said].sort()).toEqual(Object.keys(logCabinSentences).sort());
  });
});

/** A length in a warning's values. */
const sixtyFourthsIn = (value: unknown): number => sixtyFourths(length(value as LengthInput));

describe('what rounding strips and center up would add', () => {
  it('is what the block comes out larger across when it is not trimmed', () => {
    fc.assert(
      fc.property(simulations, (simulation) => {
        const spec = specOf({ ...simulation, trim: 'never' });
        const { warnings, logs, center } = logCabin(spec);
        // Each strip sewn to the left or right shows two allowances less than what is cut.
        const wider = logs
          .filter(({ side }) => side === 'left' || side === 'right')
          .reduce(
            (sum, { cut, exact = cut }) => sum + sixtyFourths(cut.width.minus(exact.width)),
            0,
          );
        const said = warnings
          .filter(({ code }) => code === 'log-off-grid')
          .reduce((sum, { values }) => sum + sixtyFourthsIn(values.adds), 0);
        expect(said).toBe(wider);
        const { cut, exact = cut } = center;
        const across = sixtyFourths(cut.width.minus(exact.width));
        const ofCenter = warnings
          .filter(({ code }) => code === 'center-off-grid')
          .map(({ values }) => sixtyFourthsIn(values.adds));
        if (across > 0) expect(ofCenter[0]).toBe(across);
      }),
    );
  });

  it('is said once of each field', () => {
    fc.assert(
      fc.property(simulations, (simulation) => {
        const texts = logCabin(specOf(simulation)).warnings.map(
          ({ field, text }) => `${field}: ${text}`,
        );
        expect(new Set(texts).size).toBe(texts.length);
      }),
    );
  });
});
