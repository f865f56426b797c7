export * from './air-absorption-area.js';
export * from './eyring-time.js';
export * from './received-level.js';
export * from './sabine-time.js';
export * from './schroeder-frequency.js';
