import { css } from 'lit';
import { selectLooks } from './selectLooks.js';

/** What the unit element shows besides: a list of units, the steps, and methods side by side. */
export const unitLooks = css`
  ${selectLooks}
  .select {
    grid-column: 1 / -1;
    padding-bottom: 0.5em;
  }
  a {
    display: inline-block;
    color: inherit;
    text-decoration: none;
    border-style: solid;
  }
  .result,
  .result > * {
    min-width: 0;
  }
  .result {
    display: grid;
    gap: 1.5em;
    align-content: start;
  }
  .cuts {
    margin-top: 1em;
  }
  .title {
    padding-bottom: 0.35em;
    font-size: 1.1em;
    font-weight: 600;
  }
  .steps ol,
  .facts ul {
    padding-inline-start: 1.4em;
  }
  .steps li,
  .facts li {
    padding: 0.2em 0;
  }
  .steps li::marker {
    font-weight: 600;
  }
  .facts ul {
    padding: 0;
    list-style: none;
  }
  .facts li {
    border-top: 1px solid var(--hair);
    padding: 0.35em 0;
  }
  th .minor,
  td .minor {
    font-size: 0.8125em;
    line-height: 1.3;
  }
  .methods .link {
    margin: 0;
    text-align: end;
  }
  .methods .chosen-method .link {
    border-bottom: 3px solid var(--accent);
  }
  .methods p {
    padding-top: 0.5em;
  }
  @container (max-width: 26em) {
    .methods td.figure {
      font-size: 1em;
    }
    .methods th,
    .methods td {
      padding-inline-end: 0.3em;
    }
    .methods thead th {
      font-size: 0.75em;
    }
  }
  @container (max-width: 17em) {
    .methods th,
    .methods .link {
      overflow-wrap: anywhere;
    }
  }
`;
