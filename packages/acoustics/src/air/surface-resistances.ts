import type { HeatFlow } from './air-layer-resistance.js';

/**
 * Thermal resistance between a wall and the air of a room beside it, radiation included, m2 K/W, by the way of the heat.
 * Source: ISO 6946:2007, Table 1, internal surfaces (as transcribed). Valid: still air, plane surfaces.
 */
export const surfaceResistances: Readonly<Record<HeatFlow, number>> = { up: 0.1, across: 0.13, down: 0.17 };
