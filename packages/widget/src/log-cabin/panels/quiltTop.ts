import { type Drawing, type Mark, type Painting, paint } from '@eighths/core';
import type { Voice } from '../../base/voice.js';

/**
 * A quilt top’s drawing with the marks that look alike in one path each: some hundred blocks of some
 * twenty logs would be too many nodes for a page.
 */
export function paintedTop(drawing: Drawing, voice: Voice): Painting {
  const painting = paint(drawing, {
    write: voice.measures.figures,
    words: voice.drawingWords,
    scale: voice.measures.units === 'metric' ? 'centimeters' : 'inches',
  });
  const isFabric = ({ role }: Mark): boolean => role === 'fabric';
  // The hatches of all fabrics lie on top of all fabrics.
  const ordered = [
    ...painting.marks.filter(isFabric),
    ...painting.marks.filter((mark) => !isFabric(mark)),
  ];
  const alike = new Map<string, Mark>();
  for (const [index, mark] of ordered.entries()) {
    if (mark.kind === 'text') {
      alike.set(`text ${index}`, mark);
      continue;
    }
    const key = `${mark.role} ${mark.tint ?? ''}`;
    const before = alike.get(key);
    alike.set(key, { ...mark, d: before?.kind === 'path' ? before.d + mark.d : mark.d });
  }
  return { ...painting, marks: [...alike.values()] };
}
