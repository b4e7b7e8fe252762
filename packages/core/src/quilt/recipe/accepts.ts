import type { Sign } from '../../plan/field.js';

/**
 * What a field of a recipe accepts. It travels as the message of the schema's complaint, as JSON, and
 * the complaint becomes a sentence in one place.
 */
export type Accepts =
  | { readonly kind: 'fields'; readonly known: readonly string[] }
  | { readonly kind: 'choice'; readonly choices: readonly string[] }
  | { readonly kind: 'count'; readonly least: number; readonly most: number }
  | { readonly kind: 'text'; readonly most: number }
  | { readonly kind: 'id' }
  | { readonly kind: 'length'; readonly sign: Sign }
  | { readonly kind: 'share' }
  | { readonly kind: 'degrees' }
  | { readonly kind: 'list'; readonly least: number; readonly most: number }
  | { readonly kind: 'yes or no' }
  | { readonly kind: 'money' };

export const accepts = (what: Accepts): string => JSON.stringify(what);
