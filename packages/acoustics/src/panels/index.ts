export * from './bending-stiffness.js';
export * from './critical-frequency.js';
export * from './first-panel-resonance.js';
export * from './mass-law.js';
export * from './panel-volume-impedance.js';
export * from './plate.js';
export * from './plate-impedance.js';
export * from './radiation-efficiency.js';
