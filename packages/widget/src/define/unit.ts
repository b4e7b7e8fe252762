import { EighthsUnit } from '../unit/element.js';

EighthsUnit.define();

declare global {
  interface HTMLElementTagNameMap {
    'eighths-unit': EighthsUnit;
  }
}
