import { airHeatCapacity, airProperties, dewPoint, vapourDensity } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { boothConductance } from '../../src/air/booth-conductance.js';
import { heatResult } from '../../src/air/heat-result.js';
import { layerHeat } from '../../src/air/layer-heat.js';
import {
  airGap,
  assembly,
  booth,
  frame,
  given,
  gypsum,
  lining,
  place,
  plywood,
  quietFan,
  session,
  sheet,
  shell,
  site,
  vent,
  wool,
} from '../fixtures/spec-builder.js';
import { air, resultOf } from './result-of.js';

const bare = { linings: [], doors: [], vents: [] };
const skin = assembly('skin', sheet(plywood, 0.012));
const all = (walls: ReturnType<typeof assembly>, changes = {}) => {
  const built = { assembly: walls, range: place() };
  const faces = { front: built, back: built, left: built, right: built, roof: built, floor: built };
  return booth(walls, { ...bare, faces, ...changes });
};

describe('layerHeat(layer, heatFlow)', () => {
  it('is the thickness over the conductivity', () => {
    // Plywood of 550 kg/m3: 0.14 W/(m K) between the rows of 500 and 700 kg/m3 of EN 12524:2000, Table 1.
    expect(layerHeat(sheet(plywood, 0.012), 'across').resistance).toBeCloseTo(0.012 / 0.14, 9);
    expect(layerHeat(sheet(wool, 0.05), 'across').resistance).toBeCloseTo(0.05 / 0.035, 9);
    expect(layerHeat(airGap(0.05), 'down').resistance).toBe(0.21);
    // 700 kg/m3 x 12.5 mm x 1000 J/(kg K).
    expect(layerHeat(sheet(gypsum, 0.0125), 'across').capacity).toBeCloseTo(8750, 6);
  });

  it('lets studs and cavity carry heat side by side', () => {
    // 45 of 600 mm are softwood, 0.07/0.13 = 0.5385; the rest is wool, 0.07/0.035 = 2.
    const resistance = 1 / (0.075 / 0.53846 + 0.925 / 2);
    expect(layerHeat(frame(0.07, 0.07), 'across').resistance).toBeCloseTo(resistance, 4);
  });
});

describe('boothConductance(booth)', () => {
  it('adds the faces, each with the air of a room on both sides', () => {
    // 1.15 x 1.35 x 2.00 m: walls 10 m2, roof and floor 1.5525 m2 each; board 0.012/0.14 = 0.0857 m2 K/W.
    const board = 0.012 / 0.14;
    const expected = 10 / (0.26 + board) + 1.5525 / (0.2 + board) + 1.5525 / (0.34 + board);
    expect(boothConductance(all(skin)).total).toBeCloseTo(expected, 6);
  });

  it('keeps the way through the boards as a whole', () => {
    const { total, toBoards, fromBoards, direct } = boothConductance(booth(shell));
    expect(1 / (1 / toBoards + 1 / fromBoards) + direct).toBeCloseTo(total, 9);
  });

  it('lets a lining keep heat in, and the boards behind it lag', () => {
    const lined = all(shell, { linings: [lining(['left', 'right', 'front', 'back', 'roof'], 1, sheet(wool, 0.05))] });
    const [plain, soft] = [boothConductance(all(shell)), boothConductance(lined)];
    expect(soft.total).toBeLessThan(plain.total);
    expect(soft.toBoards).toBeLessThan(plain.toBoards / 3);
    expect(soft.boardCapacity).toBeCloseTo(plain.boardCapacity, 6);
  });
});

