export * from './noise-criterion.js';
export * from './noise-criterion-by-speech-interference.js';
export * from './noise-criterion-curve.js';
export * from './noise-criterion-family.js';
export * from './noise-rating.js';
export * from './room-criterion.js';
export * from './speech-interference-level.js';
