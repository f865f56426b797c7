import type { DefaultEntry } from './default-entry.js';
export declare const defaults: readonly DefaultEntry[];
