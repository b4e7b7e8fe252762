// What every tag, attribute, event, part and custom property is for. `make.mjs` turns it into the
// manifest, the types for frameworks and the data for editors; a test finds what is missing here.

/** Attributes that every element has. */
export const common = {
  units: 'Measures taken and shown: `inches` (default) or `metric`.',
  hand: 'The hand that holds the cutter: `right` (default) or `left`.',
  locked: 'Names of inputs that the page’s author fixes, separated by spaces.',
  theme: '`light`, `dark` or `auto` (default: as the page).',
  lang: 'The language, where it is another than the page’s.',
  actions:
    'What a reader can do with the answer: any of `copy csv svg print link`, separated by spaces, or `none`. Default: all but `link`.',
};

const seam = 'Seam allowance; default a quarter inch, or 0.75 cm.';
const grid = 'What cut sizes are rounded up to; default an eighth of an inch, or a millimeter.';
const fabrics = (/** @type {string} */ part) => `The fabric of the ${part}.`;

/** @type {Readonly<Record<string, { description: string, attributes: Readonly<Record<string, string>> }>>} */
export const elements = {
  'eighths-log-cabin': {
    description:
      'A log cabin block to type in: drawn, with its cut list and what each round is trimmed to.',
    attributes: {
      finished: 'The finished size, `9` or `9 by 12`; worked out where the center is given.',
      center: 'The finished center; worked out where the finished size is given.',
      rounds: 'How many rounds, 1 to 50.',
      blocks: 'How many blocks are counted for.',
      kind: '`plain`: all logs alike. `curved`: two sides wide, two narrow.',
      log: 'The finished width of a plain block’s logs, or one for each round: `1; 1; 3/4`.',
      wide: 'The finished width of the wide logs, or one for each round.',
      narrow: 'The finished width of the narrow logs, or one for each round.',
      'strips-log': 'What the strips of a plain block are cut.',
      'strips-wide': 'What the wide strips are cut.',
      'strips-narrow': 'What the narrow strips are cut.',
      layout: '`spiral` (default), `courthouse` or `quarter`.',
      first: 'Which pair is sewn first in each round: `wide` (default) or `narrow`.',
      direction: 'Which way round it is sewn: `clockwise` (default) or `counterclockwise`.',
      start: 'The side where each round begins: `top`, `right`, `bottom` or `left`.',
      'wide-sides': 'The two sides with wide logs; default `right bottom`.',
      'trim-after': 'When it is trimmed: after each `round` or `log`, or `never`.',
      'trim-oversize': 'What each trim cuts away at least; default a quarter inch.',
      seam,
      extra: 'What each log is cut longer than needed.',
      grid,
      cornerstones: 'A square at the end of each log: present, or `true`.',
      'fabrics-center': fabrics('center'),
      'fabrics-cornerstone': fabrics('cornerstones'),
      'fabrics-log': fabrics('logs, or one for each round'),
      'fabrics-wide': fabrics('wide logs, or one for each round'),
      'fabrics-narrow': fabrics('narrow logs, or one for each round'),
      'fabrics-top': fabrics('top, or one for each round'),
      'fabrics-right': fabrics('right side, or one for each round'),
      'fabrics-bottom': fabrics('bottom, or one for each round'),
      'fabrics-left': fabrics('left side, or one for each round'),
      panels:
        'Which of the workshop’s panels stand below the block, separated by spaces, or `none`.',
      'panels-open': 'Which of them are open at first.',
    },
  },
  'eighths-fabric': {
    description: 'Pieces to cut: how much fabric to buy for them, and how to cut it.',
    attributes: {
      pieces:
        'What to cut: `24 of 2 1/2 by 8 1/2, dusk; 6 of 3 by 7, turned; 1 of 2 1/2 by 300, joined`. What is `turned` may lie the other way, what is `joined` may be pieced from strips.',
      width: 'The usable width of the fabric, selvages off.',
      method:
        '`plain`: one width to a strip. `thrifty`: ends of strips cut again, pieces turned. Default: whichever buys less.',
      join: 'How strips are joined: `diagonal` (default) or `straight`.',
      increment: 'What the shop cuts in: `1/8 yd` (default), or several.',
      straightening: 'What squaring up the end takes; default 1 inch.',
      spare: 'What is bought in case of a wrong cut; default one strip.',
      shrinkage: 'What washing takes, as a percentage.',
      layers: 'How many layers of strips are subcut at once.',
      'on-hand':
        'Fabric on hand, usable sizes: `1 of 18 by 21; 2 of 9 by 40 less 6 by 4, dusk`; `less` is a missing corner.',
      precut:
        'Buy precuts instead: `fat-quarter`, `fat-eighth`, `strip-2-1/2`, `square-5` or `square-10`.',
      'pack-of': 'How many precuts are sold together; default 1.',
      from: 'The id of an element on the page whose cut list flows in here.',
    },
  },
  'eighths-quilt': {
    description:
      'A quilt pattern from its recipe, in any size: drawn, bought for, cut, and packed as kits.',
    attributes: {
      src: 'The address of the recipe; else it stands in a `<script type="application/json">` inside.',
      size: 'The name of one of the recipe’s sizes; default its first.',
      across: 'Blocks across, where the size is another than the recipe’s.',
      down: 'Blocks down.',
      'fabric-width': 'The usable width of the recipe’s first fabric, and of all that are as wide.',
      method: '`plain` (default): the fewest cuts. `thrifty`: the least fabric.',
      people: 'How many people there are in a class: kits are worked out for them.',
      each: 'What each makes: a number of quilts, or blocks such as `4 of cabin; 2 of window`.',
      spares: 'How many kits there are besides.',
      bolt: 'What is on a bolt of fabric, such as `15 yd` (default) or `10 m`; a bare number is yards, in metric meters.',
      price: 'What a kit is sold for, in the recipe’s currency.',
      margin: 'In place of a price: how many hundredths of it are left when the kit is paid for.',
      readonly: 'A page to read and print, without inputs: present, or `true`.',
    },
  },
  'eighths-unit': {
    description: 'A pieced unit: what to cut, how many it yields, and how to trim it.',
    attributes: {
      unit: 'Which unit: `half-square-triangles`, `flying-geese` …',
      method: 'How it is made, where there are several ways.',
      finished: 'The finished size that people name the unit by.',
      'finished-width': 'The finished width, where width and height differ.',
      'finished-height': 'The finished height.',
      oversize: 'What is cut beyond the exact size and trimmed away.',
      center: 'The finished center.',
      rounds: 'How many rounds of corners.',
      corner: 'The finished leg of a corner.',
      corners: 'How many corners.',
      direction: 'Which way the seam or the slant runs.',
      triangle: 'Which setting triangle.',
      angle: 'The acute angle, in degrees.',
      usable: 'The usable width of the fabric.',
      slants: 'Which sides slant.',
      rails: 'How many strips a unit has.',
      strips: 'The finished widths of the strips.',
      radius: 'The finished radius.',
      count: 'How many units are needed.',
      seam,
      grid,
    },
  },
};

