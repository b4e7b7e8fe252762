// Writes what editors and frameworks read, from the built classes and `describe.mjs`: the custom
// elements manifest, types for React and Vue, data for HTML editors, and the notices of what is bundled.
// Part of the build.
import { createHash } from 'node:crypto';
import { copyFile, readdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { notices } from '../../../tools/licenses.mjs';
import * as classes from '../dist/render/index.js';
import { common, elements, events, fabricAttribute, parts, properties } from './describe.mjs';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));

/** @typedef {{ name: string, description: string }} Described */

const described = (/** @type {Readonly<Record<string, string>>} */ table) =>
  Object.entries(table).map(([name, description]) => ({ name, description }));

const className = (/** @type {string} */ tag) =>
  tag.replace(/(?:^|-)(\w)/g, (_, letter) => letter.toUpperCase());

const propertyName = (/** @type {string} */ attribute) =>
  attribute.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());

/** Every attribute of an element, in its own order, with what it is for. */
export function attributesOf(/** @type {string} */ tag) {
  const known = { ...elements[tag]?.attributes, ...common };
  const own = Reflect.get(classes, className(tag)).observedAttributes;
  return [...new Set([...own, 'lang'])].map((name) => ({
    name,
    description:
      Reflect.get(known, name) ?? (name.startsWith('fabrics-') ? fabricAttribute(name) : ''),
  }));
}

const tags = Object.keys(elements);

function manifest() {
  const declarations = tags.map((tag) => ({
    kind: 'class',
    customElement: true,
    name: className(tag),
    tagName: tag,
    description: elements[tag]?.description,
    attributes: attributesOf(tag).map(({ name, description }) => ({
      name,
      fieldName: propertyName(name),
      type: { text: 'string' },
      description,
    })),
    members: [
      {
        kind: 'field',
        name: 'plan',
        readonly: true,
        description: 'The core’s plan of the last settings that could be made.',
      },
    ],
    events: Object.entries(events).map(([name, { description, type }]) => ({
      name,
      description,
      type: { text: `CustomEvent<${type}>` },
    })),
    cssParts: described(parts),
    cssProperties: described(properties),
  }));
  return {
    schemaVersion: '1.0.0',
    modules: [
      {
        kind: 'javascript-module',
        path: 'dist/index.js',
        declarations,
        exports: declarations.map(({ name }) => ({
          kind: 'js',
          name,
          declaration: { name, module: 'dist/index.js' },
        })),
      },
      {
        kind: 'javascript-module',
        path: 'dist/define.js',
        exports: declarations.map(({ name, tagName }) => ({
          kind: 'custom-element-definition',
          name: tagName,
          declaration: { name, module: 'dist/index.js' },
        })),
      },
    ],
  };
}

/** Attributes as members of an interface, each with its comment. */
const members = (/** @type {string} */ tag, /** @type {string} */ indent) =>
  attributesOf(tag)
    .filter(({ name }) => name !== 'lang')
    .map(
      ({ name, description }) => `${indent}/** ${description} */\n${indent}'${name}'?: Setting;\n`,
    )
    .join('');

const imports = `import type { ChangeDetail, ErrorDetail } from './index.js';`;
const setting = `/** What a setting may be: a text, or whatever has one (a length, a list, a size). */
type Setting = string | number | boolean | object | undefined;`;

const interfaces = () =>
  tags
    .map(
      (tag) => `/** ${elements[tag]?.description} */
export interface ${className(tag)}Attributes {
${members(tag, '  ')}}
`,
    )
    .join('\n');

const react = () => `// Made by the build: the elements in JSX, for React 19.
${imports}
import type { DetailedHTMLProps, HTMLAttributes } from 'react';

${setting}

interface Events {
  'oneighths-change'?: (event: CustomEvent<ChangeDetail>) => void;
  'oneighths-error'?: (event: CustomEvent<ErrorDetail>) => void;
}

type Tag<Attributes> = Omit<DetailedHTMLProps<HTMLAttributes<HTMLElement>, HTMLElement>, keyof Attributes> &
  Attributes &
  Events;

${interfaces()}
declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
${tags.map((tag) => `      '${tag}': Tag<${className(tag)}Attributes>;\n`).join('')}    }
  }
}
`;

const vue = () => `// Made by the build: the elements in Vue templates.
${imports}
import type { DefineComponent, HTMLAttributes } from 'vue';

${setting}

interface Events {
  'onEighths-change'?: (event: CustomEvent<ChangeDetail>) => void;
  'onEighths-error'?: (event: CustomEvent<ErrorDetail>) => void;
}

type Tag<Attributes> = DefineComponent<Attributes & Events & HTMLAttributes>;

${interfaces()}
declare module 'vue' {
  interface GlobalComponents {
${tags.map((tag) => `    '${tag}': Tag<${className(tag)}Attributes>;\n`).join('')}  }
}
`;

const editors = () => ({
  version: 1.1,
  tags: tags.map((tag) => ({
    name: tag,
    description: elements[tag]?.description,
    attributes: attributesOf(tag),
  })),
});

const json = (/** @type {unknown} */ value) => `${JSON.stringify(value, null, 2)}\n`;

/** What a page writes beside a file's address, so that no other file is run in its place. */
async function integrity() {
  const files = (await readdir(dist)).filter((name) => /^eighths.*\.js$/.test(name)).sort();
  const hashes = await Promise.all(
    files.map(async (name) => {
      const hash = createHash('sha384')
        .update(await readFile(`${dist}${name}`))
        .digest('base64');
      return [name, `sha384-${hash}`];
    }),
  );
  return Object.fromEntries(hashes);
}

await writeFile(`${dist}custom-elements.json`, json(manifest()));
await writeFile(`${dist}html-custom-data.json`, json(editors()));
await writeFile(`${dist}jsx.d.ts`, react());
await writeFile(`${dist}vue.d.ts`, vue());
await writeFile(`${dist}THIRD-PARTY-LICENSES`, notices(dist));
for (const file of ['embed.html', 'embed.css']) {
  await copyFile(fileURLToPath(new URL(`../${file}`, import.meta.url)), `${dist}${file}`);
}
const hashes = await integrity();
await writeFile(`${dist}integrity.json`, json(hashes));
console.log(
  Object.entries(hashes)
    .map(([name, hash]) => `${name} ${hash}`)
    .join('\n'),
);
