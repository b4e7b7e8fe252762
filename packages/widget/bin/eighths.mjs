#!/usr/bin/env node
// `npx @eighths/widget render '<eighths-log-cabin finished="9" rounds="4">'` prints the tag with its
// static answer inside, for readers and search engines without script.
import { EighthsFabric, EighthsLogCabin, EighthsUnit, renderTag } from '../dist/render/index.js';

const usage = `Usage: npx @eighths/widget render '<eighths-log-cabin finished="9" rounds="4">'
Prints the element with its numbers inside, to paste into a page.`;

const [command, ...tag] = process.argv.slice(2);
if (command !== 'render' || tag.length === 0) {
  console.error(usage);
  process.exitCode = 1;
} else {
  try {
    process.stdout.write(
      await renderTag(tag.join(' '), {
        'eighths-fabric': EighthsFabric,
        'eighths-log-cabin': EighthsLogCabin,
        'eighths-unit': EighthsUnit,
      }),
    );
  } catch (error) {
    if (!(error instanceof Error) || error.name !== 'EighthsError') throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
