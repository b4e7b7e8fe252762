import { EighthsError } from '@eighths/core';

/** A longer recipe is not read: that of a large pattern has about ten thousand characters. */
const MOST_CHARACTERS = 1_000_000;

const notLoaded = (address: string, status: number): EighthsError =>
  new EighthsError(
    'not-loaded',
    'src',
    { address, status },
    status === 0
      ? 'No recipe could be fetched from {address}: nothing answered.'
      : 'No recipe could be fetched from {address}: it answered {status}.',
  );

/** The text of an answer; of one that is too long no more is fetched than shows that. */
async function boundedText({ body }: Response, controller: AbortController): Promise<string> {
  const reader = body?.pipeThrough(new TextDecoderStream()).getReader();
  let text = '';
  for (;;) {
    const { done, value } = (await reader?.read()) ?? { done: true };
    if (done) return text;
    text += value;
    if (text.length <= MOST_CHARACTERS) continue;
    controller.abort();
    throw new EighthsError(
      'text-too-long',
      'src',
      { characters: text.length, most: MOST_CHARACTERS },
      'This text has more than {most} characters. A recipe of up to that is read.',
    );
  }
}

/**
 * The text at an address, as the page's own rules allow it. It ends quietly, with nothing, where it is
 * stopped from outside.
 *
 * @throws EighthsError `not-loaded` or `text-too-long`
 */
export async function fetchedText(
  address: string,
  controller: AbortController,
): Promise<string | undefined> {
  const { signal } = controller;
  try {
    const response = await fetch(address, { signal });
    if (!response.ok) throw notLoaded(address, response.status);
    return await boundedText(response, controller);
  } catch (error) {
    if (error instanceof EighthsError) throw error;
    if (signal.aborted) return undefined;
    throw notLoaded(address, 0);
  }
}
