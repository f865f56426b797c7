import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'quieter-hours-pass';
const machine = 'noise machine 85 dBA like pink { hours 08:00 to 17:00 }';
const noFan = 'hole air on left { diameter 5 mm; depth 95 mm }';

describe(id, () => {
  it('names the hours without the machine', () => {
    const text = smallBooth({ site: machine, vents: noFan, requirements: 'require room-tone <= 45 dBA' });
    const [finding] = findingsById(text, id);
    expect(finding?.message).toContain('17:00 to 08:00');
    expect(finding?.figures.hoursMet).toBe(15);
  });

  it('is silent where it is met all day, where no hour meets it, and where nothing has hours', () => {
    const of = (site: string, limit: number) =>
      findingsById(smallBooth({ site, vents: noFan, requirements: `require room-tone <= ${limit} dBA` }), id);
    expect(of(machine, 90)).toEqual([]);
    expect(of(machine, 1)).toEqual([]);
    expect(of('noise machine 85 dBA like pink', 45)).toEqual([]);
  });

  it('fires in an unrelated box', () => {
    const text = bigBox({
      vents: noFan,
      site: 'noise drums 120 dBA like pink { hours 19:00 to 22:00 }',
      requirements: 'require room-tone <= 60 dBA',
    });
    expect(findingsById(text, id)[0]?.message).toContain('22:00 to 19:00');
  });
});
