import { upgradeDivisions } from '../actions/upgradeDivisions.js';
import { EighthsQuilt } from '../quilt/element.js';

EighthsQuilt.define();
upgradeDivisions('quilt');

declare global {
  interface HTMLElementTagNameMap {
    'eighths-quilt': EighthsQuilt;
  }
}
