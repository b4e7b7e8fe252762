import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import {
  apiReport,
  groupsOf,
  packages,
  publicProgram,
  publicSymbols,
  reportFile,
} from '../../tools/api.mjs';
import { fencedBlocks } from './snippets.js';

const program = publicProgram();
const checker = program.getTypeChecker();

const isFunction = (symbol: ts.Symbol): boolean => {
  const [declaration] = symbol.declarations ?? [];
  if (declaration === undefined || (symbol.flags & ts.SymbolFlags.Value) === 0) return false;
  return checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures().length > 0;
};

const hasExample = (symbol: ts.Symbol): boolean =>
  symbol.getJsDocTags(checker).some(({ name }) => name === 'example');

const meaning = (symbol: ts.Symbol): string =>
  ts.displayPartsToString(symbol.getDocumentationComment(checker)).trim();

describe.each(packages)('every public name of %s', (name) => {
  const symbols = [...publicSymbols(program, name)];

  test('says what it means', () => {
    expect(symbols).not.toEqual([]);
    const silent = symbols.filter(([, symbol]) => meaning(symbol) === '').map(([one]) => one);
    expect(silent, 'without a docstring').toEqual([]);
  });

  test('shows an example where it can be called', () => {
    const callable = symbols.filter(([, symbol]) => isFunction(symbol));
    const bare = callable.filter(([, symbol]) => !hasExample(symbol)).map(([one]) => one);
    expect(bare, 'without an @example').toEqual([]);
  });

  test('stands once in the groups of its index', () => {
    const grouped = groupsOf(name).flatMap(({ names }) => names);
    expect([...grouped].sort()).toEqual(symbols.map(([one]) => one).sort());
  });

  test('is as docs/api has it; where a change is meant, run `npm run api`', () => {
    expect(readFileSync(reportFile(name), 'utf8')).toBe(apiReport(program, name));
  });
});

describe('the code in the documents', () => {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const folder = join(root, 'docs', 'guides');
  const guides = readdirSync(folder).filter((name) => name.endsWith('.md'));
  const documents = [...guides.map((name) => join(folder, name)), join(root, 'README.md')];

  test('has the types that a strict reader’s compiler asks for', () => {
    const snippets = new Map(
      documents.flatMap((path) =>
        fencedBlocks(readFileSync(path, 'utf8'))
          .filter(({ info }) => info === 'ts')
          .map(({ code, line }): [string, string] => [
            join(folder, `${basename(path)}, line ${line}.ts`),
            `${code}\nexport {};\n`,
          ]),
      ),
    );
    const options: ts.CompilerOptions = {
      ...program.getCompilerOptions(),
      noCheck: false,
      // What `strict` alone does not ask for.
      noUncheckedIndexedAccess: false,
      exactOptionalPropertyTypes: false,
      noUnusedLocals: false,
      paths: {
        ...program.getCompilerOptions().paths,
        '@eighths/widget/*.js': [join(root, 'packages/widget/src/*.ts')],
      },
    };
    const host = ts.createCompilerHost(options);
    const read = host.getSourceFile;
    host.getSourceFile = (name, version, ...others) => {
      const code = snippets.get(name);
      if (code !== undefined) return ts.createSourceFile(name, code, version, true);
      return program.getSourceFile(name) ?? read(name, version, ...others);
    };
    const reader = ts.createProgram([...snippets.keys()], options, host);
    const faults = [...snippets.keys()].flatMap((name) =>
      reader
        .getSemanticDiagnostics(reader.getSourceFile(name))
        .map(
          ({ messageText }) =>
            `${basename(name)}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`,
        ),
    );
    expect(snippets.size).toBeGreaterThan(20);
    expect(faults).toEqual([]);
  });
});
