export * from './composite-transmission-loss.js';
export * from './flanking-transmission-loss.js';
export * from './junction-vibration-index.js';
export * from './leak-ratio.js';
export * from './plenum-level-difference.js';
export * from './small-element.js';
