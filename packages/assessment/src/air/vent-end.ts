import {
  type Air,
  commonLossCoefficients,
  type FlowOpening,
  grilleLossCoefficient,
  localPressureLoss,
} from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import { changeCoefficient, type VentDirection } from './vent-resistance.js';

/**
 * The end of a vent inside the booth at a flow, as `openingFlowNoise` wants it.
 *
 * Rule: the piece begins where the duct, or the channel of the maze, ends. With a grille it is the change of the section to its face,
 * its bars and what is lost where the air leaves or enters; without one a plain end of the duct.
 * Units: flow m3/s. Source: as of the coefficients; docs/models/own-sounds.md.
 */
export function ventEnd(vent: Vent, direction: VentDirection, flow: number, air: Air): FlowOpening {
  const { maze, grille } = vent;
  const before = maze === undefined ? ductArea(vent) : maze.channel.width.value * maze.channel.height.value;
  const face = grille === undefined ? before : grille.size.width.value * grille.size.height.value;
  const loss = (coefficient: number, area: number) => localPressureLoss(coefficient, flow / area, air);
  const change = direction === 'in' ? changeCoefficient(before, face) : changeCoefficient(face, before);
  const end = commonLossCoefficients[direction === 'in' ? 'outlet' : 'flush inlet'];
  return {
    speed: flow / before,
    area: face,
    pressure:
      loss(change, Math.min(before, face)) +
      (grille === undefined ? 0 : loss(grilleLossCoefficient(grille.free.value), face)) +
      loss(end, face),
  };
}