/** Attributes that name the fabric of a unit’s part. */
export const fabricAttribute = (/** @type {string} */ attribute) =>
  fabrics(attribute.replace(/^fabrics-/, '').replaceAll('-', ' '));

export const events = {
  'eighths-change': {
    description:
      'After each valid change: `{ version, spec, plan, buy }` as plain JSON; `buy` is what a cart needs.',
    type: 'ChangeDetail',
  },
  'eighths-error': {
    description: 'An error’s code, field and values, where something cannot be made.',
    type: 'ErrorDetail',
  },
};

export const parts = {
  root: 'Everything.',
  headline: 'The answer in a line.',
  sheet: 'The drawing with its headline and steps.',
  drawing: 'A drawing.',
  form: 'All inputs.',
  essentials: 'The inputs that most people need.',
  more: 'Inputs that are folded away.',
  field: 'An input with its label.',
  input: 'An input.',
  button: 'A button.',
  table: 'A table.',
  steps: 'Steps in words.',
  warnings: 'What a person should know of a plan.',
  panels: 'The workshop’s panels.',
  panel: 'One of them.',
  actions: 'What can be done with the answer.',
};

export const properties = {
  '--eighths-accent': 'The color of the ruler, of cuts and of what can be pressed.',
  '--eighths-paper': 'The color behind inputs.',
  '--eighths-font-size': 'The size that all others follow; default `medium`.',
  ...Object.fromEntries(
    Array.from({ length: 16 }, (_, index) => index + 1).map((number) => [
      `--eighths-fabric-${number}`,
      `The tint of the fabric number ${number}.`,
    ]),
  ),
};
