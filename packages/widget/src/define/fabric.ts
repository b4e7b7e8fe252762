import { EighthsFabric } from '../fabric/element.js';

EighthsFabric.define();

declare global {
  interface HTMLElementTagNameMap {
    'eighths-fabric': EighthsFabric;
  }
}
