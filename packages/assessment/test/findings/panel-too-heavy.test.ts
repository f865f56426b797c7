import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'panel-too-heavy';
const panels = 'panels { width 700 mm; fastened inside; roof lift }';

describe(id, () => {
  it('names how many are too heavy, the heaviest, and a width at which its mass would be the limit', () => {
    const text = smallBooth({ booth: panels, requirements: 'require panel-weight <= 20 kg' });
    const all = onlyBooth(text).build.panels;
    const heaviest = Math.max(...all.map(({ massKg }) => massKg));
    const [finding] = findingsById(text, id);
    expect(finding?.figures.panelsOver).toBe(all.filter(({ massKg }) => massKg > 20).length);
    expect(finding?.figures.heaviestKg).toBe(heaviest);
    const { widthM, aimedWidthM } = finding!.figures;
    expect(aimedWidthM! / widthM!).toBeLessThanOrEqual(20 / heaviest);
    expect(aimedWidthM! / widthM!).toBeGreaterThan(20 / heaviest - 0.02);
  });

  it('gives a width that helps: cut so, the walls stay near the limit', () => {
    const [finding] = findingsById(smallBooth({ booth: panels, requirements: 'require panel-weight <= 20 kg' }), id);
    const narrower = smallBooth({
      booth: `panels { width ${finding!.figures.aimedWidthM! * 1000} mm; fastened inside; roof lift }`,
    });
    const heaviest = Math.max(...onlyBooth(narrower).build.panels.map(({ massKg }) => massKg));
    expect(heaviest).toBeLessThan(finding!.figures.heaviestKg!);
    expect(heaviest).toBeLessThan(20 * 1.1);
  });

  it('is silent just above the heaviest, without a limit, and where nothing is cut into panels', () => {
    const heaviest = Math.max(...onlyBooth(smallBooth({ booth: panels })).build.panels.map(({ massKg }) => massKg));
    const enough = smallBooth({
      booth: panels,
      requirements: `require panel-weight <= ${Math.ceil(heaviest) + 15} kg`,
    });
    expect(findingsById(enough, id)).toEqual([]);
    expect(findingsById(smallBooth({ booth: panels }), id)).toEqual([]);
    expect(findingsById(smallBooth({ requirements: 'require panel-weight <= 5 kg' }), id)).toEqual([]);
  });

  it('fires in an unrelated box of one heavy leaf', () => {
    const text = bigBox({ booth: 'panels { width 1.2 m }', requirements: 'require panel-weight <= 30 kg' });
    expect(findingsById(text, id)[0]?.message).toMatch(/^box: \d+ panels/);
  });
});
