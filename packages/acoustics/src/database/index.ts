export * from './absorption-at-thickness.js';
export * from './absorption-in-thirds.js';
export * from './absorption-row.js';
export { absorptionRows } from './absorption-rows.generated.js';
export * from './find-absorption-rows.js';
