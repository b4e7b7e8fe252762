import { css } from 'lit';

/** A list that opens, ruled below like the inputs, for the elements that have one. */
export const selectLooks = css`
  select {
    width: 100%;
    min-height: 2.2em;
    padding-inline-end: 0.9em;
    border: 0;
    border-bottom: 1px solid;
    border-radius: 0;
    /* WebKit would draw a gray button here that cuts words off: the arrow is ours, of two halves. */
    appearance: none;
    background: var(--paper) no-repeat;
    background-image: linear-gradient(to top right, transparent 50%, currentColor 50%),
      linear-gradient(to top left, transparent 50%, currentColor 50%);
    background-position: right 0.3em center, right center;
    background-size: 0.3em 0.35em;
    color: inherit;
    font: inherit;
    font-size: 1.25em;
  }
  select:dir(rtl) {
    background-position: left center, left 0.3em center;
  }
`;
