#!/usr/bin/env node
// `npx @eighths/widget render '<eighths-log-cabin finished="9" rounds="4">'` prints the tag with its
// static answer inside, for readers and search engines without script.
import { readFile } from 'node:fs/promises';
import {
  EighthsFabric,
  EighthsLogCabin,
  EighthsQuilt,
  EighthsUnit,
  renderTag,
} from '../dist/render/index.js';

const usage = `Usage: npx @eighths/widget render '<eighths-log-cabin finished="9" rounds="4">'
Prints the element with its numbers inside, to paste into a page. A quilt's src names a file.`;

const [command, ...tag] = process.argv.slice(2);
if (command !== 'render' || tag.length === 0) {
  console.error(usage);
  process.exitCode = 1;
} else {
  try {
    process.stdout.write(
      await renderTag(
        tag.join(' '),
        {
          'eighths-fabric': EighthsFabric,
          'eighths-log-cabin': EighthsLogCabin,
          'eighths-quilt': EighthsQuilt,
          'eighths-unit': EighthsUnit,
        },
        // A quilt's recipe: `src` is a file here, from where the command is run.
        (path) => readFile(path, 'utf8'),
      ),
    );
  } catch (error) {
    const isExpected = error instanceof Error && (error.name === 'EighthsError' || 'code' in error);
    if (!isExpected) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
