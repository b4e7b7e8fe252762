import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { complaintsAbout } from './rooms.js';

const packages = fileURLToPath(new URL('../../packages', import.meta.url));

function sourcesOf(name: string): [string, string][] {
  const folder = join(packages, name, 'src');
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => [
      `${name}/src/${path.split(sep).join('/')}`,
      readFileSync(join(folder, path), 'utf8'),
    ]);
}

describe('rooms', () => {
  test.each(['core', 'widget'])('the imports of %s keep to their rooms', (name) => {
    const files = new Map(sourcesOf(name));
    expect(files.size).toBeGreaterThan(0);
    expect(complaintsAbout(files)).toEqual([]);
  });
});

describe('the reader of imports sees', () => {
  const plain = new Map([
    ['core/src/index.ts', `export { readLength } from './length/read.js';`],
    ['core/src/errors/error.ts', 'export class EighthsError extends Error {}'],
    ['core/src/number/rational.ts', 'export const zero = 0n;'],
    [
      'core/src/length/read.ts',
      `import { EighthsError } from '../errors/error.js';\nexport const readLength = () => EighthsError;`,
    ],
    ['core/src/fabric/plan.ts', `import type { readLength } from '../length/read.js';`],
    ['core/src/quilt/kit.ts', `import { plan } from '../fabric/plan.js';`],
    [
      'widget/src/element.ts',
      `import { LitElement } from 'lit';\nimport { a } from '@eighths/core';`,
    ],
    ['widget/src/index.ts', `export { Element } from './element.js';`],
  ]);

  test('nothing to complain about where all is well', () => {
    expect(complaintsAbout(plain)).toEqual([]);
  });

  test.each<[string, string, string, string]>([
    [
      'an upward arrow',
      'core/src/errors/error.ts',
      `import { readLength } from '../length/read.js';`,
      'core/src/errors/error.ts may not import core/src/length/read.ts',
    ],
    [
      'an upward arrow of a type',
      'core/src/number/exact.ts',
      `export type { readLength } from '../length/read.js';`,
      'core/src/number/exact.ts may not import core/src/length/read.ts',
    ],
    [
      'an upward arrow of a type named in place',
      'core/src/number/exact.ts',
      `export type Read = import('../length/read.js').Read;`,
      'core/src/number/exact.ts may not import core/src/length/read.ts',
    ],
    [
      'an upward arrow that is drawn late',
      'core/src/number/exact.ts',
      `export const late = () => import('../length/read.js');`,
      'core/src/number/exact.ts may not import core/src/length/read.ts',
    ],
    [
      'an arrow to a neighbor',
      'core/src/block/log.ts',
      `import { plan } from '../fabric/plan.js';`,
      'core/src/block/log.ts may not import core/src/fabric/plan.ts',
    ],
    [
      'the index imported from inside',
      'core/src/plan/size.ts',
      `import { readLength } from '../index.js';`,
      `core/src/plan/size.ts imports its own package's index`,
    ],
    [
      'the index imported from inside by its name',
      'widget/src/define.ts',
      `import { Element } from '@eighths/widget';`,
      `widget/src/define.ts imports its own package's index`,
    ],
    [
      'a dependency in the core, which has none',
      'core/src/length/read.ts',
      `import Fraction from 'fraction.js';`,
      'core/src/length/read.ts may not import fraction.js',
    ],
    [
      'a dependency of an element beside lit and the core',
      'widget/src/element.ts',
      `import Fraction from 'fraction.js';`,
      'widget/src/element.ts may not import fraction.js',
    ],
    [
      'lit in the core',
      'core/src/drawing/svg.ts',
      `import { svg } from 'lit';`,
      'core/src/drawing/svg.ts may not import lit',
    ],
    [
      'a module of Node in the core',
      'core/src/length/read.ts',
      `import { readFileSync } from 'node:fs';`,
      'core/src/length/read.ts may not import node:fs',
    ],
    [
      'a way around the index of another package',
      'widget/src/element.ts',
      `import { readLength } from '../../core/src/length/read.js';`,
      'widget/src/element.ts reaches into another package: core/src/length/read.ts',
    ],
    [
      'a deep import of the core',
      'widget/src/element.ts',
      `import { readLength } from '@eighths/core/dist/length/read.js';`,
      'widget/src/element.ts may not import @eighths/core/dist/length/read.js',
    ],
    [
      'the types of the page let in by a comment',
      'core/src/length/read.ts',
      `/// <reference lib="dom" />`,
      'core/src/length/read.ts refers to dom by a comment',
    ],
    [
      'a file outside all rooms',
      'core/src/helpers.ts',
      'export const help = 1;',
      'core/src/helpers.ts stands in no room',
    ],
    [
      'a room that is not in the table',
      'core/src/attic/box.ts',
      'export const box = 1;',
      'core/src/attic/box.ts stands in a room that nobody knows: attic',
    ],
    [
      'an import of what is not there',
      'core/src/length/read.ts',
      `import { gone } from './gone.js';`,
      'core/src/length/read.ts imports ./gone.js, which is not there',
    ],
  ])('%s', (_, path, text, complaint) => {
    expect(complaintsAbout(new Map([...plain, [path, text]]))).toContain(complaint);
  });

  test('a circle, once', () => {
    const circle = new Map([
      ['core/src/length/a.ts', `import { b } from './b.js';`],
      ['core/src/length/b.ts', `import type { c } from './c.js';`],
      ['core/src/length/c.ts', `export { a } from './a.js';`],
      ['core/src/length/d.ts', `import { a } from './a.js';`],
    ]);
    expect(complaintsAbout(circle)).toEqual([
      'circle: core/src/length/a.ts → core/src/length/b.ts → core/src/length/c.ts → core/src/length/a.ts',
    ]);
  });
});

describe('the core compiles without a page', () => {
  const path = join(packages, 'core', 'tsconfig.json');
  const { config } = ts.readConfigFile(path, ts.sys.readFile);
  const parsed = ts.parseJsonConfigFileContent(config, ts.sys, join(packages, 'core'));

  test('its compiler knows the language and nothing else', () => {
    expect(parsed.errors).toEqual([]);
    expect(parsed.options.lib).toEqual(['lib.es2022.d.ts']);
    expect(parsed.options.types).toEqual([]);
  });

  test('every source file is compiled so', () => {
    const compiled = parsed.fileNames.map((name) => name.split('/packages/')[1]);
    const sources = sourcesOf('core').map(([name]) => name);
    expect(compiled.sort()).toEqual(sources.sort());
  });

  test('and refuses what only a page or Node has', () => {
    const globals = ['document', 'window', 'HTMLElement', 'fetch', 'localStorage', 'process'];
    const name = join(packages, 'core', 'src', 'guest.ts').split(sep).join('/');
    const host = ts.createCompilerHost(parsed.options);
    const { getSourceFile, fileExists } = host;
    const text = globals.map((one) => `export const ${one}Here = ${one};`).join('\n');
    host.getSourceFile = (file, ...rest) =>
      file === name
        ? ts.createSourceFile(file, text, ts.ScriptTarget.ES2022)
        : getSourceFile(file, ...rest);
    host.fileExists = (file) => file === name || fileExists(file);
    const program = ts.createProgram([name], parsed.options, host);
    const refused = program
      .getSemanticDiagnostics()
      .map(
        ({ messageText }) => /'(\w+)'/.exec(ts.flattenDiagnosticMessageText(messageText, ' '))?.[1],
      );
    expect(refused).toEqual(globals);
  });
});
