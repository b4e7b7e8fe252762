import { exactOptional, literal, variant } from 'valibot';
import { accepts } from './accepts.js';
import { choice, fabricId, fields, finishedWidth, id, list, measure } from './fields.js';

const grain = choice(
  ['crosswise', 'lengthwise'],
  'Whether strips run across the fabric and are joined, or along its length.',
);

const borderSchema = variant(
  'style',
  [
    fields(
      {
        style: exactOptional(literal('straight'), 'straight'),
        width: finishedWidth,
        fabric: fabricId,
        corners: exactOptional(id('The fabric of squares in the corners; left out, none.')),
        cut: exactOptional(grain, 'crosswise'),
      },
      'A border whose sides are sewn first, then top and bottom.',
    ),
    fields(
      {
        style: literal('mitered'),
        width: finishedWidth,
        fabric: fabricId,
        cut: exactOptional(grain, 'crosswise'),
        extra: exactOptional(
          measure('zero or more', 'What strips are cut beyond the least length.'),
          4,
        ),
      },
      'A border whose corners are mitered.',
    ),
    fields(
      {
        style: literal('pieced'),
        block: id('The block that the border repeats; its height is the border’s width.'),
        corners: exactOptional(id('The fabric of squares in the corners; left out, none.')),
      },
      'A border of blocks.',
    ),
  ],
  accepts({ kind: 'choice', choices: ['straight', 'mitered', 'pieced'] }),
);

/** The borders of a recipe. */
export const bordersSchema = list(borderSchema, 0, 20, 'Borders, the innermost first.');
