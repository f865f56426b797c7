import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'heat-builds-up';
const lamp = 'equipment lamp at 0.6 m, 1.2 m, 1.9 m { kind lamp; heat 200 W }';

describe(id, () => {
  it('says how warm it is, and how warm without what warms it: the rise goes with the heat', () => {
    const text = smallBooth({ booth: lamp, requirements: 'require temperature-rise <= 4 K' });
    const [finding] = findingsById(text, id);
    const { riseK, riseWithoutEquipmentK } = finding!.figures;
    // 90 W of the person alone instead of 290 W.
    expect(riseWithoutEquipmentK! / riseK!).toBeCloseTo(90 / 290, 9);
    const cool = onlyBooth(smallBooth()).air!.heat!.bySetting.find(({ setting }) => setting === 'high')!.endRiseK;
    expect(riseWithoutEquipmentK).toBeCloseTo(cool, 1);
    expect(finding?.related).toHaveLength(1);
  });

  it('is silent for the person alone, and for a limit just above', () => {
    expect(findingsById(smallBooth(), id)).toEqual([]);
    const rise = findingsById(smallBooth({ booth: lamp }), id)[0]!.figures.riseK!;
    const above = `require temperature-rise <= ${Math.ceil(rise)} K`;
    expect(findingsById(smallBooth({ booth: lamp, requirements: above }), id)).toEqual([]);
  });

  it('fires in an unrelated box, and has no machine to blame where people alone do it', () => {
    expect(findingsById(bigBox({ session: 'heat 900 W' }), id)[0]?.message).toMatch(/^box is/);
    const slow =
      'vent supply on left { duct 160 mm; run 2 m; fan supply 3 L/s }; vent return on right { duct 160 mm; run 2 m }';
    const stuffy = findingsById(bigBox({ vents: slow, requirements: 'require temperature-rise <= 1 K' }), id);
    expect(stuffy[0]?.fix).toContain('People alone');
  });
});
