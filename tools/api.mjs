// `npm run api` writes docs/api: every public name with its signature, so that a change of the public
// interface is seen in a review. A test fails where the files are not what would be written.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { isProgram, root } from './run.mjs';

/** The packages whose public names are reported. */
export const packages = /** @type {const} */ (['core', 'widget']);

const indexOf = (/** @type {string} */ name) => join(root, 'packages', name, 'src', 'index.ts');

/** The compiler's view of both packages, the widget's core being the source beside it. */
export function publicProgram() {
  const folder = join(root, 'docs');
  const { config } = ts.readConfigFile(join(folder, 'tsconfig.json'), ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, folder);
  return ts.createProgram(fileNames, {
    ...options,
    noEmit: false,
    allowImportingTsExtensions: false,
    declaration: true,
    emitDeclarationOnly: true,
    stripInternal: true,
    noCheck: true,
  });
}

/**
 * The groups that a package's index names its exports in: a line comment begins one.
 *
 * @param {string} name
 * @returns {{ title: string, names: string[] }[]}
 */
export function groupsOf(name) {
  const text = readFileSync(indexOf(name), 'utf8');
  const file = ts.createSourceFile('index.ts', text, ts.ScriptTarget.ES2022, true);
  /** @type {{ title: string, names: string[] }[]} */
  const groups = [];
  for (const statement of file.statements) {
    const comment = text
      .slice(statement.pos, statement.getStart())
      .split('\n')
      .filter((line) => line.startsWith('//'))
      .at(-1);
    if (comment !== undefined) groups.push({ title: comment.slice(2).trim(), names: [] });
    if (groups.length === 0) groups.push({ title: '', names: [] });
    if (!ts.isExportDeclaration(statement)) continue;
    const { exportClause } = statement;
    if (exportClause === undefined || !ts.isNamedExports(exportClause)) continue;
    groups.at(-1)?.names.push(...exportClause.elements.map((element) => element.name.text));
  }
  return groups;
}

/**
 * A package's public names and what each stands for.
 *
 * @param {ts.Program} program
 * @param {string} name
 * @returns {Map<string, ts.Symbol>}
 */
export function publicSymbols(program, name) {
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(indexOf(name));
  const index = file && checker.getSymbolAtLocation(file);
  if (index === undefined) throw new Error(`packages/${name}/src/index.ts exports nothing.`);
  return new Map(
    checker.getExportsOfModule(index).map((symbol) => {
      const aliased = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
      return [symbol.name, aliased ? checker.getAliasedSymbol(symbol) : symbol];
    }),
  );
}

/** What a reader of the report need not know of a class. */
const isHidden = (/** @type {ts.ClassElement} */ member) =>
  (ts.getCombinedModifierFlags(member) &
    (ts.ModifierFlags.Private | ts.ModifierFlags.Protected)) !==
    0 ||
  (member.name !== undefined && ts.isPrivateIdentifier(member.name));

const printer = ts.createPrinter({ removeComments: true });

/** A declaration without comments, without what is not public, and without `export declare`. */
function shown(/** @type {ts.Statement} */ statement) {
  const print = (/** @type {ts.Node} */ node) =>
    printer.printNode(ts.EmitHint.Unspecified, node, statement.getSourceFile());
  const plain = (/** @type {string} */ written) => written.replace(/^export (?:declare )?/, '');
  if (!ts.isClassDeclaration(statement)) return plain(print(statement));
  const { modifiers, name, typeParameters, heritageClauses, members } = statement;
  return plain(
    print(
      ts.factory.updateClassDeclaration(
        statement,
        modifiers,
        name,
        typeParameters,
        heritageClauses,
        members.filter((member) => !isHidden(member)),
      ),
    ),
  );
}

/** The declarations that a statement makes. */
function namesIn(/** @type {ts.Statement} */ statement) {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  }
  const declares =
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement);
  return declares && statement.name !== undefined ? [statement.name.text] : [];
}

/**
 * What the compiler declares of each source file, statement by statement. Emitted when it is asked for.
 *
 * @param {ts.Program} program
 */
function declarationsOf(program) {
  /** @type {Map<string, readonly ts.Statement[]>} */
  const made = new Map();
  return (/** @type {ts.SourceFile} */ source) => {
    const known = made.get(source.fileName);
    if (known !== undefined) return known;
    let text = '';
    program.emit(
      source,
      (_, written) => {
        text = written;
      },
      undefined,
      true,
    );
    const { statements } = ts.createSourceFile('emitted.d.ts', text, ts.ScriptTarget.ES2022, true);
    made.set(source.fileName, statements);
    return statements;
  };
}

/** The classes of the same packages that a class stands on. */
function basesOf(/** @type {ts.Symbol} */ symbol, /** @type {ts.TypeChecker} */ checker) {
  if ((symbol.flags & ts.SymbolFlags.Class) === 0) return [];
  const type = checker.getDeclaredTypeOfSymbol(symbol);
  if (!type.isClass()) return [];
  return checker
    .getBaseTypes(type)
    .flatMap(({ symbol: base }) => (base === undefined ? [] : [base]))
    .filter((base) => !base.declarations?.[0]?.getSourceFile().fileName.includes('node_modules'));
}

/**
 * Every public name of a package with its signature, as Markdown.
 *
 * @param {ts.Program} program
 * @param {string} name
 */
export function apiReport(program, name) {
  const checker = program.getTypeChecker();
  const symbols = publicSymbols(program, name);
  const statementsOf = declarationsOf(program);
  /** @type {Set<ts.Symbol>} */
  const told = new Set(symbols.values());

  /** @type {(symbol: ts.Symbol) => string[]} */
  const tell = (symbol) => {
    const files = new Set(symbol.declarations?.map((declaration) => declaration.getSourceFile()));
    const own = [...files].flatMap((file) =>
      statementsOf(file)
        .filter((statement) => namesIn(statement).includes(symbol.name))
        .map(shown),
    );
    const bases = basesOf(symbol, checker).filter((base) => !told.has(base));
    for (const base of bases) told.add(base);
    return [...own, ...bases.flatMap(tell)];
  };

  const sections = groupsOf(name).map(({ title, names }) => {
    const code = names
      .map((one) => symbols.get(one))
      .flatMap((symbol) => (symbol === undefined ? [] : tell(symbol)));
    const heading = title === '' ? '' : `## ${title}\n\n`;
    return `${heading}\`\`\`ts\n${code.join('\n\n')}\n\`\`\`\n`;
  });
  return `# The public names of @eighths/${name}

Written by \`npm run api\`. What changes here is a change of the public interface.

${sections.join('\n')}`;
}

export const reportFile = (/** @type {string} */ name) => join(root, 'docs', 'api', `${name}.md`);

if (isProgram(import.meta)) {
  const program = publicProgram();
  mkdirSync(join(root, 'docs', 'api'), { recursive: true });
  for (const name of packages) writeFileSync(reportFile(name), apiReport(program, name));
}
