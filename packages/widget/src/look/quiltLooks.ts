import { css } from 'lit';
import { selectLooks } from './selectLooks.js';

/** What the quilt element shows besides: a pattern in the order of a printed one. */
export const quiltLooks = css`
  ${selectLooks}
  h3,
  h4 {
    font-weight: 600;
    line-height: 1.25;
  }
  h3 {
    margin-bottom: 0.4em;
    font-size: 1.25em;
  }
  h4 {
    margin: 1.25em 0 0.4em;
    font-size: 1.1em;
  }
  .about {
    max-width: 38em;
    margin-bottom: 0.75em;
  }
  .headline .minor {
    display: block;
    font-size: 0.6em;
    font-weight: 400;
  }
  .sheet figure {
    margin-top: 0.75em;
  }
  .select {
    grid-column: 1 / -1;
    padding-bottom: 0.5em;
  }
  .capital::first-letter {
    text-transform: capitalize;
  }
  span.capital {
    display: inline-block;
  }
  [type='color'] {
    flex: none;
    width: 1.75em;
    height: 1.75em;
    padding: 0;
    cursor: pointer;
  }
  [type='color']::-webkit-color-swatch-wrapper {
    padding: 0;
  }
  [type='color']::-webkit-color-swatch {
    border: 0;
    border-radius: 0;
  }
  .fabric-name:has([type='color']) {
    align-items: center;
  }
  .coloring {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5em 1em;
    align-items: center;
    margin-top: 0.5em;
  }
  .sheet .fabric {
    stroke-opacity: 0.6;
    stroke-width: 0.5;
  }
  .sheet .hatch {
    stroke-width: 0.4;
  }
  .sheet .outline {
    stroke-opacity: 0.75;
    stroke-width: 0.8;
  }
  .buy {
    margin-top: 0.5em;
  }
  .buy th,
  .buy td {
    vertical-align: top;
  }
  .buy .minor,
  .cuts .minor,
  .kits-table .minor {
    font-size: 0.8125em;
    font-weight: 400;
    line-height: 1.3;
  }
  .buy tbody .minor {
    opacity: 0.85;
  }
  .buy .fabric-name,
  .cuts .fabric-name {
    max-width: none;
  }
  .kits-table .figure,
  .kits-table .figure .minor,
  .buy .figure .minor,
  .buy .figure,
  .buy .price {
    white-space: nowrap;
  }
  td.price {
    font-size: 0.875em;
  }
  td.batting {
    text-align: end;
  }
  tfoot th,
  tfoot td {
    border-top: 2px solid currentColor;
    font-weight: 600;
  }
  .part > p {
    margin-bottom: 0.5em;
  }
  .result {
    display: grid;
    gap: 1.5em;
    align-content: start;
    min-width: 0;
  }
  details.fold {
    margin-top: 0;
    padding-bottom: 0;
  }
  .fold > summary {
    padding-block: 0.35em;
  }
  .fold summary .fabric-name,
  .fold h4 .fabric-name {
    display: inline-flex;
    max-width: none;
  }
  .cutting {
    display: grid;
    gap: 1em 3em;
    padding-bottom: 1.5em;
  }
  .cutting > * {
    min-width: 0;
  }
  .rows {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(18em, 100%), 1fr));
    gap: 1.5em 2em;
  }
  .rows figcaption {
    min-height: 0;
  }
  .steps {
    margin: 0.75em 0;
    padding-inline-start: 1.6em;
  }
  .steps li {
    padding: 0.2em 0;
  }
  .blocks .steps {
    padding-inline-start: 2.2em;
    columns: 24em;
    column-gap: 3em;
  }
  .blocks .steps li {
    break-inside: avoid;
  }
  .steps li::marker {
    font-weight: 600;
  }
  .place {
    min-width: 1.2em;
    font-weight: 600;
  }
  .facts {
    list-style: none;
  }
  .facts li {
    padding: 0.35em 0;
    border-top: 1px solid var(--hair);
  }
  .row-blocks {
    word-spacing: 0.35em;
  }
  .turns th[scope='row'] {
    width: 3em;
  }
  .kits-table caption {
    padding-top: 0.75em;
  }
  .kits-form {
    max-width: 36em;
    margin-bottom: 1em;
  }
  code {
    display: block;
    font: inherit;
    font-size: 0.875em;
    overflow-wrap: anywhere;
  }
  .order {
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 0.25px;
  }
  .selvage {
    stroke-width: 3;
    stroke-dasharray: 1 4;
  }
  .tint-8 {
    --tint: var(--eighths-fabric-9, light-dark(#e6b8a2, #7a4a35));
  }
  .tint-9 {
    --tint: var(--eighths-fabric-10, light-dark(#a9b7c6, #3b4a5c));
  }
  .tint-10 {
    --tint: var(--eighths-fabric-11, light-dark(#f0d5dd, #6b3f4e));
  }
  .tint-11 {
    --tint: var(--eighths-fabric-12, light-dark(#dbe3b0, #515c22));
  }
  .tint-12 {
    --tint: var(--eighths-fabric-13, light-dark(#c3bce4, #464072));
  }
  .tint-13 {
    --tint: var(--eighths-fabric-14, light-dark(#f5cf9c, #74501c));
  }
  .tint-14 {
    --tint: var(--eighths-fabric-15, light-dark(#a8d0c0, #23584a));
  }
  .tint-15 {
    --tint: var(--eighths-fabric-16, light-dark(#c9c2b6, #4d4840));
  }

  @container (max-width: 30em) {
    .buy .price {
      display: none;
    }
    .buy td .number,
    .cuts td .number {
      white-space: nowrap;
    }
    .buy th,
    .buy td,
    .kits-table th,
    .kits-table td {
      padding-inline-end: 0.3em;
    }
    .kits-table thead th {
      font-size: 0.75em;
    }
    .kits-table .figure,
    .kits-table .figure .minor,
    .kits-table .minor .number {
      white-space: normal;
    }
    .kits-table td.figure {
      font-size: 0.9375em;
    }
  }
  /* Beside the drawing there is less room than below it. */
  @container (min-width: 52em) and (max-width: 66em) {
    .buy .price {
      white-space: normal;
    }
  }
  @container (min-width: 52em) {
    .page > .lists {
      grid-template-columns: 1fr 1fr;
    }
    .cutting {
      grid-template-columns: 1fr 1.35fr;
    }
  }

  @media print {
    details.fold {
      display: block;
    }
    tfoot {
      display: table-row-group;
    }
    [type='color'] {
      print-color-adjust: exact;
    }
    .coloring,
    .part:has(.kits-none) {
      display: none;
    }
    .lists section {
      margin-top: 1.5em;
    }
    .fold,
    .part {
      break-inside: auto;
    }
    h3,
    h4,
    summary {
      break-after: avoid;
    }
    summary {
      list-style: none;
    }
    .form {
      display: none;
    }
    .cutting,
    .lists {
      display: block;
    }
    .rows {
      grid-template-columns: 1fr 1fr;
    }
  }
`;
