import { airProperties, type BandMode } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import type { AcousticBox } from '../../src/room-sound/acoustic-box.js';
import { modalSpread } from '../../src/room-sound/modal-spread.js';
import { wallCauses } from '../../src/room-sound/wall-alternatives.js';
import { onlyBooth } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

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

it('cloth that lies on a bare wall leaves every decay a number', () => {
  const { roomSound } = onlyBooth(
    specOf(`use catalog
assembly shell { osb 18 mm; frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }; gypsum-board 12.5 mm }
booth box { inside 1.3 m x 1.5 m x 1.84 m; walls shell; roof shell; floor shell; lining on walls { close-weave-cloth }; mic at 0.6 m, 0.7 m, 1.2 m { distance 150 mm } }
session { people 1; length 60 min }`),
  );
  const known = (roomSound?.decay ?? []).filter(({ method }) => method === 'modes');
  expect(known.length).toBeGreaterThan(2);
  for (const { seconds, lowS, highS } of known) {
    expect(lowS).toBeLessThan(seconds as number);
    expect(highS).toBeGreaterThan(seconds as number);
  }
});
