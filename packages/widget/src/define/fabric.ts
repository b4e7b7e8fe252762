import { upgradeDivisions } from '../actions/upgradeDivisions.js';
import { EighthsFabric } from '../fabric/element.js';

EighthsFabric.define();
upgradeDivisions('fabric');

declare global {
  interface HTMLElementTagNameMap {
    'eighths-fabric': EighthsFabric;
  }
}
