import type { Obstacle, Passage } from '@boothwright/language';
import type { MovingPanel } from '../../src/moving/moving-panel.js';
import { given, place } from '../fixtures/spec-builder.js';

function named(name: string) {
  return { name, nameRange: place(), range: place() };
}

export function passage(
  name: string,
  {
    width,
    headroom,
    turn = 'none',
    onto,
  }: { width: number; headroom?: number; turn?: 'none' | 'quarter' | 'half'; onto?: number },
): Passage {
  return {
    ...named(name),
    width: given(width),
    headroom: headroom === undefined ? undefined : given(headroom),
    turn: given(turn),
    onto: onto === undefined ? undefined : given(onto),
  };
}

export function obstacle(
  name: string,
  [x, y, z]: readonly [number, number, number],
  [width, depth, height]: readonly [number, number, number],
): Obstacle {
  return {
    ...named(name),
    position: { x: given(x), y: given(y), z: given(z) },
    size: { width: given(width), depth: given(depth), height: given(height) },
  };
}

let next = 0;

export function wallPanel(changes: Partial<MovingPanel> = {}): MovingPanel {
  next += 1;
  return {
    number: next,
    name: `front ${next}`,
    face: 'front',
    leaf: 'whole',
    widthM: 0.6,
    heightM: 2.18,
    thicknessM: 0.0945,
    massKg: 31,
    massMissing: [],
    baseM: 0,
    box: { xM: 0, yM: 0, zM: 0, widthM: 0.6, depthM: 0.0945, heightM: 2.18 },
    ...changes,
  };
}
