import { inflateSync } from 'node:zlib';

/** A path of a page, in points (72 to the inch) as they will lie on the paper. */
export interface PdfPath {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PdfPath[];
}

type Matrix = readonly [number, number, number, number, number, number];

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** First one, then the other. */
const after = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

/** How many numbers before an operator are points of a path. */
const POINTS: Readonly<Record<string, number>> = { m: 2, l: 2, c: 6, v: 4, y: 4 };

const PAINTS = ['S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'n'];

/** The paths that a content stream draws: the few operators that lines are drawn with. */
function pathsOf(content: string): readonly PdfPath[] {
  const paths: PdfPath[] = [];
  const saved: Matrix[] = [];
  let matrix = IDENTITY;
  let numbers: number[] = [];
  let dots: (readonly [number, number])[] = [];
  const add = (x: number, y: number): void => {
    const [a, b, c, d, e, f] = matrix;
    dots.push([a * x + c * y + e, b * x + d * y + f]);
  };
  // Texts and names may hold anything; no number in them is one of ours.
  for (const token of content.replace(/<[^>]*>|\((?:\\.|[^)\\])*\)/g, ' ').split(/\s+/)) {
    const number = Number(token);
    if (token !== '' && Number.isFinite(number)) {
      numbers.push(number);
      continue;
    }
    const used = numbers;
    numbers = [];
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = used;
    if (token === 'q') saved.push(matrix);
    else if (token === 'Q') matrix = saved.pop() ?? IDENTITY;
    else if (token === 'cm') matrix = after([a, b, c, d, e, f], matrix);
    else if (token === 're') {
      add(a, b);
      add(a + c, b + d);
    } else if (token in POINTS) {
      for (let index = 0; index < used.length; index += 2) {
        add(used[index] ?? 0, used[index + 1] ?? 0);
      }
    } else if (PAINTS.includes(token)) {
      const xs = dots.map(([x]) => x);
      const ys = dots.map(([, y]) => y);
      const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
      if (dots.length > 1) {
        paths.push({
          left,
          bottom,
          width: Math.max(...xs) - left,
          height: Math.max(...ys) - bottom,
        });
      }
      dots = [];
    }
  }
  return paths;
}

/** Every object of a PDF by its number: those that stand in it, and those inside object streams. */
function objectsOf(text: string): ReadonlyMap<string, string> {
  const objects = new Map(
    [...text.matchAll(/(?:^|\n)(\d+) 0 obj\b([\s\S]*?)\bendobj/g)].map(([, id, body]) => [
      id ?? '',
      body ?? '',
    ]),
  );
  for (const body of [...objects.values()]) {
    if (!/\/Type \/ObjStm\b/.test(body)) continue;
    const content = streamOf(body, objects);
    const first = Number(/\/First (\d+)/.exec(body)?.[1] ?? 0);
    const heads = [...content.slice(0, first).matchAll(/(\d+) (\d+)/g)];
    heads.forEach(([, id = '', from = ''], index) => {
      const to = heads[index + 1]?.[2];
      const end = to === undefined ? content.length : first + Number(to);
      objects.set(id, content.slice(first + Number(from), end));
    });
  }
  return objects;
}

function streamOf(body: string, objects: ReadonlyMap<string, string>): string {
  const [dictionary = '', rest = ''] = body.split(/\bstream\r?\n([\s\S]*)/);
  const data = Buffer.from(rest.slice(0, rest.lastIndexOf('endstream')), 'latin1');
  const [, length = '', elsewhere] = /\/Length (\d+)( 0 R)?/.exec(dictionary) ?? [];
  const size = Number(elsewhere === undefined ? length : objects.get(length));
  const raw = data.subarray(0, size);
  return (dictionary.includes('FlateDecode') ? inflateSync(raw) : raw).toString('latin1');
}

/** The pages of a PDF as Chromium and Firefox print them: streams are deflated, if anything. */
export function readPdf(file: Buffer): readonly PdfPage[] {
  const objects = objectsOf(file.toString('latin1'));
  return [...objects.values()]
    .filter((body) => /\/Type \/Page\b(?!s)/.test(body))
    .map((body) => {
      const [, , , width = '0', height = '0'] =
        /\/MediaBox \[\s*([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)\s*\]/.exec(body) ?? [];
      const contents = /\/Contents \[?\s*((?:\d+ 0 R\s*)+)/.exec(body)?.[1] ?? '';
      const ids = [...contents.matchAll(/(\d+) 0 R/g)].map(([, id]) => id ?? '');
      return {
        width: Number(width),
        height: Number(height),
        paths: pathsOf(ids.map((id) => streamOf(objects.get(id) ?? '', objects)).join('\n')),
      };
    });
}
