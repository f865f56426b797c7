export * from './air-attenuation.js';
export * from './air-properties.js';
export * from './dew-point.js';
export * from './humidity-ratio.js';
