export * from './adaptation-spectra.js';
export { type ReferenceCurveFit, ratingBands } from './reference-curve-fit.js';
export * from './sound-transmission-class.js';
export * from './spectrum-level-difference.js';
export * from './weighted-rating.js';
export * from './weighted-sound-reduction.js';
export * from './weighted-sound-reduction-fine.js';
