import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'fan-sets-the-noise';
const power = (level: number) =>
  `sound-power octave 63 Hz ${level} dB, 125 Hz ${level} dB, 250 Hz ${level} dB, 500 Hz ${level} dB, 1 kHz ${level} dB, 2 kHz ${level} dB, 4 kHz ${level} dB`;
const vents = (level: number) =>
  `vent in on left { duct 125 mm; run 1 m; bends 1; fan supply 10 L/s ${power(level)} }; vent out on right { duct 125 mm; run 1 m; bends 1 }`;

describe(id, () => {
  it('gives the noise with the fan off and on', () => {
    const [finding] = findingsById(smallBooth({ vents: vents(60) }), id);
    const { fanOffDbA, fanOnDbA, gainDb } = finding!.figures;
    expect(gainDb).toBeCloseTo(fanOnDbA! - fanOffDbA!, 9);
    expect(gainDb).toBeGreaterThan(1);
  });

  it('is silent for a quiet fan, for one that is off, and for one without a stated sound power', () => {
    expect(findingsById(smallBooth({ vents: vents(20) }), id)).toEqual([]);
    expect(findingsById(smallBooth({ vents: vents(60), session: 'fan off' }), id)).toEqual([]);
    expect(findingsById(smallBooth(), id)).toEqual([]);
  });

  it('tells the air from the fan: a quiet fan that blows hard through a small grille wants an opening, not a lining', () => {
    const hissing = smallBooth({
      vents: `vent in on left { duct 80 mm; run 1 m; fan supply 30 L/s ${power(20)}; grille 100 mm x 100 mm free 30 % }; vent out on right { duct 125 mm; run 1 m }`,
    });
    const [finding] = findingsById(hissing, id);
    expect(finding?.message).toContain('by the air that it moves');
    expect(finding?.fix).toContain('Open what the air passes at the grille of in');
    const humming = findingsById(smallBooth({ vents: vents(60) }), id)[0];
    expect(humming?.message).not.toContain('air that it moves');
    expect(humming?.fix).toContain('lined');
  });

  it('fires in an unrelated box', () => {
    const text = bigBox({
      vents: `vent blow on left { duct 160 mm; run 1 m; fan exhaust 30 L/s ${power(85)} }; vent draw on right { duct 160 mm; run 1 m }`,
    });
    expect(findingsById(text, id)[0]?.message).toMatch(/^box:/);
  });
});
