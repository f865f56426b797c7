export * from './bands.js';
export * from './octave-levels-to-thirds.js';
export * from './octave-transmission-loss.js';
export * from './third-levels-to-octaves.js';
export * from './thirds-of-octave.js';
