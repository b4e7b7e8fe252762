import { css } from 'lit';
import { selectLooks } from './selectLooks.js';

/** What stands below a log cabin block: panels that fold out, side by side where there is room. */
export const logCabinLooks = css`
  ${selectLooks}
  .panel {
    margin: 0;
  }
  .panels > :last-child {
    border-bottom: 1px solid var(--hair);
  }
  .panel > summary {
    padding-block: 0.6em;
    font-size: 1.1em;
    font-weight: 600;
  }
  .contents {
    display: grid;
    gap: 1em;
    padding: 0.25em 0 2em;
  }
  .contents > *,
  .contents > div > *,
  .beside > *,
  .halves > *,
  .pair > * {
    min-width: 0;
  }
  .contents p {
    max-width: 44em;
  }
  .contents .fields {
    grid-template-columns: repeat(auto-fill, minmax(min(11em, 44%), 1fr));
    gap: 0 1.5em;
    padding: 0;
  }
  .contents .field:not(.choice) {
    display: grid;
    grid-row: span 3;
    grid-template-rows: subgrid;
  }
  .contents .choice {
    grid-row: span 3;
  }
  .contents label:not(.option) {
    align-self: end;
  }
  .contents .fields .select {
    grid-column: auto;
    padding: 0;
  }
  .order {
    padding-inline-start: 1.4em;
  }
  .long {
    display: grid;
    grid-row: span 3;
    grid-column: 1 / -1;
    grid-template-rows: subgrid;
  }
  .result {
    font-weight: 600;
  }
  .notes {
    list-style: none;
    max-width: 44em;
  }
  .title {
    padding-bottom: 0.35em;
    font-weight: 600;
  }
  .beside,
  .halves {
    display: grid;
    gap: 1.5em 3em;
    align-items: start;
  }
  .beside > div,
  .halves > div {
    display: grid;
    gap: 1em;
  }
  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 1em 2em;
  }
  .small svg {
    max-height: 24em;
  }
  .top svg {
    max-height: 34em;
  }
  .preview {
    max-width: 18em;
    border: 1px solid var(--hair);
    background: #fff;
    color: #1d1d1b;
    color-scheme: light;
  }
  .preview svg {
    height: auto;
  }
  .rounds {
    columns: 20em;
    column-gap: 3em;
  }
  .round {
    break-inside: avoid;
    padding-bottom: 1em;
  }
  .round ol {
    padding-inline-start: 2em;
  }
  .round li,
  .notes li {
    position: relative;
    padding: 0.2em 0;
  }
  .round li::marker {
    font-weight: 600;
  }
  .comparison td.figure {
    width: 30%;
  }
  .print-frame {
    border: 0;
  }
  @container (max-width: 26em) {
    .fits td.figure,
    .comparison td.figure {
      font-size: 1em;
    }
    .fits th,
    .fits td {
      padding-inline-end: 0.3em;
    }
    .fits thead th {
      font-size: 0.75em;
    }
    .fits .link {
      margin: 0;
      white-space: nowrap;
    }
    .contents .fields .select {
      grid-column: 1 / -1;
    }
  }
  @container (max-width: 17em) {
    .fits .link {
      white-space: normal;
    }
  }
  @container (min-width: 40em) {
    .contents .fields .choice,
    .contents .fields .long {
      grid-column: span 2;
    }
  }
  @container (min-width: 52em) {
    .beside {
      grid-template-columns: 20em 1fr;
    }
    .halves {
      grid-template-columns: 1fr 1fr;
    }
    .fits,
    .comparison,
    .counts {
      max-width: 52em;
    }
  }
  @media print {
    .panels {
      border: 0;
    }
    .panel-table[open] {
      display: block;
      border: 0;
    }
    .panel-table summary,
    .contents .fields {
      display: none;
    }
    /* Columns inside a grid lose what does not fit on the first page. */
    .contents {
      display: block;
    }
    .contents > * {
      margin-bottom: 1em;
    }
    .rounds {
      columns: auto;
    }
    .title {
      break-after: avoid;
    }
  }
`;
