import { airProperties, type BandMode } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import type { AcousticBox } from '../../src/room-sound/acoustic-box.js';
import { modalSpread } from '../../src/room-sound/modal-spread.js';
import { wallCauses } from '../../src/room-sound/wall-alternatives.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const all = <T>(value: T) => ({ left: value, right: value, front: value, back: value, floor: value, ceiling: value });
/** 1 m3 with walls of one real admittance in the only band. */
const box = (walls: number, other: number, people: number): AcousticBox => ({
  size: [1, 1, 1],
  heard: null,
  admittance: [all({ re: walls, im: 0 })],
  alternatives: [wallCauses.map((cause) => all(cause === 'stiffness' ? other : walls))],
  absorption: [all(0)],
  people: [people],
  objects: [people],
});
const mode = (damping: number): BandMode => ({ order: [1, 0, 0], hz: 170, damping, share: 1 });
const seconds = (damping: number) => (3 * Math.LN10) / damping;

describe('modalSpread(box, band, modes, seconds, air)', () => {
  it('holds a third of what people take and the quarter of the model, where nothing else takes sound', () => {
    // c A / (8 V): the rate is in proportion to the area, so it moves by a third; ln(2/3) is the larger change.
    const damping = air.soundSpeed / 8;
    const expected = Math.hypot(Math.log(2 / 3), Math.log(1.25));
    expect(modalSpread(box(0, 0, 1), 0, [mode(damping)], seconds(damping), air)).toBeCloseTo(expected, 12);
  });

  it('is that of the walls where they alone damp', () => {
    const spread = modalSpread(box(0.1, 0.06, 0), 0, [mode(80)], seconds(80), air);
    expect(spread).toBeCloseTo(Math.hypot(Math.log(0.6), Math.log(1.25)), 12);
  });

  it('follows the mode that still rings, not the one that has died', () => {
    const slow = modalSpread(box(0.1, 0.06, 0.2), 0, [mode(40)], seconds(40), air);
    const both = [mode(40), { ...mode(400), share: 0.5 }];
    expect(modalSpread(box(0.1, 0.06, 0.2), 0, both, seconds(40), air)).toBeCloseTo(slow, 2);
  });
});
