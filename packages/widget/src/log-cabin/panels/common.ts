import { EighthsError, type Layout, type Length } from '@eighths/core';
import type { BlocklessContext } from './panel.js';

/** What the block above settles for every block that is found from it. */
export interface Common {
  readonly layout?: Layout;
  readonly first?: 'wide' | 'narrow';
  readonly seam?: Length;
}

const LAYOUTS: readonly Layout[] = ['spiral', 'courthouse', 'quarter'];

/** What cannot be read is said at its own input, and left out here. */
export function commonOf({ settings, voice }: BlocklessContext): Common {
  const layout = LAYOUTS.find((each) => each === settings.layout);
  const first = (['wide', 'narrow'] as const).find((each) => each === settings.first);
  const seam = readable(settings.seam, voice.measures.read);
  return {
    ...(layout && { layout }),
    ...(first && { first }),
    ...(seam && { seam }),
  };
}

function readable(text: string, read: (text: string) => Length): Length | undefined {
  if (text.trim() === '') return undefined;
  try {
    return read(text);
  } catch (error) {
    if (error instanceof EighthsError) return undefined;
    throw error;
  }
}
