import type { Block } from './shape.js';
export declare const vocabulary: readonly Block[];
