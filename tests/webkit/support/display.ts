import { spawn } from 'node:child_process';
import { once } from 'node:events';

/** A screen that nobody sees. */
export interface Display {
  /** Its name, as programs look for it in `DISPLAY`. */
  readonly name: string;
  readonly close: () => void;
}

/** Starts a screen of its own under the first number that is free. */
export async function openDisplay(xvfb: string): Promise<Display> {
  const size = ['-screen', '0', '1600x1200x24', '-nolisten', 'tcp'];
  // It writes the number to its third pipe once it takes windows.
  const screen = spawn(xvfb, ['-displayfd', '3', ...size], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const close = () => screen.kill();
  process.once('exit', close);
  const numbers = screen.stdio[3];
  if (numbers === undefined || numbers === null) throw new Error(`${xvfb} has no pipe.`);
  const ended = once(screen, 'close').then(([code]) => {
    throw new Error(`${xvfb} ended with code ${code}.`);
  });
  const [number] = await Promise.race([once(numbers, 'data'), ended]);
  // From now on it ends when it is told to.
  ended.catch(() => undefined);
  return { name: `:${String(number).trim()}`, close };
}
