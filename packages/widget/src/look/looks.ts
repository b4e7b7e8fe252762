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
    min-inline-size: 0;
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
    /* Where a page makes it as wide as what is in it, as a dialog does, it would else be 0 wide. */
    contain-intrinsic-inline-size: min(40em, 80vw);
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
  }
  :host([theme='light']) .root,
  :host([theme='dark']) .root {
    background: Canvas;
    color: CanvasText;
    padding: 0.75em;
  }
  * {
    box-sizing: border-box;
    margin: 0;
    padding: 0;
  }
  .page,
  .lists {
    display: grid;
    gap: 1.5em 3em;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }
  .unseen,
  .number {
    white-space: nowrap;
  }
  .headline,
  .standing,
  .where,
  .error,
  .link,
  caption {
    font-weight: 600;
  }
  .standing,
  .error {
    color: var(--accent);
  }
  p.error {
    margin: 1em 0;
  }
  label,
  legend,
  .label,
  .note,
  .minor,
  .caution {
    font-size: 0.875em;
  }
  label,
  legend,
  .label,
  .note,
  svg {
    display: block;
  }
  .page > *,
  .field,
  .fabric-name span {
    min-width: 0;
  }
  .note {
    overflow-wrap: anywhere;
  }

  .headline {
    margin-bottom: 0.5em;
    font-size: 1.5em;
    line-height: 1.2;
  }
  .headline .number {
    font-size: 1.25em;
  }
  svg {
    width: 100%;
    max-height: 44em;
    overflow: visible;
  }
  figcaption {
    min-height: 2.9em;
    max-width: 34em;
  }
  .stale svg path {
    opacity: 0.35;
  }
  .stale svg text,
  .stale .headline .number,
  .stale th .number,
  .stale td.figure {
    text-decoration: line-through;
  }
  .standing {
    margin: 0.25em 0;
  }
  .controls,
  .choice,
  .fractions {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1em;
  }
  .controls,
  .stepper,
  .where,
  .fixed,
  .option {
    align-items: center;
  }
  .controls {
    gap: 0.5em 2em;
    margin-bottom: 0.75em;
  }
  .stepper {
    display: flex;
    flex: 1 1 18em;
    gap: 0.75em;
    max-width: 24em;
  }
  .where {
    display: grid;
    flex: 1;
    min-height: 2.9em;
    text-align: center;
  }

  .fields {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 0.25em 1.5em;
  }
  .fields,
  .lists {
    align-items: start;
  }
  input,
  button {
    border: 1px solid;
    background: none;
    color: inherit;
    font: inherit;
  }
  button,
  [type='text'],
  .fixed,
  summary {
    min-height: 2.2em;
  }
  [type='text'],
  .fixed {
    width: 100%;
    font-size: 1.25em;
  }
  [type='text'] {
    padding: 0.2em 0;
    border-width: 0 0 1px;
    border-radius: 0;
  }
  .fixed {
    display: grid;
  }
  input::placeholder {
    color: inherit;
    opacity: 0.7;
  }
  [aria-invalid='true'] {
    border-bottom: 3px double var(--accent);
  }
  .note,
  .standing {
    min-height: 1.45em;
  }
  .fields .choice {
    padding-bottom: 0.5em;
    grid-column: 1 / -1;
  }
  .field {
    border: 0;
  }
  .choice legend {
    width: 100%;
  }
  .choice form {
    display: contents;
  }
  .controls .choice legend {
    float: left;
    width: auto;
    margin-inline-end: 0.75em;
    padding-top: 0.4em;
  }
  .option {
    display: flex;
    gap: 0.4em;
    min-height: 2em;
    font-size: 1em;
  }
  [type='radio'] {
    width: 1.1em;
    height: 1.1em;
    accent-color: var(--accent);
  }
  button {
    min-width: 2.2em;
    padding: 0.2em 0.7em;
    border-color: var(--hair);
    border-radius: 0.2em;
  }
  button,
  .option,
  summary {
    cursor: pointer;
  }
  button:hover {
    border-color: currentColor;
  }
  button[aria-disabled='true'] {
    opacity: 0.5;
    cursor: default;
  }
  .link {
    min-width: 0;
    min-height: 1.5em;
    margin-inline-end: 0.5em;
    padding: 0;
    border-width: 0 0 1px;
    border-radius: 0;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .fractions {
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
    padding: 0.4em 0;
  }
  details .fields {
    padding-bottom: 0.5em;
  }

  table {
    width: 100%;
    border-collapse: collapse;
  }
  caption,
  th {
    text-align: start;
  }
  caption {
    padding-bottom: 0.35em;
    font-size: 1.1em;
  }
  th,
  td {
    padding-block: 0.35em;
    padding-inline: 0 0.75em;
    border-top: 1px solid var(--hair);
    font-weight: inherit;
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
  .chosen tr > :first-child {
    position: relative;
  }
  .chosen tr > :first-child::before {
    position: absolute;
    inset-block: 0;
    inset-inline-start: -0.6em;
    border-inline-start: 3px solid var(--accent);
    content: '';
  }
  .fabric-name {
    display: flex;
    gap: 0.5em;
    align-items: baseline;
    max-width: 8em;
  }
  .fabric-name span {
    overflow-wrap: break-word;
  }
  .swatch {
    flex: none;
    width: 0.9em;
    height: 0.9em;
    border: 1px solid currentColor;
    forced-color-adjust: none;
  }
  .warnings {
    margin-top: 1em;
    list-style: none;
  }
  .warnings li {
    padding-block: 0.35em;
    padding-inline: 0.9em 0;
    border-inline-start: 3px solid var(--accent);
    margin-bottom: 0.4em;
  }
  .caution {
    max-width: 60em;
  }

  svg {
    overflow: visible;
    font-family: inherit;
  }
  path {
    fill: none;
    stroke: currentColor;
    vector-effect: non-scaling-stroke;
  }
  text {
    fill: currentColor;
  }
  .fabric,
  .hatch,
  .finished-edge,
  .center-seam {
    stroke: var(--ink);
  }
  .ruler,
  .trim-line,
  .ruler-line,
  .diagonal,
  path.cut,
  path.hold {
    stroke: var(--accent);
  }
  .waste,
  path.cut,
  path.hold {
    fill: var(--paper);
  }
  .order {
    fill: var(--ink);
  }
  text.cut,
  text.hold {
    fill: var(--accent);
  }
  .ruler {
    fill: color-mix(in srgb, var(--accent) 7%, transparent);
  }
  .waste {
    stroke: none;
    opacity: 0.7;
  }
  .center-seam,
  .trim-line {
    stroke-width: 2.5;
  }
  .outline,
  path.cut {
    stroke-width: 1.5;
  }
  .ruler-line {
    stroke-width: 1.25;
  }
  .measure,
  .scale {
    stroke-width: 0.9;
  }
  .hatch,
  .extension {
    stroke-width: 0.6;
  }
  .hatch {
    opacity: 0.35;
  }
  .extension {
    opacity: 0.5;
  }
  .finished-edge {
    stroke-dasharray: 5 3;
  }
  .diagonal {
    stroke-dasharray: 2 3;
  }
  path.hold {
    stroke-dasharray: 3 3;
  }
  [class*='tint-'] {
    fill: var(--tint);
    background: var(--tint);
  }
  .tint-0 {
    --tint: var(--eighths-fabric-1, light-dark(#f3e3c3, #6b5526));
  }
  .tint-1 {
    --tint: var(--eighths-fabric-2, light-dark(#b8cbd9, #2f4a5e));
  }
  .tint-2 {
    --tint: var(--eighths-fabric-3, light-dark(#edc9bd, #6e3f31));
  }
  .tint-3 {
    --tint: var(--eighths-fabric-4, light-dark(#c9d6b5, #475733));
  }
  .tint-4 {
    --tint: var(--eighths-fabric-5, light-dark(#d6c6de, #54415e));
  }
  .tint-5 {
    --tint: var(--eighths-fabric-6, light-dark(#f2dfa0, #665413));
  }
  .tint-6 {
    --tint: var(--eighths-fabric-7, light-dark(#b5d6cf, #285750));
  }
  .tint-7 {
    --tint: var(--eighths-fabric-8, light-dark(#d9d3ca, #55514a));
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5em 0.75em;
  }
  .by-hand {
    box-sizing: border-box;
    width: 100%;
    border: 1px solid;
    background: var(--paper);
    color: inherit;
    font: inherit;
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
    .waste,
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
    .actions,
    .controls,
    .fractions,
    details,
    .option input,
    .option:not(:has(:checked)) {
      display: none;
    }
    /* Where the reader was last is nothing for paper. */
    :focus-visible {
      outline: 0;
    }
    .fields {
      grid-template-columns: repeat(auto-fill, minmax(8em, 1fr));
    }
    .fields .choice {
      display: block;
      grid-column: auto / span 2;
    }
    [type='text'],
    .fixed,
    .note {
      min-height: 0;
      border: 0;
    }
    .headline {
      break-after: avoid;
    }
    svg {
      max-height: 5in;
    }
    .page {
      display: block;
    }
    .page > * {
      margin-bottom: 1em;
    }
    th,
    td {
      padding-block: 0.2em;
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
