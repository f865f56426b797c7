import { airProperties, fanOperatingPoint, pathPressure } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { boothFlow } from '../../src/air/booth-flow.js';
import { ventResistances } from '../../src/air/vent-resistance.js';
import { createMemo } from '../../src/memo/memo.js';
import { booth, given, place, quietFan, shell, vent } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const curve = [
  [0, 120],
  [0.02, 80],
  [0.04, 0],
].map(([flow, pressure]) => ({ flow: given(flow as number), pressure: given(pressure as number) }));
const supply = { ...quietFan, direction: given<'supply' | 'exhaust'>('supply') };
const exhaust = { ...quietFan, direction: given<'supply' | 'exhaust'>('exhaust') };
const run = (vents: ReturnType<typeof vent>[], setting: 'low' | 'high' = 'high', changes = {}) =>
  boothFlow(booth(shell, { vents, ...changes }), setting, air, createMemo());
const loss = (of: ReturnType<typeof vent>, way: 'in' | 'out', flow: number) =>
  pathPressure(
    ventResistances(of, way).map(({ element }) => element),
    flow,
    air,
  );

describe('boothFlow(booth, setting, air, memo)', () => {
  it('keeps a stated flow and says what pressure it takes: both vents one after the other', () => {
    const [blown, passive] = [vent('in', { fan: supply }), vent('out')];
    const found = run([blown, passive]);
    expect(found.flow).toBeCloseTo(0.01, 9);
    expect(found.needed).toBeCloseTo(loss(blown, 'in', 0.01) + loss(passive, 'out', 0.01), 4);
    expect(found.boothPressure).toBeCloseTo(loss(passive, 'out', 0.01), 4);
    expect(found.given).toBeNull();
  });

  it('pulls the booth below the room with an exhaust fan', () => {
    const found = run([vent('out', { fan: exhaust }), vent('in')]);
    expect(found.boothPressure).toBeLessThan(0);
    expect(found.byVent.map(({ direction }) => direction)).toEqual(['out', 'in']);
  });

  it('runs a fan with a curve where the library finds its operating point', () => {
    const [blown, passive] = [vent('in', { fan: { ...supply, curve } }), vent('out')];
    const found = run([blown, passive]);
    const points = curve.map(({ flow, pressure }) => ({ flow: flow.value, pressure: pressure.value }));
    const point = fanOperatingPoint(points, (flow) => loss(blown, 'in', flow) + loss(passive, 'out', flow));
    expect(found.flow).toBeCloseTo(point.flow, 6);
    expect(found.given).toBeCloseTo(point.pressure, 2);
  });

  it('follows the fan laws at low speed: a square system passes the same share of the flow', () => {
    const vents = [vent('in', { fan: { ...supply, curve } }), vent('out')];
    const [low, high] = [run(vents, 'low'), run(vents)];
    // Friction is a little less than square, so that the share is near the speed and not above it.
    expect((low.flow as number) / (high.flow as number)).toBeGreaterThan(0.56);
    expect((low.flow as number) / (high.flow as number)).toBeLessThan(0.6);
    expect(run([vent('in', { fan: supply }), vent('out')], 'low').flow).toBeCloseTo(0.006, 9);
  });

  it('gives vents side by side the same pressure', () => {
    const round = (diameter: number) => ({ kind: 'round' as const, diameter: given(diameter) });
    const found = run([
      vent('in', { fan: supply }),
      vent('wide', { duct: round(0.2) }),
      vent('thin', { duct: round(0.1) }),
    ]);
    expect(found.byVent[1]?.pressure).toBeCloseTo(found.byVent[2]?.pressure as number, 5);
    expect((found.byVent[1]?.flow as number) + (found.byVent[2]?.flow as number)).toBeCloseTo(0.01, 8);
  });

  it('draws less through a longer and narrower path', () => {
    const through = (changes: Parameters<typeof vent>[1]) =>
      run([vent('in', { fan: { ...supply, curve }, ...changes }), vent('out')]).flow as number;
    const plain = through({});
    const maze = {
      range: place(),
      turns: given(6),
      leg: given(0.25),
      angle: given(90),
      channel: { width: given(0.08), height: given(0.3) },
      lining: undefined,
    };
    const grille = { range: place(), size: { width: given(0.15), height: given(0.1) }, free: given(0.4) };
    expect(through({ run: given(6) })).toBeLessThan(plain);
    expect(through({ maze })).toBeLessThan(plain);
    expect(through({ grille })).toBeLessThan(plain);
    expect(through({ wall: given<'smooth' | 'flexible'>('flexible'), lining: undefined })).toBeLessThan(
      through({ lining: undefined }),
    );
  });

  it('lets a supply and an exhaust fan push and pull the same air', () => {
    const found = run([vent('in', { fan: { ...supply, curve } }), vent('out', { fan: { ...exhaust, curve } })]);
    const alone = run([vent('in', { fan: { ...supply, curve } }), vent('out')]);
    expect(found.flow as number).toBeGreaterThan(alone.flow as number);
    expect(found.byVent[0]?.flow).toBeCloseTo(found.byVent[1]?.flow as number, 7);
    // The same fan and the same duct on both sides: nothing presses on the booth.
    expect(Math.abs(found.boothPressure as number)).toBeLessThan(0.1);
  });

  it('lets two supply fans without a vent blow through gaps alone', () => {
    const both = [vent('a', { fan: supply }), vent('b', { fan: supply })];
    expect(run(both).way).toBe('no-way-out');
    expect(run(both).flow).toBe(0);
    const hole = {
      name: 'port',
      nameRange: place(),
      range: place(),
      face: 'back' as const,
      faceRange: place(),
      diameter: given(0.1),
      depth: given(0.1),
    };
    const open = run(both, 'high', { holes: [hole] });
    expect(open.way).toBe('gaps');
    // 20 L/s through 78.5 cm2 of hole and 6.6 cm2 of door gaps, of which 0.6 passes air.
    expect(open.gaps?.speed).toBeCloseTo(0.02 / (0.6 * (open.gaps?.area as number)), 9);
  });

  it('says that a curve never meets its path, and still says what it is about', () => {
    const weak = [
      { flow: given(0.02), pressure: given(0.5) },
      { flow: given(0.04), pressure: given(0) },
    ];
    const found = run([vent('in', { fan: { ...supply, curve: weak } }), vent('out')]);
    expect(found.flow).toBeNull();
    expect(found.notes.join()).toContain('no operating point');
  });

  it('stops at the end of a curve that has pressure left, and says so', () => {
    const strong = [
      { flow: given(0), pressure: given(200) },
      { flow: given(0.01), pressure: given(190) },
    ];
    const found = run([vent('in', { fan: { ...supply, curve: strong } }), vent('out')]);
    expect(found.flow).toBeCloseTo(0.01, 9);
    expect(found.notes.join()).toContain('at least');
  });
});
