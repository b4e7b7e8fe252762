import { upgradeDivisions } from '../actions/upgradeDivisions.js';
import { EighthsLogCabin } from '../log-cabin/element.js';

EighthsLogCabin.define();
upgradeDivisions('log-cabin');

declare global {
  interface HTMLElementTagNameMap {
    'eighths-log-cabin': EighthsLogCabin;
  }
}
