// Programs that the tools start. Nothing here, or in what setting up needs, comes from npm.
import { spawn } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The folder of the repository, without a slash at its end. */
export const root = fileURLToPath(new URL('..', import.meta.url)).replace(/[\\/]$/, '');

/**
 * Whether a module is the program that Node was started with, and not imported by another.
 *
 * @param {{ url: string }} meta the module's `import.meta`
 */
export function isProgram(meta) {
  const started = process.argv[1];
  return started !== undefined && realpathSync(started) === fileURLToPath(meta.url);
}

/**
 * Runs a program in the repository's folder with nothing to read from, shows what it writes, and
 * resolves to its exit code and the end of what it wrote. With `watch` false its output goes
 * straight to ours, colors and all, and `output` is empty. Never rejects: a program that could not
 * be started has the code 127.
 *
 * @param {string} program
 * @param {readonly string[]} args
 * @param {{ shell?: boolean, watch?: boolean, env?: Record<string, string> }} [options]
 * @returns {Promise<{ code: number, output: string }>}
 */
export function run(program, args, { shell = false, watch = false, env = {} } = {}) {
  return new Promise((resolve) => {
    const stdio = watch ? 'pipe' : 'inherit';
    // Given to a shell, the words are joined: they must be plain ones.
    const [command, words] = shell ? [[program, ...args].join(' '), []] : [program, args];
    const child = spawn(command, words, {
      cwd: root,
      shell,
      stdio: ['ignore', stdio, stdio],
      env: { ...process.env, ...env },
    });
    let output = '';
    /** @type {(to: NodeJS.WriteStream) => (bytes: Buffer) => void} */
    const passTo = (to) => (bytes) => {
      to.write(bytes);
      output = (output + bytes).slice(-20_000);
    };
    child.stdout?.on('data', passTo(process.stdout));
    child.stderr?.on('data', passTo(process.stderr));
    child.on('error', (error) => resolve({ code: 127, output: `${output}${error.message}` }));
    child.on('close', (code) => resolve({ code: code ?? 1, output }));
  });
}

/**
 * Runs a program written for Node, as one of its modules, without the shell scripts in
 * `node_modules/.bin`, which differ from system to system.
 *
 * @param {readonly string[]} args the module's path in the repository, then its words
 * @param {{ env?: Record<string, string> }} [options]
 */
export const runNode = (args, options = {}) => run(process.execPath, args, options);
