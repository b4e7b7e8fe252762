import ts from 'typescript';

/** Some code that stands in a document or in a docstring. */
export interface Snippet {
  readonly code: string;
  /** The line of the file on which the code begins, from 1. */
  readonly line: number;
  /** What stands after the opening fence: `ts`, `html`, `ts no-run`; empty without a fence. */
  readonly info: string;
}

const FENCE = /^([ \t]*)(`{3,}|~{3,})[ \t]*(.*?)[ \t]*$/;

/** The fenced blocks of a Markdown text. Throws if one is never closed. */
export function fencedBlocks(markdown: string): Snippet[] {
  const blocks: Snippet[] = [];
  let open:
    | { fence: string; indent: number; info: string; line: number; code: string[] }
    | undefined;
  markdown.split(/\r?\n/).forEach((text, at) => {
    const [, indent = '', fence = '', info = ''] = FENCE.exec(text) ?? [];
    if (open === undefined) {
      if (fence !== '') open = { fence, indent: indent.length, info, line: at + 2, code: [] };
    } else if (fence.startsWith(open.fence) && info === '') {
      blocks.push({ code: open.code.join('\n'), line: open.line, info: open.info });
      open = undefined;
    } else {
      open.code.push(text.slice(Math.min(open.indent, text.search(/\S|$/))));
    }
  });
  if (open !== undefined) throw new Error(`The block that begins on line ${open.line} never ends.`);
  return blocks;
}

/** The code after each `@example` in the docstrings of a TypeScript text, fenced or not. */
export function docstringExamples(source: string): Snippet[] {
  const snippets: Snippet[] = [];
  for (const docstring of source.matchAll(/^[ \t]*\/\*\*[\s\S]*?\*\//gm)) {
    const firstLine = source.slice(0, docstring.index).split('\n').length;
    const lines = docstring[0]
      .replace(/\*\/$/, '')
      .split(/\r?\n/)
      .map((line) => line.replace(/^[ \t]*(?:\/\*\*|\*)[ \t]?/, '').trimEnd());
    lines.forEach((line, at) => {
      if (!/^@example\b/.test(line)) return;
      const after = lines.slice(at + 1);
      const end = after.findIndex((one) => /^@[a-z]/.test(one));
      const body = (end < 0 ? after : after.slice(0, end)).join('\n').trimEnd();
      const offset = firstLine + at;
      if (FENCE.test(body.split('\n').find((one) => one !== '') ?? '')) {
        for (const block of fencedBlocks(body)) {
          snippets.push({ ...block, line: block.line + offset });
        }
      } else snippets.push({ code: body, line: offset + 1, info: '' });
    });
  }
  return snippets;
}

/** A result that a snippet shows: `expression; // 'result'`. */
interface Shown {
  readonly expected: string;
  readonly line: number;
}

/** JavaScript that imports by `require` and tells `check` the value of every shown result. */
interface Prepared {
  readonly script: string;
  readonly shown: readonly Shown[];
  readonly imports: readonly string[];
}

/** Where the value that a statement shows is written: the expression, or what it logs. */
function shownExpression(statement: ts.ExpressionStatement): ts.Expression {
  const { expression } = statement;
  const logs = ts.isCallExpression(expression) && expression.expression.getText() === 'console.log';
  const [only, ...others] = logs ? expression.arguments : [];
  return only !== undefined && others.length === 0 ? only : expression;
}

/** Turns a snippet into a script. Throws if it is not TypeScript. */
export function prepare({ code, line }: Snippet): Prepared {
  const file = ts.createSourceFile('snippet.ts', code, ts.ScriptTarget.ES2022, true);
  const shown: Shown[] = [];
  const edits: { readonly at: number; readonly text: string }[] = [];
  const visit = (node: ts.Node): void => {
    const comment = ts.isExpressionStatement(node)
      ? /^[ \t]*\/\/[ \t]*(.*?)[ \t]*(?:\r?\n|$)/.exec(code.slice(node.end))?.[1]
      : undefined;
    if (comment !== undefined && ts.isExpressionStatement(node)) {
      const expression = shownExpression(node);
      const { line: below } = file.getLineAndCharacterOfPosition(node.end);
      edits.push({ at: expression.getStart(), text: `check(${shown.length}, ` });
      edits.push({ at: expression.end, text: ')' });
      shown.push({ expected: comment.replace(/^(?:=>|→)\s*/, ''), line: line + below });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  // From the back, so that no edit moves the place of another.
  const edited = edits
    .sort((one, other) => other.at - one.at)
    .reduce((text, { at, text: inserted }) => text.slice(0, at) + inserted + text.slice(at), code);
  const { outputText, diagnostics = [] } = ts.transpileModule(edited, {
    reportDiagnostics: true,
    compilerOptions: {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2022,
      esModuleInterop: true,
    },
  });
  const [fault] = diagnostics;
  if (fault !== undefined) {
    throw new Error(ts.flattenDiagnosticMessageText(fault.messageText, '\n'));
  }
  const imports = ts.preProcessFile(code).importedFiles.map(({ fileName }) => fileName);
  return { script: outputText, shown, imports };
}

const asWritten = (value: unknown): string => {
  if (typeof value !== 'object' || value === null) return String(value);
  const ownWords = 'toString' in value && value.toString !== Object.prototype.toString;
  return ownWords && !Array.isArray(value) ? String(value) : JSON.stringify(value);
};

/** A value as a snippet would show it: a space that does not break is a space to its reader. */
export const written = (value: unknown): string => asWritten(value).replace(/[\u00a0\u202f]/g, ' ');

/** What a comment shows, without its quotes; a list or an object as JSON. */
function expectedText(comment: string): string {
  const quoted = /^(['"`])(.*)\1$/s.exec(comment)?.[2];
  if (quoted !== undefined) return quoted;
  if (!/^[[{]/.test(comment)) return comment;
  try {
    return JSON.stringify(new Function(`return (${comment});`)());
  } catch {
    return comment;
  }
}

export interface Scope {
  /** What is in scope without an import. */
  readonly names?: Readonly<Record<string, unknown>>;
  /** What an import resolves to. */
  readonly load: (name: string) => Promise<unknown>;
}

/**
 * Runs a snippet. Resolves to how many results it showed, and throws at the first that is not so,
 * or that was never reached.
 */
export async function runSnippet(snippet: Snippet, scope: Scope): Promise<number> {
  const { script, shown, imports } = prepare(snippet);
  const modules = new Map<string, unknown>();
  for (const name of imports) modules.set(name, await scope.load(name));
  const reached = new Set<number>();
  const check = (index: number, value: unknown): unknown => {
    const { expected = '', line = 0 } = shown[index] ?? {};
    reached.add(index);
    const [got, wanted] = [written(value), expectedText(expected)];
    if (got !== wanted) throw new Error(`Line ${line} shows ${wanted}, and it is ${got}.`);
    return value;
  };
  const provided = {
    require: (name: string) => modules.get(name),
    check,
    exports: {},
    console: { log: () => undefined },
    ...scope.names,
  };
  // The inner braces let a snippet declare a name that is in scope already.
  const run = new Function(...Object.keys(provided), `return (async () => {\n${script}\n})();`);
  await run(...Object.values(provided));
  const missed = shown.find((_, index) => !reached.has(index));
  if (missed !== undefined) throw new Error(`Line ${missed.line} was never reached.`);
  return shown.length;
}

/** What a page's markup may name: tags with their attributes, and packages' files. */
export interface KnownMarkup {
  /** The attributes of each element, by the name of its tag. */
  readonly elements: Readonly<Record<string, readonly string[]>>;
}

const TAG = /<([a-z][\w-]*)((?:\s+[^\s=>/]+(?:="[^"]*")?)*)\s*(\/?)>/g;
const ATTRIBUTE = /([^\s=>/]+)(?:="([^"]*)")?/g;

/** Attributes that any element of a page may have. */
const ANYWHERE = ['id', 'class', 'hidden', 'lang', 'dir', 'title', 'part', 'slot', 'style'];

const unknownAmong = (tag: string, names: readonly string[], known: readonly string[]): string[] =>
  names
    .filter((name) => !known.includes(name) && !ANYWHERE.includes(name))
    .map((name) => `${tag} has no attribute ${name}`);

/**
 * What is wrong with some markup that a reader would copy: elements and attributes that there are
 * not, a tag that closes itself, quotes that an editor would change.
 */
export function markupFaults(html: string, { elements }: KnownMarkup): string[] {
  const knownOf = (tag: string): readonly string[] | undefined =>
    Object.hasOwn(elements, tag) ? elements[tag] : undefined;
  const faults: string[] = [];
  for (const [whole, tag = '', written = '', closed] of html.matchAll(TAG)) {
    const attributes = new Map(
      [...written.matchAll(ATTRIBUTE)].map(([, name = '', value = '']) => [name, value]),
    );
    const names = [...attributes.keys()];
    if (closed === '/') faults.push(`${whole} closes itself`);
    if (tag.includes('-')) {
      const known = knownOf(tag);
      if (known === undefined) faults.push(`there is no element ${tag}`);
      else faults.push(...unknownAmong(tag, names, known));
    }
    const data = attributes.get('data-eighths');
    if (data !== undefined) {
      const known = knownOf(`eighths-${data}`);
      const own = names
        .filter((name) => name.startsWith('data-') && name !== 'data-eighths')
        .map((name) => name.slice('data-'.length));
      if (known === undefined) faults.push(`there is no element eighths-${data}`);
      else faults.push(...unknownAmong(tag, own, known));
    }
    const query = /^embed\.html\?(.*)$/.exec(attributes.get('src') ?? '')?.[1];
    if (query !== undefined) {
      const given = new URLSearchParams(query.replaceAll('&amp;', '&'));
      const framed = `eighths-${given.get('element')}`;
      const known = knownOf(framed);
      const own = [...given.keys()].filter((name) => name !== 'element');
      if (known === undefined) faults.push(`there is no element ${framed}`);
      else faults.push(...unknownAmong(framed, own, known));
    }
  }
  // Of what is not a tag, only what looks like one and is not read as one.
  for (const [tag] of html.replace(TAG, '').matchAll(/<\/?eighths-[^>]*>?/g)) {
    if (!/^<\/eighths-[\w-]+>$/.test(tag)) faults.push(`${tag} is not written as a tag`);
  }
  return faults;
}

/** The custom properties and parts that a style sheet names, where there are none such. */
export function styleFaults(
  css: string,
  known: { readonly properties: readonly string[]; readonly parts: readonly string[] },
): string[] {
  const named = (pattern: RegExp): string[] =>
    [...css.matchAll(pattern)].map(([, name = '']) => name);
  return [
    ...named(/(--eighths-[\w-]+)/g).filter((name) => !known.properties.includes(name)),
    ...named(/::part\(([\w-]+)\)/g).filter((name) => !known.parts.includes(name)),
  ];
}
