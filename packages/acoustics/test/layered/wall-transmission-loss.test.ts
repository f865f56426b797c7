import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import type { Layer } from '../../src/layered/layer.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { criticalFrequency } from '../../src/panels/critical-frequency.js';
import { anyLayer } from './layer-arbitraries.js';
import { roomAir as air, batt, board, hardboard, stacks } from './stacks.js';

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

describe('wallTransmissionLoss at its limits', () => {
  const conditions = { air, field, samplesPerBand: 1, stiffnessSpread: 0 } as const;
  const fill = { ...batt, thickness: 0.09 } as const;
  const rigid = { between: [0, 2], spacing: 0.6 } as const;
  const worst = (a: readonly number[], b: readonly number[], upTo = 21) =>
    Math.max(...a.slice(0, upTo).map((value, band) => Math.abs(value - b[band]!)));

  it('takes a compliance of 0 as rigid, and one beyond all bounds as no studs but their bays', () => {
    const of = (compliance?: number) =>
      wallTransmissionLoss(
        { layers: stud, connections: [{ ...rigid, ...(compliance === undefined ? {} : { compliance }) }] },
        conditions,
      ).total;
    expect(of(0)).toEqual(of());
    const apart = wallTransmissionLoss(
      { layers: stud, connections: [], separateFrames: [{ between: [0, 2], spacing: 0.6 }] },
      conditions,
    ).total;
    expect(worst(of(1e6), apart)).toBeLessThan(1e-3);
  });

  it('is the same through the layers from either side, with and without frames', () => {
    const layers: Layer[] = [board, { kind: 'air-gap', thickness: 0.05 }, board, fill, hardboard];
    for (const frame of [[], [{ between: [2, 4], spacing: 0.6 }] as const]) {
      const mirrored = frame.map(() => ({ between: [0, 2], spacing: 0.6 }) as const);
      const there = wallTransmissionLoss({ layers, connections: [], separateFrames: frame }, conditions);
      const turned = { layers: layers.toReversed(), connections: [], separateFrames: mirrored };
      expect(worst(there.total, wallTransmissionLoss(turned, conditions).total)).toBeLessThan(0.05);
    }
  });

  it('through studs is not quite the same from either side: 3.5 dB below coincidence, more in it', () => {
    // The sound that the modes of the first leaf take up is left out, that which the modes of the last one give off is not.
    const layers: Layer[] = [board, fill, hardboard];
    const there = wallTransmissionLoss({ layers, connections: [rigid] }, conditions);
    const back = wallTransmissionLoss({ layers: layers.toReversed(), connections: [rigid] }, conditions);
    expect(worst(there.connections!, back.connections!, 17)).toBeLessThan(3.5);
    expect(worst(there.airborne, back.airborne)).toBeLessThan(0.05);
    expect(worst(there.connections!, back.connections!)).toBeLessThan(7);
  });

  it('tends to the wall without bays when studs stand far apart', () => {
    const layers: Layer[] = [board, { kind: 'air-gap', thickness: 0.1 }, board];
    const wide = { air, field: { kind: 'finite', size: { width: 400, height: 400 } }, samplesPerBand: 1 } as const;
    const none = wallTransmissionLoss({ layers, connections: [] }, wide).total;
    const rare = wallTransmissionLoss(
      { layers, connections: [], separateFrames: [{ between: [0, 2], spacing: 400 }] },
      wide,
    ).total;
    expect(worst(none, rare)).toBeLessThan(1e-9);
  });

  it('damps an empty cavity by bays and leaves a filled one as it is', () => {
    const of = (core: Layer, spacing?: number) =>
      wallTransmissionLoss(
        {
          layers: [board, core, board],
          connections: [],
          ...(spacing === undefined ? {} : { separateFrames: [{ between: [0, 2], spacing }] }),
        },
        conditions,
      ).total;
    const empty: Layer = { kind: 'air-gap', thickness: 0.1 };
    expect(of(empty, 0.6)[8]! - of(empty)[8]!).toBeGreaterThan(3);
    expect(Math.abs(of(fill, 0.6)[13]! - of(fill)[13]!)).toBeLessThan(1);
  });

  it('gives an inner stud of three leaves the bays and losses of its own cavity', () => {
    // Sheets before the inner leaf must not shift what belongs to the layers behind it: an absent layer in front changes nothing.
    const layers: Layer[] = [board, fill, board, { kind: 'air-gap', thickness: 0.06 }, hardboard];
    const first = wallTransmissionLoss({ layers, connections: [rigid, { between: [2, 4], spacing: 0.4 }] }, conditions);
    const shifted = wallTransmissionLoss(
      {
        layers: [{ kind: 'porous', thickness: 0, flowResistivity: 9000 }, ...layers],
        connections: [
          { between: [1, 3], spacing: 0.6 },
          { between: [3, 5], spacing: 0.4 },
        ],
      },
      conditions,
    );
    expect(worst(first.total, shifted.total)).toBeLessThan(1e-9);
    expect(worst(first.connections!, shifted.connections!)).toBeLessThan(1e-9);
  });

  it('never lets through more than what comes in, for walls of any layers and studs of any kind', () => {
    fc.assert(
      fc.property(
        anyLayer,
        fc.array(anyLayer, { maxLength: 3 }),
        fc.double({ min: 0, max: 1e-4, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (core, more, compliance, spacing) => {
          const cavityLayers: Layer[] = [fill, core, ...more];
          const layers: Layer[] = [board, ...cavityLayers, fill, hardboard];
          const found = wallTransmissionLoss(
            { layers, connections: [{ between: [0, layers.length - 1], spacing, compliance, screwSpacing: 0.3 }] },
            conditions,
          );
          for (const loss of [...found.airborne, ...found.connections!]) expect(loss).toBeGreaterThan(-0.1);
          for (const [band, loss] of found.total.entries()) {
            expect(loss).toBeLessThanOrEqual(Math.min(found.airborne[band]!, found.connections![band]!) + 1e-9);
          }
        },
      ),
      { numRuns: 15 },
    );
  });

  it('stays finite where a leaf has no stiffness, and carries nothing through such a stud', () => {
    const limp: Layer = { ...board, youngsModulus: 0 };
    const found = wallTransmissionLoss({ layers: [limp, fill, limp], connections: [rigid] }, conditions);
    expect(found.airborne.every(Number.isFinite)).toBe(true);
    expect(found.total).toEqual(found.airborne);
    const sheets: Layer[] = [{ kind: 'limp-sheet', surfaceMass: 8.5 }, fill, { kind: 'limp-sheet', surfaceMass: 8.5 }];
    const same = wallTransmissionLoss({ layers: sheets, connections: [rigid] }, conditions);
    expect(worst(found.total, same.total)).toBeLessThan(1e-9);
  });

  it('rejects frames, screws and compliances that cannot be, as errors with three fields', () => {
    const of = (more: object) => () =>
      wallTransmissionLoss({ layers: stud, connections: [{ ...rigid, ...more }] }, conditions);
    expect(of({ compliance: -1 })).toThrow(ArgumentError);
    expect(of({ compliance: -1 })).toThrow('compliance of studs is -1');
    expect(of({ screwSpacing: 0 })).toThrow('spacing of screws is 0');
    expect(of({ width: 0.7 })).toThrow('width of studs is 0.7');
    const frame = { layers: stud, connections: [], separateFrames: [{ between: [0, 1], spacing: 0.6 }] } as const;
    expect(() => wallTransmissionLoss(frame, conditions)).toThrow(ArgumentError);
  });
});
