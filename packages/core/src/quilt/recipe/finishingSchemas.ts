import { exactOptional } from 'valibot';
import { choice, fabricId, fields, measure } from './fields.js';

/** The binding of a recipe. */
export const bindingSchema = fields(
  {
    fabric: fabricId,
    strip: exactOptional(measure('positive', 'The width that strips are cut.'), '2 1/2'),
    cut: exactOptional(
      choice(['straight', 'bias-strips', 'bias-continuous'], 'How it is cut.'),
      'straight',
    ),
    extra: exactOptional(measure('zero or more', 'Beyond the perimeter.'), 10),
  },
  'The binding.',
);

const overhang = exactOptional(measure('zero or more', 'Beyond the top on every side.'), 4);

/** The back of a recipe's quilt. */
export const backingSchema = fields(
  {
    fabric: fabricId,
    overhang,
    seam: exactOptional(measure('positive', 'The seam allowance of its own seams.'), '1/2'),
  },
  'The back.',
);

/** The batting of a recipe. */
export const battingSchema = fields(
  {
    overhang,
    rollWidth: exactOptional(measure('positive', 'The width of a roll.'), 96),
  },
  'The batting.',
);
