import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameMembers } from '../../src/build/frame-members.js';
import { piecesOf } from '../../src/build/pieces-of.js';
import { frame, gypsum, plywood, sheet, shell } from '../fixtures/spec-builder.js';

const lengthsOf = (use: string, frameOf: ReturnType<typeof frameMembers>) =>
  frameOf.members.filter((member) => member.use === use).map((member) => Number(member.length.toFixed(4)));

describe('frameMembers(width, height, stick, spacing, openings)', () => {
  it('has a stud at either end and none further apart than the spacing', () => {
    const plain = frameMembers(0.6, 2, 0.045, 0.6, []);
    expect(lengthsOf('plate', plain)).toEqual([0.6, 0.6]);
    expect(lengthsOf('stud', plain)).toEqual([1.91, 1.91]);
    // 1.2 - 0.045 = 1.155 m between the outer studs: two spaces of at most 0.6 m.
    expect(lengthsOf('stud', frameMembers(1.2, 2, 0.045, 0.6, []))).toHaveLength(3);
    expect(lengthsOf('stud', frameMembers(1.2, 2, 0.045, 0.3, []))).toHaveLength(5);
  });

  it('frames a window with posts, header, sill and short studs', () => {
    const window = { offset: 0.35, base: 0.8, width: 0.5, height: 0.6 };
    const framed = frameMembers(1.2, 2, 0.045, 0.6, [window]);
    expect(lengthsOf('post', framed)).toEqual([1.91, 1.91]);
    expect(lengthsOf('header', framed)).toEqual([0.5]);
    expect(lengthsOf('sill', framed)).toEqual([0.5]);
    // The stud in the middle is cut: 0.8 - 0.045 - 0.045 below, 2 - 0.045 - 1.4 - 0.045 above.
    expect(lengthsOf('short stud', framed)).toEqual([0.51, 0.71]);
  });

  it('breaks the lower plate at a door that reaches down to it', () => {
    const door = { offset: 0.2, base: 0, width: 0.7, height: 1.9 };
    expect(lengthsOf('plate', frameMembers(1.1, 2, 0.045, 0.6, [door]))).toEqual([1.1, 0.2, 0.2]);
  });

  it('fills its rectangle with members and bays exactly, without openings', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.15, max: 2, noNaN: true }),
        fc.double({ min: 0.3, max: 2.5, noNaN: true }),
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        (width, height, spacing) => {
          const { members, bays } = frameMembers(width, height, 0.045, spacing, []);
          const wood = members.reduce((sum, member) => sum + member.length * 0.045, 0);
          const clear = bays.reduce((sum, bay) => sum + bay.width * bay.height, 0);
          expect(wood + clear).toBeCloseTo(width * height, 9);
          for (const bay of bays) expect(bay.width + 0.045).toBeLessThanOrEqual(spacing + 1e-9);
        },
      ),
    );
  });
});

describe('piecesOf(layers, width, height, openings)', () => {
  it('weighs sheets by their area without what is cut out', () => {
    const window = { offset: 0.1, base: 0.5, width: 0.4, height: 0.5 };
    const [board] = piecesOf([sheet(plywood, 0.012)], 1, 2, [window]);
    expect(board?.massKg).toBeCloseTo(550 * 0.012 * (2 - 0.2), 9);
    expect(board?.cutOutM2).toBeCloseTo(0.2, 12);
  });

  it('takes strips around an opening that is most of the panel, of the same area', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.75, max: 0.95, noNaN: true }), (share) => {
        const door = { offset: 0.05, base: 0.04, width: 0.75 - 0.1, height: 2 * share };
        const strips = piecesOf([sheet(gypsum, 0.0125)], 0.75, 2, [door]);
        const area = strips.reduce((sum, strip) => sum + strip.widthM * strip.lengthM, 0);
        expect(strips.every((strip) => strip.cutOutM2 === 0)).toBe(true);
        expect(area).toBeCloseTo(0.75 * 2 - door.width * door.height, 9);
      }),
    );
  });

  it('counts two equal layers twice, and nothing for air', () => {
    const pieces = piecesOf([sheet(gypsum, 0.0125), sheet(gypsum, 0.0125)], 1, 2);
    expect(pieces).toHaveLength(2);
    expect(piecesOf(shell.layers, 0.6, 2).filter(({ form }) => form === 'sheet')).toHaveLength(2);
  });

  it('has no mass for a stick whose timber has no density', () => {
    const built = frame(0.07);
    if (built.kind !== 'frame') throw new Error('expected a frame');
    const { density: _, ...noDensity } = built.lumber;
    const pieces = piecesOf([{ ...built, lumber: noDensity }], 0.6, 2);
    expect(pieces.map(({ massKg }) => massKg)).toEqual(pieces.map(() => null));
  });
});
