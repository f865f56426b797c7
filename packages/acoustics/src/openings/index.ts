export * from './air-friction.js';
export * from './aperture-transmission-loss.js';
export * from './cable-hole-transmission-loss.js';
export * from './joint-transmission-loss.js';
export * from './keyhole-transmission-loss.js';
export * from './narrow-gap-medium.js';
export * from './slit-transmission-loss.js';
