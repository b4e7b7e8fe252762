import { EighthsError } from '@eighths/core';

/** Work for this long, in milliseconds, and then let the page breathe. */
const SLICE = 8;

/** What has become of a question: an answer, an error, or neither yet. */
export interface Outcome<Answer> {
  readonly answer?: Answer;
  readonly error?: EighthsError;
}

/** What was asked last, and how far it has come. */
interface Question<Answer> {
  readonly text: string;
  readonly making: Generator<unknown, Answer>;
  outcome: Outcome<Answer>;
}

/** Answers one question at a time, in slices short enough for a page to stay responsive. */
export class Working<Answer> {
  readonly #settled: () => void;
  readonly #begins: 'at once' | 'later';
  #question: Question<Answer> | undefined;

  /**
   * @param settled is called when a question is settled that was not when it was asked
   * @param begins `later` where the first part takes long by itself: the page gets a turn before it
   */
  constructor(settled: () => void, begins: 'at once' | 'later' = 'at once') {
    this.#settled = settled;
    this.#begins = begins;
  }

  /**
   * What has become of a question so far. Another question than the last ends that one.
   *
   * @param text what is asked: the same text is the same question
   * @param begin starts working on it
   */
  ask(text: string, begin: () => Generator<unknown, Answer>): Outcome<Answer> {
    if (this.#question?.text === text) return this.#question.outcome;
    const question = { text, making: begin(), outcome: {} };
    this.#question = question;
    if (this.#begins === 'later' || !this.#work(question)) this.#workLater(question);
    return question.outcome;
  }

  /** Works on a question for a slice of time; says whether it is settled. */
  #work(question: Question<Answer>): boolean {
    const end = performance.now() + SLICE;
    try {
      do {
        const state = question.making.next();
        if (!state.done) continue;
        question.outcome = { answer: state.value };
        return true;
      } while (performance.now() < end);
      return false;
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      question.outcome = { error };
      return true;
    }
  }

  /** The page gets a turn first; another question in the meantime ends this one. */
  #workLater(question: Question<Answer>): void {
    setTimeout(() => {
      if (question !== this.#question) return;
      if (this.#work(question)) this.#settled();
      else this.#workLater(question);
    });
  }
}
