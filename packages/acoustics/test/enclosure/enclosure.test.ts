import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { boxModes, firstCavityMode } from '../../src/enclosure/box-modes.js';
import { smallEnclosureByPath } from '../../src/enclosure/small-enclosure-by-path.js';
import {
  type EnclosureElement,
  smallEnclosureLevelDifference,
} from '../../src/enclosure/small-enclosure-level-difference.js';
import { smallEnclosureLimit } from '../../src/enclosure/small-enclosure-limit.js';
import type { Layer } from '../../src/layered/layer.js';
import { firstPanelResonance } from '../../src/panels/first-panel-resonance.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const bulk = air.density * air.soundSpeed ** 2;
const limp = (surfaceMass: number): Layer[] => [{ kind: 'limp-sheet', surfaceMass }];
const board = {
  kind: 'plate',
  thickness: 0.018,
  density: 700,
  youngsModulus: 4e9,
  poissonRatio: 0.3,
  lossFactor: 0.03,
} as const;
const axis = (from: number, to: number, step: number) =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

describe('smallEnclosureLevelDifference({ volume, elements, air, hz })', () => {
  it('of a limp box is 20 lg |1 - omega^2 m V/(rho c^2 S)|', () => {
    const [volume, area, mass] = [2, 9, 12];
    for (const hz of [20, 40, 80]) {
      const [found] = smallEnclosureLevelDifference({
        volume,
        air,
        hz: [hz],
        elements: [{ kind: 'wall', layers: limp(mass), area }],
      });
      const expected = 20 * Math.log10(Math.abs(1 - ((2 * Math.PI * hz) ** 2 * mass * volume) / (bulk * area)));
      expect(found).toBeCloseTo(expected, 9);
    }
  });

  it('of a limp box has its breathing resonance at (1/2 pi) sqrt(rho c^2 S/(m V))', () => {
    const [volume, area, mass] = [2, 9, 12];
    const expected = Math.sqrt((bulk * area) / (mass * volume)) / (2 * Math.PI);
    const hz = axis(10, 120, 0.05);
    const found = smallEnclosureLevelDifference({
      volume,
      air,
      hz,
      elements: [{ kind: 'wall', layers: limp(mass), area }],
    });
    expect(hz[found.indexOf(Math.min(...found))]).toBeCloseTo(expected, 1);
  });

  describe('with two faces, one below and one above its first resonance', () => {
    const volume = 3;
    const stiff = { kind: 'wall' as const, layers: [board], area: 0.5, size: { width: 0.5, height: 1 } };
    const heavy = { kind: 'wall' as const, layers: limp(12), area: 2 };
    const hz = [50];
    const at = (elements: EnclosureElement[], cancellation?: 'full' | 'none') =>
      smallEnclosureLevelDifference({ volume, elements, air, hz, ...(cancellation && { cancellation }) })[0]!;

    it('gives no credit for what cancels when asked not to', () => {
      expect(at([stiff, heavy], 'none')).toBeLessThan(at([stiff, heavy]));
      expect(at([stiff, heavy], 'full')).toBe(at([stiff, heavy]));
    });

    it('takes an opening of opposite phase for no help against three walls', () => {
      const hole = { kind: 'leak' as const, area: 0.01, depth: 1 };
      const walls = [stiff, stiff, stiff];
      expect(at([...walls, hole], 'full')).toBeGreaterThan(at([...walls, { ...hole, attenuation: 60 }], 'full'));
      expect(at([...walls, hole], 'none')).toBeLessThan(at([...walls, { ...hole, attenuation: 60 }], 'none'));
    });

    it('changes nothing where all faces move alike', () => {
      expect(at([heavy, { ...heavy, area: 3 }], 'none')).toBeCloseTo(at([heavy, { ...heavy, area: 3 }]), 9);
    });
  });

  it('takes the attenuation of the only opening in full', () => {
    const at = (attenuation?: number) =>
      smallEnclosureLevelDifference({
        volume: 2,
        air,
        hz: [50],
        elements: [{ kind: 'leak', area: 0.01, depth: 0.3, ...(attenuation !== undefined && { attenuation }) }],
      })[0]!;
    expect(at(12) - at()).toBeCloseTo(12, 9);
    expect(at(0)).toBe(at());
    expect(() => at(-1)).toThrow('attenuation of a leak is -1');
  });

  it('drives a narrow slit at an edge with twice the squared pressure', () => {
    const at = (position?: 'mid' | 'edge') =>
      smallEnclosureLevelDifference({
        volume: 2,
        air,
        hz: [50],
        elements: [
          { kind: 'wall', layers: limp(1e6), area: 9 },
          { kind: 'slit', length: 1, gap: 1e-4, depth: 0.05, ...(position && { position }) },
        ],
      })[0]!;
    expect(at('mid')).toBe(at());
    expect(at() - at('edge')).toBeCloseTo(10 * Math.log10(2), 0);
  });

  it('is infinite when nothing moves and nothing leaks', () => {
    expect(
      smallEnclosureLevelDifference({ volume: 2, air, hz: [50], elements: [{ kind: 'leak', area: 0, depth: 0.02 }] }),
    ).toEqual([Number.POSITIVE_INFINITY]);
  });

  it('is 0 dB when a whole side is missing', () => {
    const elements = [
      { kind: 'wall', layers: limp(12), area: 9 },
      { kind: 'wall', layers: [], area: 1 },
    ] as const;
    expect(smallEnclosureLevelDifference({ volume: 2, air, hz: [50], elements })).toEqual([0]);
  });

  it('of a heavy box with one hole has the Helmholtz resonance of the hole', () => {
    const [volume, radius, depth] = [1, 0.05, 0.1];
    const area = Math.PI * radius ** 2;
    const length = depth + 2 * ((8 * radius) / (3 * Math.PI));
    const expected = (air.soundSpeed / (2 * Math.PI)) * Math.sqrt(area / (volume * length));
    const hz = axis(10, 60, 0.02);
    const found = smallEnclosureLevelDifference({
      volume,
      air,
      hz,
      elements: [
        { kind: 'wall', layers: limp(1e9), area: 6 },
        { kind: 'leak', area, depth },
      ],
    });
    expect(Math.abs(hz[found.indexOf(Math.min(...found))]! / expected - 1)).toBeLessThan(0.01);
  });

  it('far below the hole resonance is 0 dB: the pressure goes in and out', () => {
    const elements = [
      { kind: 'wall', layers: [board], area: 6, size: { width: 1, height: 1 } },
      { kind: 'leak', area: 0.01, depth: 0.02 },
    ] as const;
    expect(smallEnclosureLevelDifference({ volume: 1, air, hz: [1], elements })[0]).toBeCloseTo(0, 1);
  });

  it('below its first resonance a panel is stiff: the difference is flat and independent of its mass', () => {
    const size = { width: 0.8, height: 0.6 };
    const first = firstPanelResonance(board, 0.8, 0.6, 'between');
    const of = (density: number, hz: number) =>
      smallEnclosureLevelDifference({
        volume: 0.5,
        air,
        hz: [hz],
        elements: [{ kind: 'wall', layers: [{ ...board, density }], area: 3, size }],
      })[0]!;
    expect(first).toBeGreaterThan(60);
    expect(of(700, 4) - of(700, 2)).toBeCloseTo(0, 0);
    expect(of(1400, 2)).toBeCloseTo(of(700, 2), 1);
    expect(of(700, 2)).toBeGreaterThan(5);
  });

  it('is lower by the leak of a slit at the lowest frequencies', () => {
    const wall = { kind: 'wall', layers: [board], area: 6, size: { width: 1, height: 1 } } as const;
    const slit = { kind: 'slit', length: 4, gap: 0.001, depth: 0.04 } as const;
    const sealed = smallEnclosureLevelDifference({ volume: 1, air, hz: [5], elements: [wall] })[0]!;
    const leaky = smallEnclosureLevelDifference({ volume: 1, air, hz: [5], elements: [wall, slit] })[0]!;
    expect(leaky).toBeLessThan(sealed - 3);
  });

  it('takes many small holes as tighter than one large hole of the same area at low frequencies', () => {
    const of = (count: number) =>
      smallEnclosureLevelDifference({
        volume: 1,
        air,
        hz: [200],
        elements: [
          { kind: 'wall', layers: limp(1e9), area: 6 },
          { kind: 'leak', area: 0.01, depth: 0.001, count },
        ],
      })[0]!;
    // The mouths of small holes carry less air along than that of a large one.
    expect(of(1)).toBeGreaterThan(of(100));
  });

  it('moves its breathing resonance down when fibre makes the air inside softer', () => {
    const hz = axis(10, 120, 0.05);
    const elements = [{ kind: 'wall', layers: limp(12), area: 9 }] as const;
    const dip = (isothermalShare: number) => {
      const found = smallEnclosureLevelDifference({ volume: 2, air, hz, elements, isothermalShare });
      return hz[found.indexOf(Math.min(...found))]!;
    };
    expect(dip(1) / dip(0)).toBeCloseTo(Math.sqrt(air.pressure / bulk), 2);
  });

  it('of a double limp wall lies above that of a single one of the same mass well above the resonance of its cavity', () => {
    const layers: Layer[] = [...limp(5), { kind: 'air-gap', thickness: 0.05 }, ...limp(5)];
    const single = smallEnclosureLevelDifference({
      volume: 2,
      air,
      hz: [500],
      elements: [{ kind: 'wall', layers: limp(10), area: 9 }],
    })[0]!;
    const double = smallEnclosureLevelDifference({
      volume: 2,
      air,
      hz: [500],
      elements: [{ kind: 'wall', layers, area: 9 }],
    })[0]!;
    expect(double).toBeGreaterThan(single + 3);
  });

  it('names what is wrong', () => {
    const base = { air, hz: [50] };
    expect(() => smallEnclosureLevelDifference({ ...base, volume: 0, elements: [] })).toThrow(
      'volume of the enclosure is 0',
    );
    expect(() =>
      smallEnclosureLevelDifference({ ...base, volume: 1, elements: [{ kind: 'leak', area: -1, depth: 0.1 }] }),
    ).toThrow('area of a leak is -1');
    expect(() =>
      smallEnclosureLevelDifference({
        ...base,
        volume: 1,
        elements: [{ kind: 'leak', area: 1, depth: 0.1, count: 0.5 }],
      }),
    ).toThrow('count of leaks is 0.5');
    expect(() => smallEnclosureLevelDifference({ ...base, volume: 1, elements: [], isothermalShare: 2 })).toThrow(
      'isothermal share is 2',
    );
  });
});

