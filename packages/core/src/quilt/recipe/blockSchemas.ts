import { exactOptional, literal, record, tuple, variant } from 'valibot';
import { SIDES } from '../../plan/side.js';
import { unitNames } from '../../unit/planUnit.js';
import { accepts } from './accepts.js';
import {
  choice,
  count,
  degrees,
  fabricId as fabric,
  fields,
  id,
  list,
  measure,
  perRound,
  place,
  size,
  text,
  yesOrNo,
} from './fields.js';

const fabrics = perRound(fabric, 'The id of a fabric for each round.');
const widths = perRound(measure('positive', 'A width.'), 'A width for each round.');
const side = choice(SIDES, 'A side of the block as it faces the sewer.');
const finished = size('The finished size.');

/** What every block has. */
const named = {
  id: id('What a pattern of blocks calls it.'),
  name: exactOptional(text(100, 'What people call it; left out, its id.')),
};

const cabin = {
  rounds: count(1, 50, 'How many rounds of logs.'),
  direction: exactOptional(choice(['clockwise', 'counterclockwise'], 'Of sewing.')),
  start: exactOptional(side),
  center: exactOptional(
    size('The finished center; left out, it is solved from the finished size.'),
  ),
  finished: exactOptional(
    size(
      'The finished block; left out, it is solved from the center. If both are given they must agree.',
    ),
  ),
  trim: exactOptional(
    fields(
      {
        after: exactOptional(choice(['round', 'log', 'never'], 'When the block is trimmed.')),
        oversize: exactOptional(
          measure('zero or more', 'What strips are cut beyond the exact width.'),
        ),
      },
      'How the block is trimmed.',
    ),
  ),
  extra: exactOptional(measure('zero or more', 'Length added to each log.')),
  cornerstones: exactOptional(yesOrNo('A square at the end of each log.')),
};

const sideFabrics = {
  center: exactOptional(fabric),
  cornerstone: exactOptional(fabric),
  top: exactOptional(fabrics),
  right: exactOptional(fabrics),
  bottom: exactOptional(fabrics),
  left: exactOptional(fabrics),
};

const plainCabin = fields(
  {
    ...named,
    kind: literal('log-cabin'),
    ...cabin,
    layout: exactOptional(
      choice(['spiral', 'courthouse', 'quarter'], 'How logs go round the center.'),
    ),
    log: widths,
    strips: exactOptional(
      fields({ log: exactOptional(widths) }, 'The widths that strips are cut.'),
    ),
    fabrics: exactOptional(
      fields({ ...sideFabrics, log: exactOptional(fabrics) }, 'Which fabric is where.'),
    ),
  },
  'A log cabin whose sides are all alike.',
);

const curvedCabin = fields(
  {
    ...named,
    kind: literal('curved-log-cabin'),
    ...cabin,
    layout: exactOptional(choice(['spiral', 'courthouse'], 'How logs go round the center.')),
    wide: widths,
    narrow: widths,
    wideSides: exactOptional(tuple([side, side], accepts({ kind: 'list', least: 2, most: 2 }))),
    first: exactOptional(choice(['wide', 'narrow'], 'The pair that each round begins with.')),
    strips: exactOptional(
      fields(
        { wide: exactOptional(widths), narrow: exactOptional(widths) },
        'The widths that strips are cut.',
      ),
    ),
    fabrics: exactOptional(
      fields(
        { ...sideFabrics, wide: exactOptional(fabrics), narrow: exactOptional(fabrics) },
        'Which fabric is where.',
      ),
    ),
  },
  'A log cabin with wide logs on two sides next to each other and narrow ones on the other two.',
);

/** What a unit takes; each unit says itself which of these are its own. */
const unit = {
  unit: choice(unitNames(), 'Which unit.'),
  finished: exactOptional(finished),
  method: exactOptional(text(40, 'How it is made; left out, the unit’s first method.')),
  oversize: exactOptional(measure('zero or more', 'What is cut beyond the exact size.')),
  usable: exactOptional(measure('positive', 'The usable width of the fabric, for strip sets.')),
  center: exactOptional(measure('positive', 'The finished center of a square in a square.')),
  rounds: exactOptional(count(1, 50, 'Rounds of a square in a square.')),
  corner: exactOptional(measure('positive', 'The finished leg of a corner.')),
  corners: exactOptional(count(1, 4, 'How many corners.')),
  direction: exactOptional(text(40, 'Which way a seam runs.')),
  angle: exactOptional(degrees('An angle in degrees.')),
  slants: exactOptional(text(40, 'Which sides slant.')),
  triangle: exactOptional(text(40, 'Which triangle.')),
  radius: exactOptional(measure('positive', 'The radius of a curve.')),
  rails: exactOptional(count(1, 50, 'How many rails.')),
  strips: exactOptional(list(measure('positive', 'A width.'), 1, 50, 'Strips of a strip set.')),
  fabrics: exactOptional(
    record(text(40, 'A part of the unit.'), fabric, accepts({ kind: 'fields', known: [] })),
  ),
};

const unitBlock = fields(
  { ...named, kind: literal('unit'), ...unit },
  'A pieced unit that is a block by itself.',
);

const plainBlock = fields(
  { ...named, kind: literal('plain'), fabric, finished: exactOptional(finished) },
  'A plain block; its finished size, left out, is that of the other blocks.',
);

const places = exactOptional(
  list(
    place('Across and down, to its upper left corner.'),
    1,
    400,
    'Where each lies in the finished block.',
  ),
);
const times = exactOptional(
  count(1, 400, 'How many a block takes; left out, one for each place, or one.'),
);

const rectangle = fields(
  {
    label: exactOptional(text(60, 'What it is called.')),
    fabric,
    finished: exactOptional(finished),
    cut: exactOptional(
      size(
        'What is cut; left out, finished and two seams. If it is all that is given, it is exact.',
      ),
    ),
    count: times,
    at: places,
  },
  'A rectangle, by its finished or its cut size.',
);

const piecedBlock = fields(
  {
    ...named,
    kind: literal('pieces'),
    finished,
    pieces: exactOptional(list(rectangle, 0, 200, 'Rectangles.'), []),
    units: exactOptional(
      list(
        fields({ ...unit, count: times, at: places }, 'A pieced unit in the block.'),
        0,
        200,
        'Pieced units.',
      ),
      [],
    ),
  },
  'A block of rectangles and units, listed by hand.',
);

/** A block of a recipe. */
export const blockSchema = variant(
  'kind',
  [plainCabin, curvedCabin, unitBlock, plainBlock, piecedBlock],
  accepts({
    kind: 'choice',
    choices: ['log-cabin', 'curved-log-cabin', 'unit', 'plain', 'pieces'],
  }),
);
