import { css } from 'lit';
import { selectLooks } from './selectLooks.js';

/** What the fabric element shows besides: the lists of pieces and fabric, and fabric folded onto rows. */
export const fabricLooks = css`
  ${selectLooks}
  .piece {
    display: grid;
    grid-template-columns: 2em 0.6fr 0.9fr 0.9fr 1fr 1.4fr auto;
    gap: 0 0.75em;
    align-items: start;
  }
  .piece + .piece label,
  .piece + .piece .label {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }
  .number-in-list {
    display: flex;
    gap: 0.4em;
    align-items: center;
    padding-top: 0.6em;
  }
  .add {
    margin-bottom: 0.5em;
  }
  .piece label,
  .piece .label {
    min-height: 2.95em;
    align-content: end;
  }
  :not(.piece) + .piece .number-in-list,
  .piece:first-child .number-in-list,
  :not(.piece) + .piece button,
  .piece:first-child button {
    margin-top: 2.3em;
  }
  .rows {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(18em, 100%), 1fr));
    gap: 1.5em 2em;
  }
  .rows figcaption {
    min-height: 0;
  }
  .answers p:not([class]),
  .steps,
  .plain {
    margin: 1em 0;
  }
  .steps,
  .plain {
    padding-inline-start: 2.2em;
  }
  .answers h3 {
    margin-top: 1.5em;
    font-size: 1.1em;
    font-weight: 600;
  }
  .on-hand {
    margin-top: 1.5em;
  }
  .headline .minor {
    font-size: 0.6em;
    font-weight: 400;
  }
  .selvage {
    stroke-width: 3;
    stroke-dasharray: 1 4;
  }
  @container (max-width: 30em) {
    .piece {
      grid-template-columns: 2.2em 1fr 1fr 1fr;
    }
    .piece > :nth-child(6) {
      grid-column: 3 / -1;
    }
    .piece > button {
      grid-area: 2 / 1;
    }
    .fields > .select {
      grid-column: 1 / -1;
      padding-bottom: 0.5em;
    }
  }
`;
