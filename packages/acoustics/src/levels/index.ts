export * from './energy-of.js';
export * from './frequency-weighting.js';
export * from './level-of.js';
export * from './mean-level.js';
export * from './scale-to-reading.js';
export * from './sum-levels.js';
export * from './weighted-total.js';
