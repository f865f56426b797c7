import type { UnitEntry } from './unit-entry.js';
export declare const units: readonly UnitEntry[];
