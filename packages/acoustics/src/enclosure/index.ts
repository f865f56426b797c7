export * from './box-modes.js';
export * from './small-enclosure-level-difference.js';
export * from './small-enclosure-limit.js';
