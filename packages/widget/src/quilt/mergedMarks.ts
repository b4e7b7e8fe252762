import type { Mark } from '@eighths/core';

/**
 * Marks of the same kind as one, so that a page has dozens of nodes and not thousands. In each cell the
 * first area may lie below the others, so first areas are kept apart: below all others.
 */
export function mergedMarks(marks: readonly Mark[]): readonly Mark[] {
  const layers: readonly Map<string, Mark>[] = [
    new Map(),
    new Map(),
    new Map(),
    new Map(),
    new Map(),
  ];
  let areas = 0;
  for (const mark of marks) {
    if (mark.kind !== 'path') continue;
    const { role, d, tint } = mark;
    if (role === 'outline') areas = 0;
    else if (role === 'fabric') areas += 1;
    const level = role === 'outline' ? 4 : (areas > 1 ? 2 : 0) + (role === 'hatch' ? 1 : 0);
    const layer = layers[level];
    const key = `${role} ${tint}`;
    const before = layer?.get(key);
    const path = before?.kind === 'path' ? before.d + d : d;
    layer?.set(key, { ...mark, d: path });
  }
  return layers.flatMap((layer) => [...layer.values()]);
}
