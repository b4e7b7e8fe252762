import { inflateSync } from 'node:zlib';

/** A rectangle around one path of a PDF page, in points. */
export interface PdfBox {
  readonly width: number;
  readonly height: number;
}

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix => [
  a * p + b * r,
  a * q + b * s,
  c * p + d * r,
  c * q + d * s,
  e * p + f * r + t,
  e * q + f * s + u,
];

/** The unpacked streams of a PDF. */
function streams(pdf: Buffer): string[] {
  const found: string[] = [];
  const text = pdf.toString('latin1');
  for (const match of text.matchAll(/stream\r?\n/g)) {
    if (text.slice(match.index - 3, match.index) === 'end') continue;
    const start = match.index + match[0].length;
    const end = text.indexOf('endstream', start);
    try {
      found.push(inflateSync(pdf.subarray(start, end)).toString('latin1'));
    } catch {
      // A stream that is not packed, or not a page's.
    }
  }
  return found;
}

/**
 * The boxes around the stroked paths of a PDF's pages, in points: 72 to the inch. Follows the current
 * transformation, moves, lines and rectangles, which is all that straight lines need.
 */
export function strokedBoxes(pdf: Buffer): PdfBox[] {
  const boxes: PdfBox[] = [];
  for (const stream of streams(pdf)) {
    let matrix: Matrix = [1, 0, 0, 1, 0, 0];
    const saved: Matrix[] = [];
    let points: (readonly [number, number])[] = [];
    let numbers: number[] = [];
    const add = (x: number, y: number): void => {
      const [a, b, c, d, e, f] = matrix;
      points.push([a * x + c * y + e, b * x + d * y + f]);
    };
    for (const token of stream.split(/\s+/)) {
      if (/^[-+]?[\d.]+$/.test(token)) {
        numbers.push(Number(token));
        continue;
      }
      const [one = 0, two = 0, three = 0, four = 0, five = 0, six = 0] = numbers;
      if (token === 'q') saved.push(matrix);
      else if (token === 'Q') matrix = saved.pop() ?? matrix;
      else if (token === 'cm') matrix = times([one, two, three, four, five, six], matrix);
      else if (token === 'm' || token === 'l') add(one, two);
      else if (token === 're') {
        add(one, two);
        add(one + three, two + four);
      } else if (token === 'S' || token === 's') {
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        boxes.push({
          width: Math.max(...xs) - Math.min(...xs),
          height: Math.max(...ys) - Math.min(...ys),
        });
        points = [];
      } else if (['f', 'f*', 'n', 'B', 'B*'].includes(token)) points = [];
      numbers = [];
    }
  }
  return boxes;
}
