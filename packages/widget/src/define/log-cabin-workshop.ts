import { upgradeDivisions } from '../actions/upgradeDivisions.js';
import { EighthsLogCabin } from '../log-cabin/element.js';
import { workshop } from '../log-cabin/panels/workshop.js';

EighthsLogCabin.furnish(workshop);
EighthsLogCabin.define();
upgradeDivisions('log-cabin');

declare global {
  interface HTMLElementTagNameMap {
    'eighths-log-cabin': EighthsLogCabin;
  }
}
