export * from './band-spectrum.js';
export * from './insertion-loss.js';
export * from './level-difference.js';
export * from './transmission-loss.js';
