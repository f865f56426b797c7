export type { Complex } from './complex.js';
