import { describe, expect, it } from 'vitest';
import { airWayWords } from '../../src/air/air-way-words.js';
import { freshAir } from '../../src/air/fresh-air.js';
import { booth, door, given, place, quietFan, shell, vent } from '../fixtures/spec-builder.js';

const round = (diameter: number) => ({ kind: 'round' as const, diameter: given(diameter) });
const fan = (flow: number) => ({ ...quietFan, flow: given(flow) });
const opening = (name: string) => ({
  name,
  nameRange: place(),
  range: place(),
  face: 'back' as const,
  faceRange: place(),
});

describe('freshAir(booth)', () => {
  it('has a second vent carry the flow of the fan', () => {
    const { way, flow, byVent } = freshAir(booth(shell, { vents: [vent('in', { fan: fan(0.01) }), vent('out')] }));
    expect(way).toBe('vents');
    expect(flow).toBe(0.01);
    expect(byVent.map((entry) => entry.flow)).toEqual([0.01, 0.01]);
  });

  it('shares the flow over vents without a fan by area before their pressures are known', () => {
    const vents = [
      vent('in', { fan: fan(0.012) }),
      vent('wide', { duct: round(0.2) }),
      vent('thin', { duct: round(0.1) }),
    ];
    const wide = booth(shell, { vents });
    expect(freshAir(wide).byVent.map((entry) => entry.flow)).toEqual([
      0.012,
      expect.closeTo((0.012 * 4) / 5, 12),
      expect.closeTo(0.012 / 5, 12),
    ]);
  });

  it('adds fans beside a vent without one, each duct with its own flow', () => {
    const vents = [vent('a', { fan: fan(0.01) }), vent('b', { fan: fan(0.02) }), vent('out')];
    const air = freshAir(booth(shell, { vents }));
    expect(air.flow).toBeCloseTo(0.03, 12);
    expect(air.byVent.map((entry) => entry.flow)).toEqual([0.01, 0.02, expect.closeTo(0.03, 12)]);
    expect(airWayWords(air, vents)).toContain('flows add');
  });

  it('puts fans without another vent in series: the weakest sets the flow', () => {
    const vents = [vent('a', { fan: fan(0.01) }), vent('b', { fan: fan(0.02) })];
    const air = freshAir(booth(shell, { vents }));
    expect(air).toMatchObject({ way: 'series', flow: 0.01 });
    expect(airWayWords(air, vents)).toContain('weakest');
  });

  it('lets no flow pass a fan without a way out, and opens with a hole of half the duct or a wide gap', () => {
    const vents = [vent('in', { fan: fan(0.01) })];
    expect(freshAir(booth(shell, { vents }))).toMatchObject({ way: 'no-way-out', flow: 0, byVent: [] });
    const hole = (diameter: number) => ({ ...opening('port'), diameter: given(diameter), depth: given(0.1) });
    // Half the area of 125 mm is 88.4 mm across; the door gaps of the fixture bring 6.6 cm2 more.
    expect(freshAir(booth(shell, { vents, holes: [hole(0.05)] })).way).toBe('no-way-out');
    expect(freshAir(booth(shell, { vents, holes: [hole(0.089)] }))).toMatchObject({ way: 'gaps', flow: 0.01 });
    const undercut = booth(shell, { vents, doors: [door(shell, { thresholdGap: given(0.012) })] });
    expect(freshAir(undercut).way).toBe('gaps');
    const slit = { ...opening('crack'), length: given(1), gap: given(0.007), depth: given(0.1) };
    expect(freshAir(booth(shell, { vents, slits: [slit] })).way).toBe('gaps');
  });

  it('has nothing to say without a fan', () => {
    expect(freshAir(booth(shell, { vents: [vent('in'), vent('out')] }))).toEqual({
      way: 'no-fan',
      flow: 0,
      byVent: [],
    });
  });

  const blows = (direction: 'supply' | 'exhaust', flow = 0.01) => ({
    ...fan(flow),
    direction: given<'supply' | 'exhaust'>(direction),
  });

  it('lets a vent without a fan take the other way of the fan', () => {
    const { byVent } = freshAir(booth(shell, { vents: [vent('out', { fan: blows('exhaust') }), vent('in')] }));
    expect(byVent.map(({ direction }) => direction)).toEqual(['out', 'in']);
  });

  it('counts fans of both ways once, and leaves the difference to the vent without a fan', () => {
    const vents = [vent('in', { fan: blows('supply', 0.012) }), vent('out', { fan: blows('exhaust') }), vent('slack')];
    const { flow, byVent } = freshAir(booth(shell, { vents }));
    expect(flow).toBe(0.012);
    expect(byVent[2]).toMatchObject({ flow: expect.closeTo(0.002, 12), direction: 'out' });
  });

  it('has two fans of the same way and nothing else go nowhere, where unstated ones are taken as a pair', () => {
    const pair = (first: object, second: object) =>
      freshAir(
        booth(shell, {
          vents: [vent('a', { fan: { ...fan(0.01), ...first } }), vent('b', { fan: { ...fan(0.02), ...second } })],
        }),
      );
    expect(pair(blows('supply'), blows('supply', 0.02)).way).toBe('no-way-out');
    expect(pair(blows('exhaust'), {})).toMatchObject({ way: 'series', flow: 0.01 });
    expect(pair(blows('exhaust'), {}).byVent.map(({ direction }) => direction)).toEqual(['out', 'in']);
  });
});
