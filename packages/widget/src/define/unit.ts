import { upgradeDivisions } from '../actions/upgradeDivisions.js';
import { EighthsUnit } from '../unit/element.js';

EighthsUnit.define();
upgradeDivisions('unit');

declare global {
  interface HTMLElementTagNameMap {
    'eighths-unit': EighthsUnit;
  }
}