describe('boxModes(size, upTo, air)', () => {
  it('lists all modes up to a frequency, lowest first', () => {
    const modes = boxModes([2, 1.5, 1], 180, air);
    expect(modes.map(({ order }) => order)).toEqual([
      [1, 0, 0],
      [0, 1, 0],
      [1, 1, 0],
      [0, 0, 1],
      [2, 0, 0],
    ]);
    expect(modes[2]!.hz).toBeCloseTo((air.soundSpeed / 2) * Math.hypot(1 / 2, 1 / 1.5), 9);
  });

  it('counts about 4 pi V f^3/(3 c^3) + pi S f^2/(4 c^2) + L f/(8 c) modes', () => {
    const found = boxModes([3, 4, 2.5], 300, air).length;
    const x = 300 / air.soundSpeed;
    const expected = (4 / 3) * Math.PI * 30 * x ** 3 + (Math.PI / 4) * 2 * (12 + 7.5 + 10) * x ** 2 + (4 * 9.5 * x) / 8;
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.05);
  });
});

describe('firstCavityMode(size, air)', () => {
  it('is c over twice the longest side', () => {
    expect(firstCavityMode([1.2, 2.1, 1.8], air)).toBeCloseTo(air.soundSpeed / 4.2, 9);
    expect(() => firstCavityMode([1, 0, 1], air)).toThrow('side of the box is 0');
  });
});

