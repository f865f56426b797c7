import { describe, expect, it } from 'vitest';
import { nominalHz } from '../../src/bands/grid.js';
import { voiceBandMean } from '../../src/variants/changes.js';
import { assess } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  booth,
  byMass,
  given,
  lining,
  noise,
  sheet,
  shell,
  site,
  spec,
  streetLevels,
  unknownFan,
  vent,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

function variant(name: string, changed: ReturnType<typeof spec>) {
  return {
    name,
    nameRange: changed.file === '' ? booth().range : booth().nameRange,
    range: booth().range,
    spec: changed,
    written: [],
  };
}
const wall = (gap: number) => assembly('wall', byMass(vinyl, 4.9), airGap(gap), byMass(vinyl, 3));

describe('changes of a variant', () => {
  it('list what differs, base and variant side by side', () => {
    const base = spec({ walls: [wall(0.006)], booths: [] });
    const document = assess({ ...base, variants: [variant('wide', spec({ walls: [wall(0.05)], booths: [] }))] });
    const changes = Object.fromEntries(document.variants.wide?.changes.map((change) => [change.what, change]) ?? []);
    expect(changes['wall: lowest resonance']?.base).toBeCloseTo(document.assemblies.wall?.resonancesHz[0] as number, 9);
    expect(changes['wall: lowest resonance']?.variant).toBeLessThan(changes['wall: lowest resonance']?.base as number);
    expect(changes['wall: thickness']).toMatchObject({ base: 6, unit: 'mm' });
    expect(changes['wall: surface mass']).toBeUndefined();
  });

  it('are empty for a variant that changes nothing', () => {
    const same = spec({ walls: [wall(0.006)], booths: [] });
    expect(assess({ ...same, variants: [variant('same', same)] }).variants.same?.changes).toEqual([]);
  });

  it('hold what another lining does to the decay at 125 Hz', () => {
    const lined = (depth: number) =>
      spec({ booths: [booth(shell, { linings: [lining(['left', 'right', 'back', 'roof'], 1, sheet(wool, depth))] })] });
    const document = assess({ ...lined(0.05), variants: [variant('deep', lined(0.1))] });
    const row = document.variants.deep?.changes.find(({ what }) => what === 'alcove: decay at 125 Hz');
    const seconds = (result: typeof document) =>
      result.booths.alcove!.roomSound!.decay.find(({ hz }) => hz === 125)!.seconds as number;
    expect(row?.unit).toBe('s');
    expect(row?.base).toBeCloseTo(seconds(document), 12);
    expect(row?.variant).toBeCloseTo(seconds(assess(lined(0.1))), 12);
    expect(row?.variant).toBeLessThan(row?.base as number);
  });

  it('hold the noise inside when the site changes', () => {
    const base = spec();
    const night = {
      ...base,
      site: site({
        sources: [
          noise(
            'street',
            streetLevels.map((level) => level - 8),
          ),
        ],
      }),
    };
    const changes = assess({ ...base, variants: [variant('night', night)] }).variants.night?.changes ?? [];
    const inside = changes.find((change) => change.what === 'alcove: noise inside');
    expect((inside?.base as number) - (inside?.variant as number)).toBeCloseTo(8, 6);
    expect(changes.some((change) => change.what.startsWith('shell:'))).toBe(false);
  });

  it('name a figure that is gone as null', () => {
    const base = spec();
    const changes = assess({ ...base, variants: [variant('silent', { ...base, session: undefined })] }).variants.silent
      ?.changes;
    expect(changes?.find((change) => change.what === 'alcove: room tone')?.variant).toBeNull();
  });

  it('leave the noise inside open where a fan of unknown sound power moves other air', () => {
    const aired = (flow: number) => {
      const fan = { ...unknownFan, flow: given(flow) };
      return spec({ booths: [booth(shell, { vents: [vent('in', { fan }), vent('out')] })] });
    };
    const base = aired(0.01);
    const document = assess({ ...base, variants: [variant('more', aired(0.02)), variant('same', aired(0.01))] });
    const rows = document.variants.more?.changes.filter(({ what }) => what === 'alcove: noise inside');
    expect(rows).toEqual([
      {
        what: 'alcove: noise inside',
        base: document.booths.alcove?.noise.total.dBA?.value,
        variant: null,
        unit: 'dBA',
      },
    ]);
    expect(document.variants.same?.changes).toEqual([]);
  });
});

it('voiceBandMean(curve) is the mean of the thirds from 100 Hz to 4 kHz', () => {
  expect(voiceBandMean(nominalHz.map((hz) => (hz >= 100 && hz <= 4000 ? 30 : 1000)))).toBe(30);
});
