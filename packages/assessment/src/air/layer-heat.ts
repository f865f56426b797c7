import { airLayerResistance, boardConductivity, type HeatFlow } from '@boothwright/acoustics';
import type { AssemblyLayer, MaterialLayer } from '@boothwright/language';

/**
 * Thermal conductivities W/(m K) of what is no board. Sources: mineral wool 0.035, a timber-frame wall on dataholz.eu (component
 * awropi31b, updated 2023); softwood of 500 kg/m3 0.13, EN 12524:2000, Table 1 (as transcribed); synthetic carpet 0.06, CIBSE
 * Guide A, Table 3.37 (as transcribed).
 */
export const conductivities = { fibre: 0.035, softwood: 0.13, covering: 0.06 } as const;

/**
 * Heat that a kilogram of board takes up by a kelvin, J/(kg K): that of gypsum plasterboard, EN 12524:2000, Table 1 (as
 * transcribed). Wood has 1600 there, so that a wooden booth warms more slowly than is said.
 */
export const boardHeat = 1000;

export interface LayerHeat {
  /** m2 K/W */
  readonly resistance: number;
  /** J/(m2 K) of boards; fibre, air, cloth and studs count nothing */
  readonly capacity: number;
}

/**
 * Thermal resistance and heat capacity of a layer of a wall, roof or floor.
 *
 * Equation: R = d/lambda; a frame is its studs beside its cavity, area by area, the fill and the air behind it in series; C the mass
 * of boards times their specific heat. A sheet without thickness, a limp sheet and a cloth have no resistance.
 * Units: m, W/(m K). Source: ISO 6946 (from memory); the conductivities as named here and at `boardConductivity`.
 * Valid: within about a fifth of the resistance; wet wool and gaps in the fill hold less.
 */
export function layerHeat(layer: AssemblyLayer, heatFlow: HeatFlow): LayerHeat {
  switch (layer.kind) {
    case 'air':
      return { resistance: airLayerResistance(Math.max(0, layer.thickness.value), heatFlow), capacity: 0 };
    case 'material':
      return materialHeat(layer);
    case 'frame': {
      const depth = layer.depth.value;
      const fill = Math.min(depth, layer.fill?.thickness?.value ?? 0);
      const cavity = fill / conductivities.fibre + airLayerResistance(Math.max(0, depth - fill), heatFlow);
      const stud = depth / conductivities.softwood;
      const share = Math.min(1, layer.width.value / layer.spacing.value);
      const conductance = share / Math.max(stud, 1e-6) + (1 - share) / Math.max(cavity, 1e-6);
      return { resistance: 1 / conductance, capacity: 0 };
    }
  }
}

function materialHeat({ material, thickness, surfaceMass }: MaterialLayer): LayerHeat {
  const depth = thickness?.value ?? 0;
  const mass = surfaceMass.value;
  const none = { resistance: 0, capacity: 0 };
  switch (material.kind) {
    case 'panel':
      return depth <= 0
        ? none
        : {
            resistance: mass > 0 ? depth / boardConductivity(mass / depth) : 0,
            capacity: mass * boardHeat,
          };
    case 'lumber':
      return { resistance: depth / conductivities.softwood, capacity: mass * boardHeat };
    case 'porous':
      return { resistance: depth / conductivities.fibre, capacity: 0 };
    case 'covering':
      return { resistance: depth / conductivities.covering, capacity: 0 };
    case 'limp':
      return { resistance: 0, capacity: mass * boardHeat };
    case 'cloth':
      return none;
  }
}