describe('heatResult(booth, session, volume, flows, air)', () => {
  const flows = [
    { setting: 'off' as const, flow: 0 },
    { setting: 'high' as const, flow: 0.01 },
  ];
  const run = (of: ReturnType<typeof booth>, changes: Parameters<typeof session>[0] = {}) => {
    const found = heatResult(of, session(changes), 3.1, flows, air);
    if (typeof found === 'string') throw new Error(found);
    return found;
  };

  // People warm air only up to their skin; machines go on, so that the formula can be held to its end.
  const machines = { bodyHeat: given(0), heat: given(90) };

  it('settles at P/(UA + c Q): 150 W, 10 W/K and 10 L/s make 6.8 K', () => {
    // The formula with 1.2 x 1005 J/(m3 K): 150/(10 + 12.06).
    expect(150 / (10 + 1.2 * 1005 * 0.01)).toBeCloseTo(6.8, 2);
    const found = run(booth(shell), { bodyHeat: given(0), heat: given(150) });
    const carried = found.conductanceWPerK + airHeatCapacity(air) * 0.01;
    expect(found.bySetting[1]?.steadyRiseK).toBeCloseTo(150 / carried, 9);
    expect(found.bySetting[0]?.steadyRiseK).toBeCloseTo(150 / found.conductanceWPerK, 9);
  });

  it('needs 33 L/s for 3 K of 150 W with 10 W/K, so that air sized for CO2 does not cool', () => {
    expect(((150 / 3 - 10) / (1.2 * 1005)) * 1000).toBeCloseTo(33.2, 1);
  });

  it('counts dry heat alone: more moisture warms nothing', () => {
    expect(run(booth(shell), { bodyMoisture: given(200) }).gainsW).toBe(90);
    const lamp = {
      name: 'lamp',
      nameRange: place(),
      range: place(),
      kind: given<'lamp'>('lamp'),
      position: { range: place(), x: given(0.5), y: given(0.5), z: given(1.8) },
      size: undefined,
      tilt: given(0),
      mount: undefined,
      mass: undefined,
      heat: given(20),
      soundPower: undefined,
      absorption: given(0.05),
    };
    expect(run(booth(shell, { equipment: [lamp] }), { people: given(2), heat: given(40) }).gainsW).toBe(240);
  });

  it('rises along its curve to its end, and by 63 % of the rest within the time that it names', () => {
    const [off] = run(all(skin), { ...machines, length: given(24 * 3600) }).bySetting;
    expect(off?.endRiseK).toBeCloseTo(off?.steadyRiseK as number, 3);
    const found = run(booth(shell), { ...machines, length: given(6 * 3600) }).bySetting[0];
    const { minutes, riseK } = found ?? { minutes: [], riseK: [] };
    expect(riseK.at(-1)).toBeCloseTo(found?.endRiseK as number, 9);
    // Late in the rise only the slow part is left: it shrinks by e in one time constant.
    const left = riseK.map((rise) => (found?.steadyRiseK as number) - rise);
    const [from, to] = [40, 60];
    const seconds = (minutes[to] as number) - (minutes[from] as number);
    expect(seconds / Math.log((left[from] as number) / (left[to] as number))).toBeCloseTo(
      found?.timeConstantMinutes as number,
      4,
    );
  });

  it('says why it cannot answer for a booth with an open face', () => {
    const built = booth(shell);
    const open = booth(shell, { faces: { ...built.faces, front: undefined } });
    expect(heatResult(open, session(), 3.1, flows, air)).toContain('front');
    expect(resultOf(open, session(), 3.1)?.heatNote).toContain('front');
  });
});

describe('moisture', () => {
  const vents = [vent('in', { fan: quietFan }), vent('out')];
  const run = (changes = {}, around = site({ coldSurface: given(8) })) =>
    resultOf(booth(shell, { vents }), session({ length: given(20 * 3600), ...changes }), 3.1, around)?.moisture;

  it('settles at the vapour of the room and G/Q', () => {
    const found = run();
    const high = found?.bySetting.find(({ setting }) => setting === 'high');
    // 50 W over 2.421 MJ/kg are 2.07e-5 kg/s, over 10 L/s 2.07 g/m3.
    expect(found?.generationKgPerS).toBeCloseTo(50 / (2.501e6 - 2361 * 34), 9);
    const vapour = vapourDensity(air) + (found?.generationKgPerS as number) / 0.01;
    const same = airProperties({ temperature: 24, relativeHumidity: 0.5 });
    const humidity = (0.5 * vapour) / vapourDensity(same);
    // The dew point hangs on the vapour alone, within what its density changes with the temperature.
    const expected = dewPoint(airProperties({ temperature: 24, relativeHumidity: humidity }));
    expect(Math.abs((high?.endDewPointC as number) - expected)).toBeLessThan(0.2);
    expect(high?.coldSurfaceMarginK).toBeCloseTo(8 - (high?.endDewPointC as number), 9);
  });

  it('is moister without the fan and never passes saturation', () => {
    const found = run();
    expect(found?.bySetting[0]?.endDewPointC).toBeGreaterThan(found?.bySetting.at(-1)?.endDewPointC as number);
    expect(found?.bySetting[0]?.endRelativeHumidity).toBeLessThanOrEqual(1);
  });

  it('has no margin where no cold surface is stated', () => {
    expect(run({}, site())?.bySetting[0]?.coldSurfaceMarginK).toBeNull();
  });
});
