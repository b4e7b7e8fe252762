import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong, a line each. */
export async function violations(page: Page): Promise<readonly string[]> {
  // axe takes a page that names no background for a white one, in the dark too.
  await page.addStyleTag({ content: 'html { background: Canvas }' });
  await page.evaluate(axe);
  const results = await page.evaluate(async (): Promise<AxeResults> => {
    const runner: { run(context: Node, options: RunOptions): Promise<AxeResults> } = Reflect.get(
      globalThis,
      'axe',
    );
    return runner.run(document, { resultTypes: ['violations'] });
  });
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
  );
}
