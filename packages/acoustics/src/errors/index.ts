export * from './argument-error.js';
export * from './require-number.js';
