import { css } from 'lit';

/** What the fabric element shows besides: the list of pieces, and fabric folded onto rows. */
export const fabricLooks = css`
  .piece {
    display: grid;
    grid-template-columns: 2.4em 0.7fr 1fr 1fr 1.2fr auto;
    gap: 0 0.75em;
    align-items: start;
  }
  .piece:not(:first-child) label,
  .piece:not(:first-child) .label {
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
  .piece label {
    min-height: 2.95em;
    align-content: end;
  }
  .piece:first-child .number-in-list,
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
  .steps {
    margin: 1em 0;
  }
  .steps {
    padding-inline-start: 1.5em;
  }
  .headline .minor {
    font-size: 0.6em;
    font-weight: 400;
  }
  .selvage {
    stroke-width: 3;
    stroke-dasharray: 1 4;
  }
`;
