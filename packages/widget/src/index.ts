export { EighthsFabric } from './fabric/element.js';
export type { FabricAnswer, FabricPlan } from './fabric/solving.js';
export { EighthsLogCabin } from './log-cabin/element.js';
export { EighthsUnit } from './unit/element.js';
export type { ChangeDetail, ErrorDetail } from './base/element.js';
export { version } from './base/version.js';
