import { describe, expect, it } from 'vitest';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import type { Layer } from '../../src/layered/layer.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { criticalFrequency } from '../../src/panels/critical-frequency.js';
import { roomAir as air, batt, board, stacks } from './stacks.js';

const field = { kind: 'finite', size: { width: 4, height: 2.5 } } as const;
const cavity: Layer[] = [{ ...batt, thickness: 0.09 }];
const stud: Layer[] = [board, ...cavity, board];

describe('wallTransmissionLoss(wall, { air, field })', () => {
  it('is bandTransmissionLoss for a wall without studs', () => {
    const layers = stacks['seven layers']!;
    const found = wallTransmissionLoss({ layers, connections: [] }, { air, field });
    expect(found.total).toEqual(bandTransmissionLoss(layers, { air, field }));
    expect(found.airborne).toEqual(found.total);
    expect(found.connections).toBeNull();
  });

  it('adds the studs to the airborne path as energy', () => {
    const found = wallTransmissionLoss(
      { layers: stud, connections: [{ between: [0, 2], spacing: 0.6 }] },
      { air, field },
    );
    found.total.forEach((total, band) => {
      const sum = 10 ** (-found.airborne[band]! / 10) + 10 ** (-found.connections![band]! / 10);
      expect(total).toBeCloseTo(-10 * Math.log10(sum), 9);
    });
  });

  it('lies within 3 dB of the line-line formula of Sharp from 315 Hz to half the critical frequency', () => {
    // B.H. Sharp (1978), as given in Bies, Hansen, Howard (from memory): above the bridging frequency
    // TL = 20 lg(m1 + m2) f - 48 + 10 lg(b fc) + 20 lg(m1/(m1 + m2)) - 18, both leaves alike below the critical frequency.
    const critical = criticalFrequency(board, air);
    const mass = board.density * board.thickness;
    for (const spacing of [0.4, 0.6]) {
      const { connections } = wallTransmissionLoss(
        { layers: stud, connections: [{ between: [0, 2], spacing }] },
        { air, field },
      );
      thirdOctaveBands.forEach(({ exact }, band) => {
        if (exact < 315 || exact > critical / 2) return;
        const sharp =
          20 * Math.log10(2 * mass * exact) + 10 * Math.log10(spacing * critical) - 48 - 20 * Math.log10(2) - 18;
        expect(Math.abs(connections![band]! - sharp), `${exact} Hz`).toBeLessThan(3);
      });
    }
  });

  it('loses 3 dB on the stud path when there are twice as many studs, at low frequencies', () => {
    const of = (spacing: number) =>
      wallTransmissionLoss({ layers: stud, connections: [{ between: [0, 2], spacing }] }, { air, field }).connections!;
    expect(of(0.6)[12]! - of(0.3)[12]!).toBeGreaterThan(2);
    expect(of(0.6)[12]! - of(0.3)[12]!).toBeLessThan(5);
  });

  it('is little changed by studs far below the mass-air-mass resonance, where both leaves move together anyway', () => {
    const heavy: Layer[] = [
      { ...board, thickness: 0.012, density: 500 },
      { kind: 'air-gap', thickness: 0.01 },
      { ...board, thickness: 0.012, density: 500 },
    ];
    const found = wallTransmissionLoss(
      { layers: heavy, connections: [{ between: [0, 2], spacing: 0.6 }] },
      { air, field },
    );
    expect(found.airborne[0]! - found.total[0]!).toBeLessThan(0.5);
  });

  it('carries nothing through a stud on a limp sheet of unknown contact width, and something through a wide one', () => {
    const layers: Layer[] = [board, ...cavity, { kind: 'limp-sheet', surfaceMass: 5 }];
    const narrow = wallTransmissionLoss({ layers, connections: [{ between: [0, 2], spacing: 0.6 }] }, { air, field });
    expect(narrow.total).toEqual(narrow.airborne);
    const wide = wallTransmissionLoss(
      { layers, connections: [{ between: [0, 2], spacing: 0.6, width: 0.038 }] },
      { air, field },
    );
    expect(wide.total[16]!).toBeLessThan(wide.airborne[16]! - 1);
  });

  it('lets the rest of the wall shield what a stud brings to an inner leaf', () => {
    const layers: Layer[] = [board, ...cavity, board, { ...batt, thickness: 0.1 }, board];
    const connections = [{ between: [0, 2], spacing: 0.6 }] as const;
    const shielded = wallTransmissionLoss({ layers, connections }, { air, field }).connections!;
    const bare = wallTransmissionLoss({ layers: layers.slice(0, 3), connections }, { air, field }).connections!;
    expect(shielded[14]! - bare[14]!).toBeGreaterThan(15);
  });

  it('counts the chain of two frames in a row', () => {
    const layers: Layer[] = [board, ...cavity, board, ...cavity, board];
    const first = { between: [0, 2], spacing: 0.6 } as const;
    const second = { between: [2, 4], spacing: 0.6 } as const;
    const one = wallTransmissionLoss({ layers, connections: [first] }, { air, field });
    const both = wallTransmissionLoss({ layers, connections: [first, second] }, { air, field });
    expect(both.total[14]!).toBeLessThan(one.total[14]! - 3);
  });

  it('names studs that are not fixed to two leaves', () => {
    const of = (between: readonly [number, number], layers: readonly Layer[] = stud, spacing = 0.6) =>
      wallTransmissionLoss({ layers, connections: [{ between, spacing }] }, { air, field });
    expect(() => of([0, 1])).toThrow('place of the studs is layer 2 of 3, expected a plate or a limp sheet');
    expect(() => of([2, 0])).toThrow('studs is between layers 3 and 1');
    expect(() => of([0, 1], [board, board])).toThrow('expected layers of two different leaves');
    expect(() => of([0, 2], stud, 0)).toThrow('spacing of studs is 0');
    expect(() => of([0, 7])).toThrow('place of the studs is layer 8 of 3');
  });
});
