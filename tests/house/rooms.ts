import { posix } from 'node:path';
import ts from 'typescript';

/**
 * The rooms of the core and what each may import, as DESIGN.md has them; what those stand on comes
 * with them.
 */
const ROOMS: ReadonlyMap<string, readonly string[]> = new Map([
  ['errors', []],
  ['number', ['errors']],
  ['length', ['number']],
  ['plan', ['length']],
  ['fabric', ['plan']],
  ['block', ['plan']],
  ['unit', ['plan']],
  ['quilt', ['fabric', 'block', 'unit']],
  ['drawing', ['quilt']],
]);

/** What the elements may import from outside their own folder, whole or one of its modules. */
const WIDGET_MAY_IMPORT = ['@eighths/core', 'lit'];

/** The core's one dependency, and where it stays: whoever plans no recipe does not carry it. */
const CORE_MAY_IMPORT: ReadonlyMap<string, RegExp> = new Map([
  ['valibot', /^core\/src\/quilt\/recipe\//],
]);

function standsOn(room: string): ReadonlySet<string> {
  const below = new Set<string>();
  for (const next of ROOMS.get(room) ?? []) {
    below.add(next);
    for (const deeper of standsOn(next)) below.add(deeper);
  }
  return below;
}

/** `core/src/length/read.ts` is in the package `core` and the room `length`. */
function homeOf(path: string): { readonly home: string; readonly room: string | undefined } {
  const [home = '', , ...rest] = path.split('/');
  return { home, room: rest.length > 1 ? rest[0] : undefined };
}

function complaintsAboutRoom(from: string, to: string): string[] {
  const importer = homeOf(from);
  const imported = homeOf(to);
  if (importer.home !== imported.home) {
    return [`${from} reaches into another package: ${to}`];
  }
  if (to === `${imported.home}/src/index.ts`) {
    return [`${from} imports its own package's index`];
  }
  if (importer.home !== 'core') return [];
  if (importer.room === undefined || importer.room === imported.room) return [];
  if (imported.room !== undefined && standsOn(importer.room).has(imported.room)) return [];
  return [`${from} may not import ${to}`];
}

function complaintsAboutOutside(from: string, specifier: string): string[] {
  const { home } = homeOf(from);
  if (specifier === `@eighths/${home}`) return [`${from} imports its own package's index`];
  if (home === 'core' && CORE_MAY_IMPORT.get(specifier)?.test(from)) return [];
  const allowed =
    home === 'widget' &&
    (WIDGET_MAY_IMPORT.includes(specifier) || /^lit\/[\w./-]+\.js$/.test(specifier));
  return allowed ? [] : [`${from} may not import ${specifier}`];
}

/** One circle through each file that lies on one and was not yet told of, as a path. */
function circles(arrows: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const found: string[] = [];
  const walk = (file: string, trail: readonly string[]): void => {
    const before = trail.indexOf(file);
    if (before >= 0) found.push(`circle: ${[...trail.slice(before), file].join(' → ')}`);
    if (before >= 0 || done.has(file)) return;
    for (const next of arrows.get(file) ?? []) walk(next, [...trail, file]);
    done.add(file);
  };
  for (const file of arrows.keys()) walk(file, []);
  return found;
}

/**
 * What is wrong with the imports of some files: arrows that point upward, circles, an index
 * imported from inside its package, and what comes from outside and should not. Types count like
 * everything else.
 *
 * @param files the text of each, by its path below `packages`, such as `core/src/length/read.ts`
 */
export function complaintsAbout(files: ReadonlyMap<string, string>): string[] {
  const complaints: string[] = [];
  const arrows = new Map<string, string[]>();
  for (const [path, text] of files) {
    const { home, room } = homeOf(path);
    if (home === 'core' && room === undefined && path !== 'core/src/index.ts') {
      complaints.push(`${path} stands in no room`);
    }
    if (home === 'core' && room !== undefined && !ROOMS.has(room)) {
      complaints.push(`${path} stands in a room that nobody knows: ${room}`);
    }
    const read = ts.preProcessFile(text, true, true);
    for (const reference of [
      ...read.referencedFiles,
      ...read.typeReferenceDirectives,
      ...read.libReferenceDirectives,
    ]) {
      complaints.push(`${path} refers to ${reference.fileName} by a comment`);
    }
    const targets: string[] = [];
    arrows.set(path, targets);
    for (const { fileName } of read.importedFiles) {
      if (!fileName.startsWith('.')) {
        complaints.push(...complaintsAboutOutside(path, fileName));
        continue;
      }
      const target = posix.join(posix.dirname(path), fileName).replace(/\.js$/, '.ts');
      complaints.push(...complaintsAboutRoom(path, target));
      if (files.has(target)) targets.push(target);
      else complaints.push(`${path} imports ${fileName}, which is not there`);
    }
  }
  return [...complaints, ...circles(arrows)];
}
