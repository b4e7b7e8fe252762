import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { pinnedPnpm } from '../../tools/pnpm.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cache = join(root, '.cache', 'packed');

const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
const npx = process.platform === 'win32' ? 'npx.cmd' : 'npx';

/** Packs both packages as they would be published. Resolves to the tarballs' paths. */
export function packed(): Readonly<Record<'core' | 'widget', string>> {
  rmSync(cache, { recursive: true, force: true });
  mkdirSync(cache, { recursive: true });
  const pack = (name: string): string => {
    execFileSync(npx, ['--yes', pinnedPnpm(), 'pack', '--pack-destination', cache], {
      cwd: join(root, 'packages', name),
      stdio: 'pipe',
    });
    const found = readdirSync(cache).find((file) => file.includes(name));
    if (found === undefined) throw new Error(`Nothing was packed of ${name}.`);
    return join(cache, found);
  };
  return { core: pack('core'), widget: pack('widget') };
}

/** An empty project outside the workspace that has the two tarballs, React and Vue from npm. */
export function consumerProject(): string {
  const { core, widget } = packed();
  const project = join(cache, 'consumer');
  cpSync(fileURLToPath(new URL('consumer', import.meta.url)), project, { recursive: true });
  const tarball = (path: string): string => `file:${path}`;
  const manifest = {
    name: 'consumer',
    private: true,
    type: 'module',
    dependencies: {
      '@eighths/core': tarball(core),
      '@eighths/widget': tarball(widget),
      '@types/react': '19.2.2',
      '@types/react-dom': '19.2.2',
      react: '19.2.0',
      'react-dom': '19.2.0',
      vue: '3.5.22',
    },
    // The widget's own dependency on the core is this tarball too.
    overrides: { '@eighths/core': tarball(core) },
  };
  writeFileSync(join(project, 'package.json'), JSON.stringify(manifest));
  execFileSync(npm, ['install', '--no-audit', '--no-fund', '--ignore-scripts'], {
    cwd: project,
    stdio: 'pipe',
  });
  return project;
}

/**
 * The program of another Node version, from npm. Not the package named `node`: its script at
 * installation is what a careful npm refuses.
 */
export function nodeOf(version: string): string {
  if (version === process.versions.node) return process.execPath;
  const platform = process.platform === 'win32' ? 'win' : process.platform;
  const prefix = platform === 'darwin' && process.arch === 'arm64' ? 'node-bin' : 'node';
  const name = `${prefix}-${platform}-${process.arch}`;
  const folder = join(root, '.cache', 'nodes', version);
  const program = join(
    folder,
    'node_modules',
    name,
    'bin',
    platform === 'win' ? 'node.exe' : 'node',
  );
  if (!existsSync(program)) {
    mkdirSync(folder, { recursive: true });
    execFileSync(
      npm,
      ['install', '--prefix', folder, '--no-audit', '--no-fund', `${name}@${version}`],
      { stdio: 'pipe' },
    );
  }
  return program;
}
