export * from './argument-error.js';
export * from './require-number.js';
export * from './require-one-of.js';
