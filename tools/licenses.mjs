// `npm run licenses`: what the packages bring along at run time, with versions and licenses. The build
// takes the notices from here that its bundled files owe to others.
import { readdirSync, readFileSync, realpathSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { isProgram, root } from './run.mjs';

/**
 * A package of somebody else's.
 *
 * @typedef {object} Dependency
 * @property {string} name
 * @property {string} version
 * @property {string} license its SPDX name
 * @property {string} folder
 * @property {readonly string[]} by the packages that depend on it
 */

const packages = join(root, 'packages');
const widgetDist = join(packages, 'widget', 'dist');
const OURS = '@eighths/';

/** @returns {{ name: string, version: string, license?: string, dependencies?: Record<string, string> }} */
const manifestOf = (/** @type {string} */ folder) =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** Where Node finds a package from another’s folder, whatever that package exports. */
function folderOf(/** @type {string} */ name, /** @type {string} */ from) {
  const places = createRequire(join(from, 'package.json')).resolve.paths(name) ?? [];
  for (const place of places) {
    try {
      return realpathSync(join(place, name));
    } catch {
      // It may be in the next.
    }
  }
  throw new Error(`${name} is not installed: run \`npm start\` or \`npm test\` first.`);
}

/** Everything that is installed with our packages, and what that depends on in turn. */
export function dependencies() {
  /** @type {Map<string, Dependency>} */
  const found = new Map();
  /** @param {string} folder */
  const visit = (folder) => {
    const { name: by, dependencies: wanted = {} } = manifestOf(folder);
    for (const name of Object.keys(wanted).filter((one) => !one.startsWith(OURS))) {
      const at = folderOf(name, folder);
      const known = found.get(at);
      const { version, license = '' } = manifestOf(at);
      found.set(at, { name, version, license, folder: at, by: [...(known?.by ?? []), by] });
      if (known === undefined) visit(at);
    }
  };
  for (const name of readdirSync(packages)) visit(join(packages, name));
  return [...found.values()].sort((one, other) => (one.name < other.name ? -1 : 1));
}

/** The names of the packages whose code stands in built files, as their source maps have it. */
export function bundled(dist = widgetDist) {
  const maps = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.js.map'),
  );
  const names = maps.flatMap((name) => {
    /** @type {{ sources: readonly string[] }} */
    const { sources } = JSON.parse(readFileSync(join(dist, name), 'utf8'));
    return sources.flatMap(
      (source) => /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(source)?.[1] ?? [],
    );
  });
  return new Set(names);
}

/** @param {Dependency} dependency */
function licenseText({ name, folder }) {
  const file = readdirSync(folder).find((each) => /^licen[cs]e(?:\.|$)/i.test(each));
  if (file === undefined) throw new Error(`${name} is bundled, and has no license file.`);
  return readFileSync(join(folder, file), 'utf8').trim();
}

/** The notices of all that is bundled, each text once. Throws where one is not to be found. */
export function notices(dist = widgetDist) {
  const all = dependencies();
  /** @type {Map<string, string[]>} */
  const texts = new Map();
  for (const name of [...bundled(dist)].sort()) {
    const one = all.find((each) => each.name === name);
    if (one === undefined) throw new Error(`${name} is bundled, and no package depends on it.`);
    const text = licenseText(one);
    texts.set(text, [...(texts.get(text) ?? []), `${name} ${one.version}`]);
  }
  const sections = [...texts].map(([text, names]) => `${names.join(', ')}\n\n${text}\n`);
  return [
    'The script files in this folder hold code of these packages, under the licenses that follow.\n',
    ...sections,
  ].join(`\n${'-'.repeat(72)}\n\n`);
}

if (isProgram(import.meta)) {
  const inFiles = bundled();
  console.table(
    dependencies().map(({ name, version, license, by }) => ({
      name,
      version,
      license,
      by: by.join(', '),
      'in our files': inFiles.has(name),
    })),
  );
}