describe('smallEnclosureLimit(size, air)', () => {
  it('is where the pressure of walls that move alike differs by 3 dB between wall and middle, c/4L', () => {
    const hz = smallEnclosureLimit([1.2, 2, 1.8], air);
    expect(hz).toBeCloseTo(air.soundSpeed / 8, 9);
    expect(20 * Math.log10(Math.cos(((2 * Math.PI * hz) / air.soundSpeed) * 1))).toBeCloseTo(-3.01, 2);
  });
});

describe('smallEnclosureByPath({ volume, paths, air, hz })', () => {
  const wall = { kind: 'wall' as const, layers: [board], area: 2, size: { width: 1, height: 2 } };
  const other = { ...wall, area: 1.5 };
  const small = { ...wall, area: 0.5, size: { width: 0.5, height: 1 } };
  const leak = { kind: 'leak' as const, area: 0.002, depth: 0.1 };
  const slit = { kind: 'slit' as const, length: 2, gap: 0.001, depth: 0.05, position: 'edge' as const };
  const hz = [20, 50, 80];

  it.each(['full', 'none'] as const)('is what each and all give to the function of elements, %s', (cancellation) => {
    const paths: { elements: EnclosureElement[] }[] = [
      { elements: [wall, small] },
      { elements: [other] },
      { elements: [leak] },
      { elements: [slit] },
    ];
    const { all, alone } = smallEnclosureByPath({ volume: 3, paths, air, hz, cancellation });
    const of = (elements: readonly EnclosureElement[]) =>
      smallEnclosureLevelDifference({ volume: 3, elements, air, hz, cancellation });
    expect(all).toEqual(of(paths.flatMap(({ elements }) => elements)));
    expect(alone).toEqual(paths.map(({ elements }) => of(elements)));
  });

  it('takes the attenuation of a path at each frequency off its leaks alone', () => {
    const paths = [{ elements: [wall, leak], attenuation: [3, 6, 9] }];
    const { all } = smallEnclosureByPath({ volume: 3, paths, air, hz });
    const expected = hz.map((each, at) => {
      const elements = [wall, { ...leak, attenuation: 3 * (at + 1) }];
      return smallEnclosureLevelDifference({ volume: 3, elements, air, hz: [each] })[0];
    });
    expect(all).toEqual(expected);
  });

  it('refuses another number of attenuations than of frequencies, and no elements', () => {
    const short = [{ elements: [leak], attenuation: [3] }];
    expect(() => smallEnclosureByPath({ volume: 3, paths: short, air, hz })).toThrow(
      'one for each of the 3 frequencies',
    );
    expect(() => smallEnclosureByPath({ volume: 3, paths: [], air, hz })).toThrow('number of elements');
  });
});
