import { describe, expect, it } from 'vitest';
import { nominalHz } from '../../src/bands/grid.js';
import { lowDeciders, lowDecidersText } from '../../src/booth/low-deciders.js';
import { onlyBooth } from '../fixtures/assessed.js';
import { assembly, booth, gypsum, sheet, slab, spec } from '../fixtures/spec-builder.js';

describe('low bands of a booth', () => {
  it('say where the closed box ends: half the first mode of the longest side', () => {
    const { lowBands, firstModeHz, schroederHz } = onlyBooth(spec());
    // 2 m high: c/(2 x 2 m) = 86 Hz.
    expect(firstModeHz).toBeCloseTo(343.99 / 4, 0);
    expect(lowBands.closedBoxToHz).toBeCloseTo(firstModeHz / 2, 9);
    expect(lowBands.schroederHz).toBe(schroederHz);
    expect(lowBands.text).toContain('43 Hz');
  });

  it('have the resonance of a plate of the size of the face, between hinged and clamped', () => {
    const leaf = assembly('leaf', sheet(gypsum, 0.0125));
    const { lowBands } = onlyBooth(spec({ booths: [booth(leaf)] }));
    const left = lowBands.panels.find(({ face }) => face === 'left');
    const stiffness = (2.5e9 * 0.0125 ** 3) / 12 / (1 - 0.3 ** 2);
    const hinged = (Math.PI / 2) * Math.sqrt(stiffness / (700 * 0.0125)) * (1 / 1.35 ** 2 + 1 / 2 ** 2);
    expect(left?.wholeHz).toBeGreaterThan(hinged);
    expect(left?.wholeHz).toBeLessThan(2 * hinged);
    // Without studs there is nothing else to hold it.
    expect(left?.betweenStudsHz).toBe(left?.wholeHz);
  });

  it('of a framed wall know that studs hold the leaves', () => {
    const [panel] = onlyBooth(spec()).lowBands.panels;
    expect(panel?.betweenStudsHz).toBeGreaterThan(2 * (panel?.wholeHz as number));
  });

  it('find where walls and air breathe together, above what limp walls of that mass would do', () => {
    const { lowBands, geometry } = onlyBooth(spec({ booths: [booth(slab)] }));
    // Five faces of 35 kg/m2 as limp masses on the air: (1/2 pi) sqrt(rho c^2 S/(m V)).
    const surface = 2 * 2 * (1.15 + 1.35) + 1.15 * 1.35;
    const limp = Math.sqrt((1.2 * 344 ** 2 * surface) / (35 * geometry.volumeM3)) / (2 * Math.PI);
    if (lowBands.breathing !== null) expect(lowBands.breathing.hz).toBeGreaterThan(0.8 * limp);
    expect(onlyBooth(spec()).lowBands.breathing?.differenceDb).toBeLessThan(5);
  });

  it('carry a wider range than the bands above', () => {
    const { lowBands } = onlyBooth(spec());
    expect(nominalHz[0]).toBe(50);
    expect(lowBands.halfWidthTo100HzDb).toBeGreaterThan(lowBands.halfWidthMidDb);
    expect(lowBands.text).toContain('Up to 100 Hz a figure is good to');
  });
});

describe('the model that decides in the low bands', () => {
  it('is named by runs of bands and is the worse of the two', () => {
    const { lowBands, bandModels } = onlyBooth(spec());
    const open = bandModels.filter((model) => model === 'small-enclosure' || model === 'hand-over').length;
    const covered = lowBands.decidedBy.flatMap(({ fromHz, toHz }) =>
      nominalHz.filter((hz) => hz >= fromHz && hz <= toHz),
    );
    expect(covered).toEqual(nominalHz.slice(0, open));
    expect(lowBands.decidedText).toContain('What limits the low bands: ');
  });

  it('closes the box alone below its limit, and tells what a second board does where walls decide', () => {
    const models = { closedBox: [4, 6, 12, null], statistical: [9, 8, 7, 20] };
    const runs = lowDeciders(models, ['small-enclosure', 'hand-over', 'hand-over', 'few-modes']);
    expect(runs).toEqual([
      { model: 'closed-box', fromHz: 50, toHz: 50, lessDb: null },
      { model: 'closed-box', fromHz: 63, toHz: 63, lessDb: 2 },
      { model: 'walls-and-absorption', fromHz: 80, toHz: 80, lessDb: 5 },
    ]);
    const text = lowDecidersText(runs, { hz: 30, differenceDb: -2 }, new Map([['shell', 95]]));
    expect(text).toContain('at 50 Hz the closed box alone');
    expect(text).toContain('at 80 Hz walls and absorption, the worse of two models by up to 5 dB');
    expect(text).toContain('(shell 95 Hz)');
    expect(lowDecidersText(runs, null, new Map([['heavy', 400]]))).not.toContain('heavy');
  });
});
