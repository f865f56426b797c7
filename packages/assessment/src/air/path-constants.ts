/**
 * Figures of an air path that the text cannot say, each with its origin. Those that a reader may want to judge stand
 * among the defaults of a report in which they enter, see `air-assumptions.ts`.
 */

/**
 * Roughness of the inner face of a duct, m. Source: ASHRAE Handbook, Fundamentals, table of duct roughness factors (as
 * transcribed): galvanised ducts about 0.0003 ft and, of old charts, 0.0005 ft; flexible duct fully extended up to 0.003 ft.
 * A lining is taken like flexible duct: coated fibre is printed rough as well (the figure from memory).
 */
export const roughness = { smooth: 1.5e-4, flexible: 9e-4, lined: 9e-4 } as const;

/** Largest share of the diameter that the friction formula covers; a rougher duct is held there. */
export const largestRoughnessShare = 0.05;

/** Discharge coefficient of gaps and holes. Evidence: common practice, sharp-edged openings 0.6 to 0.65. */
export const dischargeCoefficient = 0.6;

/**
 * Difference of temperature that moves air through the open door of a booth in a rest, K. Evidence: our own; a booth in use is
 * warmer than the room by more than that, so that the exchange is not overstated.
 */
export const openDoorDifference = 1;

/** Absorption of the walls of a chamber without lining. Evidence: common practice, bare boards 0.03 to 0.1. */
export const bareChamberAbsorption = 0.05;

/** Temperature of skin and of the water that evaporates from it, degC. Evidence: from memory, 33 to 35 of somebody at ease. */
export const skinTemperature = 34;
