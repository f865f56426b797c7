import { describe, expect, it } from 'vitest';
import { compared, example, small } from './compared.js';

const told = (old: string, now: string) =>
  compared(old, now).facts.map(({ place, what, old: before, new: after }) => [place, what, before, after]);

describe('facts of the text', () => {
  it.each([
    [
      'a layer that is thicker',
      (text: string) => text.replace('gypsum-board 12.5 mm', 'gypsum-board 15 mm'),
      [['booth box, wall and roof shell, layer 3', 'gypsum-board', '12.5 mm', '15 mm']],
    ],
    [
      'a layer of another material',
      (text: string) => text.replace('gypsum-board 12.5 mm', 'osb 15 mm'),
      [['booth box, wall and roof shell, layer 3', '', 'gypsum-board 12.5 mm', 'osb 15 mm']],
    ],
    [
      'one more layer, which shifts no other',
      (text: string) => text.replace('  gypsum-board', '  gypsum-board 9.5 mm\n  gypsum-board'),
      [['booth box, wall and roof shell, layer 3', '', null, 'gypsum-board 9.5 mm']],
    ],
    [
      'the frame and its fill',
      (text: string) => text.replace('every 400', 'every 600').replace('mineral-wool-40 70', 'mineral-wool-40 50'),
      [
        ['booth box, wall and roof shell, layer 2', 'frame every', '400 mm', '600 mm'],
        ['booth box, wall and roof shell, layer 2', 'frame fill', '70 mm', '50 mm'],
      ],
    ],
    [
      'an opening',
      (text: string) => text.replace('gap threshold 0.3 mm', 'gap threshold 3 mm'),
      [['booth box, door entry', 'gap threshold', '0.3 mm', '3 mm']],
    ],
    [
      'one band of a noise',
      (text: string) => text.replace('63 Hz 58 dB', '63 Hz 61 dB'),
      [['site, noise street', '', '63 Hz 58 dB', '63 Hz 61 dB']],
    ],
    [
      'a fact that was assumed',
      (text: string) => text.replace('people 1', 'people 1; effort raised'),
      [['session', 'effort', 'normal (assumed)', 'raised']],
    ],
    [
      'a limit',
      (text: string) => text.replace('<= 480 kg', '<= 500 kg'),
      [['require', '', 'mass <= 480 kg', 'mass <= 500 kg']],
    ],
  ])('name %s by its place', (_, edit, expected) => {
    const now = edit(small);
    expect(now).not.toBe(small);
    expect(told(small, now)).toEqual(expected);
  });

  it('say where they stand on each side', () => {
    const now = small.replace('gap threshold 0.3 mm', 'gap threshold 3 mm');
    const [fact] = compared(small, now).facts;
    expect(small.slice(fact!.oldRange!.from, fact!.oldRange!.to)).toBe('0.3 mm');
    expect(now.slice(fact!.newRange!.from, fact!.newRange!.to)).toBe('3 mm');
  });
});

describe('what a change does', () => {
  it('puts verdicts in the order lost, gained, margins', () => {
    const now = small.replace('<= 480 kg', '<= 40 kg\nrequire height <= 2.5 m');
    const { requirements } = compared(small, now);
    expect(requirements.map(({ turn, kind }) => [turn, kind])).toEqual([
      ['lost', 'mass'],
      ['added', 'height'],
    ]);
    expect(requirements[0]).toMatchObject({ limitChanged: true, old: { verdict: 'met' }, new: { verdict: 'missed' } });
    expect(compared(now, small).requirements.map(({ turn }) => turn)).toEqual(['gained', 'dropped']);
  });

  it('is the difference of the two results, the largest first', () => {
    const now = small.replace('gap threshold 0.3 mm', 'gap threshold 6 mm');
    const { effects, bands } = compared(small, now);
    const steps = effects.map((one) => one.steps ?? Number.POSITIVE_INFINITY);
    expect(steps).toEqual(steps.toSorted((a, b) => b - a));
    expect(effects.find(({ what }) => what === 'STC of the whole booth')).toMatchObject({ of: 'box', turn: 'worse' });
    const curve = bands.find(({ what }) => what === 'transmission loss of the whole booth');
    const differences = curve!.hz.map((_, band) => Math.abs((curve!.old[band] ?? 0) - (curve!.new[band] ?? 0)));
    expect(curve!.hz[differences.indexOf(Math.max(...differences))]).toBe(curve!.largestHz);
    // A gap changes no wall.
    expect(effects.every(({ of }) => of === 'box')).toBe(true);
  });

  it('turns round when the sides do', () => {
    const now = small.replace('gypsum-board 12.5 mm', 'gypsum-board 25 mm');
    const [there, back] = [compared(small, now), compared(now, small)];
    const of = (list: typeof there.effects) => new Map(list.map((one) => [`${one.of} ${one.what}`, one]));
    const returned = of(back.effects);
    expect(there.effects.length).toBeGreaterThan(0);
    for (const [key, { old, new: after }] of of(there.effects))
      expect(returned.get(key)).toMatchObject({ old: after, new: old });
  });

  it('tells findings that came and went once each', () => {
    const [draft, done] = [example('tram-alcove/first-draft.booth'), example('tram-alcove/tram-alcove.booth')];
    const { findings } = compared(draft, done);
    expect(findings.gained.length).toBeGreaterThan(0);
    const back = compared(done, draft).findings;
    expect(back.lost.map(({ id }) => id).sort()).toEqual(findings.gained.map(({ id }) => id).sort());
  });

  it('says what of a broken text is not judged, and compares the rest', () => {
    const broken = small.replace('roof shell', 'roof shell 3 kg').replace('gypsum-board 12.5 mm', 'gypsum-board 15 mm');
    const comparison = compared(small, broken);
    expect(comparison.new.unread.length).toBeGreaterThan(0);
    expect(comparison.old.unread).toEqual([]);
    expect(comparison.effects.some(({ of, what }) => of === 'shell' && what === 'surface mass')).toBe(true);
  });
});
