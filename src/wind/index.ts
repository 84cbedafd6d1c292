export { type WindComponents, type WindComponentsInputs, windComponents } from './components.ts';
