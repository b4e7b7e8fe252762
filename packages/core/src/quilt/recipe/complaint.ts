import type { BaseIssue } from 'valibot';
import { fail } from '../../errors/error.js';
import { shownText, textOf } from '../../length/choice.js';
import {
  lengthField,
  missing,
  notABoolean,
  notAChoice,
  notACount,
  notAField,
  notAnObject,
} from '../../plan/field.js';
import { notMoney } from '../money/money.js';
import type { Accepts } from './accepts.js';

type Issue = BaseIssue<unknown>;

const keysOf = ({ path }: Issue): readonly unknown[] => path?.map(({ key }) => key) ?? [];

/** `blocks[2].pieces[0].width` */
const pathOf = (keys: readonly unknown[]): string =>
  keys.reduce<string>((path, key) => {
    if (typeof key === 'number') return `${path}[${key}]`;
    return path === '' ? textOf(key) : `${path}.${textOf(key)}`;
  }, '');

/** Of several ways of writing a value, the complaint about the one that was meant: the deepest. */
function meant(issue: Issue): { readonly issue: Issue; readonly keys: readonly unknown[] } {
  const keys = keysOf(issue);
  const deeper = issue.issues?.find(({ path }) => path !== undefined);
  if (deeper === undefined) return { issue, keys };
  const inside = meant(deeper);
  return { issue: inside.issue, keys: [...keys, ...inside.keys] };
}

/** Whether the fault is that nothing is there. */
const isMissing = ({ received, input }: Issue): boolean =>
  received === 'undefined' && input === undefined;

/**
 * What is wrong with a recipe, as an error that says what would be accepted. Throws.
 *
 * @param parent the path of what was checked.
 */
export function refuse(complaint: Issue, parent: readonly string[] = []): never {
  const { issue, keys } = meant(complaint);
  const field = pathOf([...parent, ...keys]);
  if (isMissing(issue)) return missing(field);
  const what: Accepts = JSON.parse(issue.message);
  const value = shownText(issue.input);
  switch (what.kind) {
    case 'fields':
      return issue.expected === 'never'
        ? notAField(issue.path?.at(-1)?.key, field, what.known)
        : notAnObject(field, what.known);
    case 'choice':
      return notAChoice(issue.input, field, what.choices);
    case 'count':
      return notACount(value, field, what.least, what.most);
    case 'text':
      return fail(
        'not-a-text',
        field,
        { most: what.most },
        'Words are needed here, in quotes, of at most {most} characters.',
      );
    case 'id':
      return fail(
        'not-an-id',
        field,
        { value },
        'A name such as night-sky is needed here, not “{value}”: a letter, then letters, digits, hyphens or underscores, at most 60.',
      );
    case 'length':
      return refuseLength(issue.input, field, what);
    case 'share':
      return fail(
        'not-a-share',
        field,
        { value },
        'A part from 0 up to but not including 1 is needed here (0.05 for five in a hundred), not {value}.',
      );
    case 'degrees':
      return fail(
        'angle-out-of-range',
        field,
        { value, least: 1, most: 179 },
        'An angle from {least} to {most} degrees is needed here, not {value}.',
      );
    case 'list':
      return fail(
        'not-a-list',
        field,
        { least: what.least, most: what.most },
        'A list of {least} to {most} entries is needed here.',
      );
    case 'yes or no':
      return notABoolean(field);
    case 'money':
      return notMoney(value, 2, field);
  }
}

function refuseLength(
  input: unknown,
  field: string,
  { sign }: Extract<Accepts, { kind: 'length' }>,
): never {
  if (typeof input === 'number' || typeof input === 'string') lengthField(input, field, sign);
  return fail(
    'wrong-kind',
    field,
    { expected: '10 1/2' },
    'A length is needed here, such as {expected}: a number of inches, or a text in quotes.',
  );
}
