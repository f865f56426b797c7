import { type Air, type BandMode, listWalls } from '@boothwright/acoustics';
import { personSpread } from '../booth/absorption-area.js';
import type { AcousticBox, ModalBox } from './acoustic-box.js';
import { wallCauses } from './wall-alternatives.js';

/**
 * What the model of walls that answer locally and evenly may be wrong by beside what is propagated, as a natural logarithm
 * of a time: edges of absorbers, uneven cover, corners, seams. Evidence: the project's own; no measured booth stands
 * behind it.
 */
export const modelTerm = Math.log(1.25);

/**
 * Half-width of the decay of a band by its modes, as a natural logarithm: each cause changes the damping of every mode in
 * proportion to its first-order damping. The decay follows the mean of the rates at 15 dB below its start, the modes
 * weighed by the energy that they have left there; the largest changes of the causes add as squares, with the
 * model term.
 */
export function modalSpread(
  box: AcousticBox,
  band: number,
  modes: readonly BandMode[],
  seconds: number,
  air: Air,
): number {
  const weights = modes.map(({ share, damping }) => (share / damping) * Math.exp((-2 * damping * seconds) / 4));
  const rate = modes.reduce((sum, { damping }, index) => sum + weights[index]! * damping, 0);
  const objects = dampingByArea(box, box.objects[band]!, air);
  const walls = listWalls(box.admittance[band]!).map(({ re }) => re);
  const byWalls = modes.map(({ order }) => firstOrder(box, order, walls));
  const changes = box.alternatives[band]!.map((alternative) => {
    const others = listWalls(alternative);
    return modes.reduce((sum, { order, damping }, index) => {
      const by = byWalls[index]! > 0 ? firstOrder(box, order, others) / byWalls[index]! : 1;
      return sum + weights[index]! * (objects + (damping - objects) * by);
    }, 0);
  });
  const people = personSpread * dampingByArea(box, box.people[band]!, air);
  changes.push(rate + people * weights.reduce((sum, weight) => sum + weight, 0));
  changes.push(rate - people * weights.reduce((sum, weight) => sum + weight, 0));
  const largest = new Map<string, number>();
  [...wallCauses, 'people', 'people'].forEach((cause, index) => {
    const square = Math.log(changes[index]! / rate) ** 2;
    largest.set(cause, Math.max(largest.get(cause) ?? 0, square));
  });
  return Math.sqrt([...largest.values()].reduce((sum, square) => sum + square, modelTerm ** 2));
}

/** Damping by an absorption area that is spread through the booth, 1/s: c A / (8 V). */
export function dampingByArea({ size: [width, depth, height] }: ModalBox, area: number, air: Air): number {
  return (air.soundSpeed * area) / (8 * width * depth * height);
}

/** In proportion to the damping of a mode by walls of small admittance, see `wallDamping`. */
function firstOrder({ size }: ModalBox, order: BandMode['order'], walls: readonly number[]): number {
  let sum = 0;
  for (let axis = 0; axis < 3; axis += 1) {
    sum += ((order[axis] === 0 ? 1 : 2) * (walls[2 * axis]! + walls[2 * axis + 1]!)) / size[axis]!;
  }
  return sum;
}
