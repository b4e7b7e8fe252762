import { EighthsLogCabin } from '../log-cabin/element.js';

EighthsLogCabin.define();

declare global {
  interface HTMLElementTagNameMap {
    'eighths-log-cabin': EighthsLogCabin;
  }
}
