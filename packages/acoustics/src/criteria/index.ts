export * from './noise-criterion.js';
export * from './noise-criterion-curve.js';
