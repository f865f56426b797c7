import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'take-too-long';

describe(id, () => {
  it('fires for takes that outrun their rests, and names the longest that would do', () => {
    const long = smallBooth({ session: 'take 25 min rest 2 min fan off' });
    const [finding] = findingsById(long, id);
    expect(finding?.figures.lastPeakPpm).toBeGreaterThan(1500);
    const longest = finding!.figures.longestTakeMinutes!;
    expect(longest).toBeGreaterThan(0);
    expect(findingsById(smallBooth({ session: `take ${longest} min rest 2 min fan off` }), id)).toEqual([]);
    expect(
      findingsById(smallBooth({ session: `take ${longest + 1} min rest 2 min fan off; length 20 h` }), id),
    ).toHaveLength(1);
  });

  it('is silent with the fan on, and for one unbroken stretch', () => {
    expect(findingsById(smallBooth({ session: 'take 25 min rest 2 min fan on' }), id)).toEqual([]);
    expect(findingsById(smallBooth(), id)).toEqual([]);
  });

  it('takes a limit of the text near 1000 ppm for it', () => {
    const asked = { session: 'take 6 min rest 5 min fan off', requirements: 'require co2 <= 1000 ppm' };
    expect(findingsById(smallBooth(asked), id)[0]?.message).toContain('1000 ppm');
    expect(findingsById(smallBooth({ session: asked.session }), id)).toEqual([]);
  });

  it('keeps to a limit of the text between the two levels that are searched', () => {
    const session = 'take 7 min rest 5 min fan off';
    const peak = findingsById(smallBooth({ session, requirements: 'require co2 <= 1000 ppm' }), id)[0]?.figures
      .lastPeakPpm as number;
    expect(peak).toBeGreaterThan(1260);
    const at = (ppm: number) => findingsById(smallBooth({ session, requirements: `require co2 <= ${ppm} ppm` }), id);
    expect(at(Math.floor(peak) - 5)[0]?.fix).toContain('1000 ppm');
    expect(at(Math.ceil(peak) + 5)).toEqual([]);
  });

  it('fires in an unrelated box for three', () => {
    expect(findingsById(bigBox({ session: 'take 40 min rest 1 min fan off' }), id)[0]?.message).toMatch(/^box:/);
  });
});
