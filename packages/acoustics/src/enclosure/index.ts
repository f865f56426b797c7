export * from './box-modes.js';
export * from './box-radiation-impedance.js';
export * from './diffuse-enclosure.js';
export * from './enclosure-models.js';
export * from './small-enclosure-level-difference.js';
export * from './small-enclosure-limit.js';
