export { type WindUsedInputs, windUsed } from './accountability.ts';
export { type WindComponents, type WindComponentsInputs, windComponents } from './components.ts';
export { type WindComponentSpread, type WindComponentSpreadInputs, windComponentSpread } from './direction-spread.ts';
export { type GroundSpeedInputs, groundSpeed } from './ground-speed.ts';
export { type ReportedWindComponents, type ReportedWindInputs, reportedWindComponents } from './reported.ts';
