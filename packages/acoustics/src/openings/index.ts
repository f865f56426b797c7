export { heatRatio } from './air-friction.js';
export * from './aperture-transmission-loss.js';
export * from './narrow-gap-medium.js';
export * from './slit-transmission-loss.js';
