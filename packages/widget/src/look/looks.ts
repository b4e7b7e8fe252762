import { css } from 'lit';

/**
 * How the elements look. `.root` cuts off what a page's style sheet would let in and takes back the
 * page's font and colors; sizes are in em from there. The custom properties and their defaults:
 * `--eighths-accent`, `--eighths-paper`, `--eighths-font-size`, `--eighths-fabric-1` … `-8`.
 */
export const looks = css`
  :host {
    display: block !important;
    contain: layout style;
  }
  :host([hidden]) {
    display: none !important;
  }
  :host([theme='light']) {
    color-scheme: light;
  }
  :host([theme='dark']) {
    color-scheme: dark;
  }
  .root {
    all: initial;
    display: block;
    container-type: inline-size;
    box-sizing: border-box;
    color: inherit;
    color-scheme: inherit;
    font-family: inherit;
    font-size: var(--eighths-font-size, medium);
    line-height: 1.45;
    font-variant-numeric: lining-nums tabular-nums;
    --accent: var(--eighths-accent, light-dark(#a3301c, #ff9d87));
    --paper: var(--eighths-paper, Canvas);
    --hair: color-mix(in srgb, currentColor 28%, transparent);
    --ink: light-dark(#1d1d1b, #f4f1ea);
    --tint-0: var(--eighths-fabric-1, light-dark(#f3e3c3, #6b5526));
    --tint-1: var(--eighths-fabric-2, light-dark(#b8cbd9, #2f4a5e));
    --tint-2: var(--eighths-fabric-3, light-dark(#edc9bd, #6e3f31));
    --tint-3: var(--eighths-fabric-4, light-dark(#c9d6b5, #475733));
    --tint-4: var(--eighths-fabric-5, light-dark(#d6c6de, #54415e));
    --tint-5: var(--eighths-fabric-6, light-dark(#f2dfa0, #665413));
    --tint-6: var(--eighths-fabric-7, light-dark(#b5d6cf, #285750));
    --tint-7: var(--eighths-fabric-8, light-dark(#d9d3ca, #55514a));
  }
  :host([theme='light']) .root,
  :host([theme='dark']) .root {
    background: Canvas;
    color: CanvasText;
    padding: 0.75em;
  }
  * {
    box-sizing: border-box;
  }
  .page {
    display: grid;
    gap: 1.5em 3em;
  }
  .page > * {
    min-width: 0;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  .number {
    white-space: nowrap;
  }

  .headline {
    margin: 0 0 0.5em;
    font-size: 1.5em;
    font-weight: 600;
    line-height: 1.2;
  }
  .headline .number {
    font-size: 1.25em;
  }
  .sheet svg {
    display: block;
    width: 100%;
    height: auto;
    max-height: 44em;
  }
  figure {
    margin: 0;
  }
  figcaption {
    min-height: 2.9em;
    max-width: 34em;
  }
  .stale .sheet svg {
    opacity: 0.35;
  }
  .stale .headline .number,
  .stale th .number,
  .stale .figure {
    text-decoration: line-through;
  }
  .standing {
    min-height: 1.45em;
    margin: 0.25em 0;
    color: var(--accent);
    font-weight: 600;
  }
  .controls {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5em 2em;
    margin-bottom: 0.75em;
  }
  .stepper {
    display: flex;
    flex: 1 1 18em;
    align-items: center;
    gap: 0.75em;
    max-width: 24em;
  }
  .where {
    display: grid;
    flex: 1;
    align-items: center;
    min-height: 2.9em;
    text-align: center;
    font-weight: 600;
  }

  .fields {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 0.25em 1.5em;
    align-items: start;
  }
  .field {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  label,
  legend,
  .label {
    display: block;
    padding: 0;
    font-size: 0.875em;
  }
  input[type='text'] {
    width: 100%;
    min-height: 2.2em;
    padding: 0.2em 0;
    border: 0;
    border-bottom: 1px solid currentColor;
    border-radius: 0;
    background: transparent;
    color: inherit;
    font: inherit;
    font-size: 1.25em;
  }
  .fixed {
    display: grid;
    align-items: center;
    min-height: 2.2em;
    font-size: 1.25em;
  }
  input::placeholder {
    color: inherit;
    opacity: 0.7;
  }
  input[aria-invalid='true'] {
    border-bottom: 3px double var(--accent);
  }
  .note {
    display: block;
    min-height: 1.45em;
    font-size: 0.875em;
  }
  .error {
    color: var(--accent);
    font-weight: 600;
  }
  .choice {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1em;
  }
  .fields .choice {
    padding-bottom: 0.5em;
    grid-column: 1 / -1;
  }
  .choice legend {
    width: 100%;
  }
  .controls .choice legend {
    float: left;
    width: auto;
    margin-inline-end: 0.75em;
    padding-top: 0.4em;
  }
  .option {
    display: flex;
    align-items: center;
    gap: 0.4em;
    min-height: 2em;
    font-size: 1em;
    cursor: pointer;
  }
  input[type='radio'] {
    width: 1.1em;
    height: 1.1em;
    margin: 0;
    font-size: 1em;
    accent-color: var(--accent);
  }
  button {
    min-width: 2.2em;
    min-height: 2.2em;
    padding: 0.2em 0.7em;
    border: 1px solid var(--hair);
    border-radius: 0.2em;
    background: transparent;
    color: inherit;
    font: inherit;
    cursor: pointer;
  }
  button:hover {
    border-color: currentColor;
  }
  button[aria-disabled='true'] {
    opacity: 0.5;
    cursor: default;
  }
  button.link {
    min-width: 0;
    min-height: 1.5em;
    margin-inline-end: 0.5em;
    padding: 0;
    border: 0;
    border-bottom: 1px solid var(--hair);
    border-radius: 0;
    font-weight: 600;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
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
  .steps {
    padding-inline-start: 1.5em;
  }
  .headline .minor {
    font-size: 0.6em;
    font-weight: 400;
  }
  .fractions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25em;
    margin: 0.25em 0 1em;
  }
  .fractions button {
    padding: 0.2em 0.5em;
  }
  details {
    margin-top: 1em;
    border-top: 1px solid var(--hair);
  }
  summary {
    min-height: 2.2em;
    padding: 0.4em 0;
    cursor: pointer;
  }
  details .fields {
    padding-bottom: 0.5em;
  }

  table {
    width: 100%;
    border-collapse: collapse;
    text-align: start;
  }
  caption {
    padding: 0 0 0.35em;
    font-size: 1.1em;
    font-weight: 600;
    text-align: start;
  }
  th,
  td {
    padding: 0.35em 0.75em 0.35em 0;
    border-top: 1px solid var(--hair);
    font-weight: inherit;
    text-align: start;
    vertical-align: baseline;
  }
  .unit {
    font-size: 0.8em;
    font-weight: 400;
    margin-inline-start: 0.5em;
  }
  thead th {
    border-top: 0;
    font-size: 0.8125em;
    line-height: 1.25;
    vertical-align: bottom;
  }
  .figure {
    text-align: end;
  }
  .figure:last-child {
    padding-inline-end: 0;
  }
  td.figure {
    font-size: 1.125em;
    line-height: 1.29;
  }
  .trims tbody tr + tr > * {
    padding-top: 0;
    border-top: 0;
  }
  .minor {
    font-size: 0.875em;
  }
  .chosen tr > :first-child {
    box-shadow: inset 3px 0 var(--accent);
    padding-inline-start: 0.6em;
  }
  .fabric-name {
    display: flex;
    gap: 0.5em;
    align-items: baseline;
    max-width: 8em;
  }
  .fabric-name span {
    min-width: 0;
    overflow-wrap: break-word;
  }
  .swatch {
    flex: none;
    width: 0.9em;
    height: 0.9em;
    border: 1px solid currentColor;
    forced-color-adjust: none;
  }
  .lists {
    display: grid;
    gap: 1.5em 3em;
    align-items: start;
  }
  .warnings {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .warnings li {
    padding: 0.35em 0 0.35em 0.9em;
    border-inline-start: 3px solid var(--accent);
    margin-bottom: 0.4em;
  }
  .caution {
    margin: 0;
    font-size: 0.875em;
    max-width: 60em;
  }

  svg {
    overflow: visible;
    font-family: inherit;
  }
  path {
    fill: none;
    stroke: currentColor;
    stroke-width: 1;
    vector-effect: non-scaling-stroke;
  }
  text {
    fill: currentColor;
    stroke: none;
    font-variant-numeric: inherit;
  }
  .fabric {
    stroke: var(--ink);
  }
  .hatch {
    stroke: var(--ink);
    stroke-width: 0.6;
    opacity: 0.35;
  }
  .order {
    fill: var(--ink);
  }
  .waste {
    fill: var(--paper);
    stroke: none;
    opacity: 0.7;
  }
  .outline {
    stroke-width: 1.5;
  }
  .ruler {
    fill: color-mix(in srgb, var(--accent) 7%, transparent);
    stroke: var(--accent);
  }
  .finished-edge {
    stroke: var(--ink);
    stroke-dasharray: 5 3;
  }
  .center-seam {
    stroke: var(--ink);
    stroke-width: 2.5;
  }
  .selvage {
    stroke-width: 3;
    stroke-dasharray: 1 4;
  }
  .trim-line {
    stroke: var(--accent);
    stroke-width: 2.5;
  }
  .ruler-line {
    stroke: var(--accent);
    stroke-width: 1.25;
  }
  .diagonal {
    stroke: var(--accent);
    stroke-dasharray: 2 3;
  }
  .extension {
    stroke-width: 0.6;
    opacity: 0.5;
  }
  .measure,
  .scale {
    stroke-width: 0.9;
  }
  path.cut {
    fill: var(--paper);
    stroke: var(--accent);
    stroke-width: 1.5;
  }
  path.hold {
    fill: var(--paper);
    stroke: var(--accent);
    stroke-dasharray: 3 3;
  }
  text.cut,
  text.hold {
    fill: var(--accent);
  }
  .tint-0 {
    fill: var(--tint-0);
    background-color: var(--tint-0);
  }
  .tint-1 {
    fill: var(--tint-1);
    background-color: var(--tint-1);
  }
  .tint-2 {
    fill: var(--tint-2);
    background-color: var(--tint-2);
  }
  .tint-3 {
    fill: var(--tint-3);
    background-color: var(--tint-3);
  }
  .tint-4 {
    fill: var(--tint-4);
    background-color: var(--tint-4);
  }
  .tint-5 {
    fill: var(--tint-5);
    background-color: var(--tint-5);
  }
  .tint-6 {
    fill: var(--tint-6);
    background-color: var(--tint-6);
  }
  .tint-7 {
    fill: var(--tint-7);
    background-color: var(--tint-7);
  }

  @container (max-width: 26em) {
    th,
    td {
      padding-inline-end: 0.4em;
    }
    td .number {
      white-space: normal;
    }
  }
  @container (max-width: 17em) {
    table {
      font-size: 0.875em;
    }
  }
  @container (min-width: 52em) {
    .page {
      grid-template-columns: 1.35fr 1fr;
    }
    .page > .wide {
      grid-column: 1 / -1;
    }
    .lists {
      grid-template-columns: 1fr 1.35fr;
    }
  }
  @media (forced-colors: active) {
    .trim-line,
    .ruler-line {
      stroke: Highlight;
    }
    path.cut,
    path.hold,
    .waste {
      fill: Canvas;
    }
    [class*='tint-'] {
      fill: Canvas;
    }
    text.order {
      fill: CanvasText;
    }
    .fabric,
    .hatch,
    .center-seam {
      stroke: CanvasText;
    }
  }

  @media print {
    .root {
      color: #000;
      color-scheme: light;
      font-size: 10pt;
    }
    .controls,
    .fractions,
    details,
    .option input,
    .option:not(:has(:checked)) {
      display: none;
    }
    .fields {
      grid-template-columns: repeat(auto-fill, minmax(8em, 1fr));
    }
    .fields .choice {
      display: block;
      grid-column: auto / span 2;
    }
    input[type='text'],
    .fixed,
    .note {
      min-height: 0;
      border: 0;
    }
    .headline {
      break-after: avoid;
    }
    .sheet svg {
      max-height: 5in;
    }
    .page {
      display: block;
    }
    .page > * {
      margin-bottom: 1em;
    }
    .trims tbody,
    .field,
    tr,
    figure {
      break-inside: avoid;
    }
    caption,
    thead {
      break-after: avoid;
    }
    thead {
      display: table-header-group;
    }
    .fabric,
    .swatch {
      print-color-adjust: exact;
    }
  }
`;
