import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'fan-too-weak';
const withCurve = (curve: string, duct = '125 mm') =>
  smallBooth({
    vents: `vent in on left { duct ${duct}; run 3 m; bends 4; wall flexible; fan supply 10 L/s { curve ${curve} } }; vent out on right { duct ${duct}; run 3 m; bends 4; wall flexible }`,
  });

describe(id, () => {
  it('fires where the curve meets the path far below the stated flow', () => {
    const [finding] = findingsById(withCurve('0 L/s 3 Pa, 10 L/s 1 Pa, 15 L/s 0 Pa', '60 mm'), id);
    expect(finding?.figures.flowLPerS).toBeLessThan(8);
    expect(finding?.figures.flowLPerS).toBeGreaterThan(0);
    expect(finding?.fix).toContain('Pa');
  });

  it('is silent for a strong fan on the same path, for a wide duct, and without a curve', () => {
    expect(findingsById(withCurve('0 L/s 400 Pa, 30 L/s 200 Pa, 60 L/s 0 Pa', '60 mm'), id)).toEqual([]);
    expect(findingsById(withCurve('0 L/s 30 Pa, 10 L/s 10 Pa, 15 L/s 0 Pa', '200 mm'), id)).toEqual([]);
    expect(findingsById(smallBooth(), id)).toEqual([]);
  });

  it('fires in an unrelated box', () => {
    const text = bigBox({
      vents:
        'vent blow on left { duct 80 mm; run 6 m; bends 6; fan exhaust 40 L/s { curve 0 L/s 20 Pa, 60 L/s 0 Pa } }; vent draw on right { duct 80 mm; run 6 m; bends 6 }',
    });
    expect(findingsById(text, id)[0]?.message).toMatch(/^blow:/);
  });
});
