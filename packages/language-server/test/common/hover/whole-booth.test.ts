import { octaveTransmissionLoss } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { hover } from '../../../src/common/hover.js';
import { cursorAfter, hoverAt, markedText, viewOf, wholeBooth } from '../../helpers/index.js';

const view = viewOf(wholeBooth);
const { booths, requirements, cautions } = view.results!;
const study = booths.study!;

/** The hover behind a piece of the text. */
const at = (part: string): string => {
  const { cursors } = markedText(cursorAfter(part, wholeBooth));
  const contents = hover(view, view.lines.positionAt(cursors[0]!), { pictures: true })?.contents;
  const text = contents !== undefined && typeof contents === 'object' && 'value' in contents ? contents.value : '';
  return text.replaceAll('&nbsp;', '');
};
const rows = (markdown: string) => markdown.split('\n').filter((line) => line.startsWith('|'));
const cells = (markdown: string, first: string) =>
  rows(markdown)
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    )
    .find(([name]) => name === first);
/** Every middle third: the octave centres. */
const centres = <T>(bands: readonly T[]): T[] => bands.filter((_, index) => index % 3 === 1);
const asked = (kind: string) => requirements.find((each) => each.kind === kind)!;

it('is a sound text, of which everything is worked out', () => {
  expect(view.checked.problems).toEqual([]);
  expect(study.roomSound).not.toBeNull();
  expect(study.reflections?.response).not.toBeNull();
  expect(study.moving?.cards.length).toBeGreaterThan(4);
  expect(study.noise.mounts).not.toBeNull();
  expect(study.noise.hours).not.toBeNull();
});

describe('the sound inside', () => {
  const { decay, mid } = study.roomSound!;

  it.each(['lining', '\n  inside', 'require reverberatio', 'require decay-rati'])(
    'behind `%s` starts with the decay, or the verdict on it, and shows it by band',
    (part) => {
      const text = at(part);
      expect(text).toContain(
        `**Decay ${mid!.seconds.toFixed(2)} s** (${mid!.lowS.toFixed(2)} to ${mid!.highS.toFixed(2)})`,
      );
      expect(cells(text, 'decay by 60 dB, s')?.slice(1)).toEqual(
        centres(decay).map(({ seconds }) => (seconds === null ? '–' : seconds.toFixed(2))),
      );
      expect(text).toContain('data:image/svg+xml');
    },
  );

  it('starts with the verdict on a requirement', () => {
    expect(at('require reverberatio')).toMatch(/^\*\*(met|missed)/);
  });

  it('behind `mouth` shows ups and downs and the reflections of the result', () => {
    const text = at('  mout');
    const { response, early } = study.reflections!;
    expect(text).toMatch(new RegExp(`^\\*\\*Ups and downs ${response!.spreadDb.toFixed(1)} dB\\*\\*`));
    const [first] = early;
    const row = cells(text, first!.name);
    expect(row?.[1]).toContain(`${first!.levelDb.toFixed(0)} dB`);
    expect(row?.[2]).toBe(`${first!.delayMs.toFixed(1)} ms`);
  });

  it('behind a thing inside shows what it is heard as and what it sends back', () => {
    const text = at('equipment stan');
    const found = study.noise.equipment.find(({ name }) => name === 'stand')!;
    expect(text).toContain(`${found.atMicrophone.dBA!.value.toFixed(0)} dBA`);
    const reflection = study.reflections!.early.find(({ name }) => name === 'music stand');
    expect(text).toContain(
      reflection === undefined
        ? 'No early reflection of it reaches the mic'
        : `Sends the voice back at ${reflection.levelDb.toFixed(0)} dB`,
    );
  });
});

describe('the noise at the microphone', () => {
  it('behind `mic` is all of it, beside what brings it', () => {
    const text = at('  mi');
    const { total, roomTone, bySource } = study.noise;
    expect(text).toMatch(new RegExp(`^\\*\\*Noise at the mic ${total.dBA!.value.toFixed(0)} dBA`));
    expect(text).toContain(`${roomTone!.dBFS.value.toFixed(0)} dBFS`);
    expect(cells(text, '**all of it**')?.at(-1)).toBe(total.dBA!.value.toFixed(0));
    for (const { name, inside } of bySource) expect(cells(text, name)?.at(-1)).toBe(inside.dBA!.value.toFixed(0));
    expect(text).toContain('Not in it, because not predicted: steps');
  });

  it('leaves a noise out that does not sound in the hours of the session', () => {
    const night = wholeBooth.replace('starts 10:00', 'starts 23:00');
    const text = hoverAt(cursorAfter('  mi', night));
    expect(cells(text, 'street')).toBeUndefined();
    expect(text).toContain('Not heard in the hours that count: street');
    expect(cells(at('  mi'), 'street')).toBeDefined();
  });

  it('tells of a fact of the microphone what it does', () => {
    const { filters, patternRejectionDb } = study.noise.roomTone!;
    const filter = at('high-pas');
    for (const { highPassHz, dBFS } of filters.filter(({ highPassHz }) => highPassHz !== null && highPassHz !== 80))
      expect(cells(filter, `${highPassHz} Hz`)?.[1]).toBe(`${dBFS.toFixed(0)} dBFS`);
    expect(cells(filter, '80 Hz, yours')).toBeDefined();
    expect(cells(at('patter'), 'dB')?.slice(1)).toEqual(centres(patternRejectionDb).map((dB) => dB.toFixed(1)));
    expect(at('self-nois')).toContain("microphone's own noise");
    expect(at('; distanc')).toContain('At 200 mm a raised voice');
  });

  it.each(['{ hour', '  start'])('behind `%s` tells which hours are quiet enough', (part) => {
    const text = at(part);
    const { requirements: each, states } = study.noise.hours!;
    expect(text).toContain(each[0]!.words.split(' ')[0]!);
    for (const state of states) expect(text).toContain(`${state.dBA!.value.toFixed(0)} dBA`);
    expect(cells(text, '22:00 to 06:00')?.[1]).toBe('hum');
    expect(text).toContain('data:image/svg+xml');
  });
});

describe('what comes by a path', () => {
  const [loudest] = study.noise.bySource.toSorted((a, b) => b.inside.dBA!.value - a.inside.dBA!.value);
  /** Energy at 500 Hz that comes by some paths, of all of it, from the thirds at 400, 500 and 630 Hz. */
  const at500 = (meant: (path: (typeof study.paths)[number]) => boolean): number => {
    let through = 0;
    let all = 0;
    for (const band of [9, 10, 11]) {
      const energy = 10 ** (loudest!.inside.byBand[band]! / 10);
      all += energy;
      for (const [index, path] of study.paths.entries())
        if (meant(path)) through += energy * loudest!.shares[index]![band]!;
    }
    return through / all;
  };

  it.each([
    ['\n  roof', 'roof', 'face', 'roof'],
    ['    lea', 'door leaf entry', 'door', 'entry'],
  ] as const)('behind `%s` is its share, by octave', (part, words, kind, name) => {
    const text = at(part);
    expect(text).toMatch(/^\*\*.*% of what comes in\*\* of street in study/);
    const share = at500((path) => path.kind === kind && path.name === name);
    const told = cells(text, words)![4]!;
    expect(Number.parseFloat(told)).toBeCloseTo(100 * share, share < 0.01 ? 1 : 0);
  });

  it('behind the gap of a door is that of its seal alone', () => {
    const text = at('gap perimete');
    expect(rows(text).filter((line) => line.includes('seal'))).toHaveLength(2);
    expect(text).toContain('perimeter seal of door entry');
  });

  it('behind `walls` are all four, and no roof', () => {
    const text = at('\n  wall');
    for (const wall of ['front', 'back', 'left', 'right']) expect(cells(text, `${wall} wall`)).toBeDefined();
    expect(cells(text, 'roof')).toBeUndefined();
  });
});

describe('the air', () => {
  const { air, ventilation } = study;

  it.each(['\nsessio', '  peopl', 'require co'])('behind `%s` is the level at the end, with its range', (part) => {
    const { value } = asked('co2');
    const text = at(part);
    expect(text).toContain(
      `**CO₂ ${value!.value.toFixed(0)} ppm (${value!.low.toFixed(0)} to ${value!.high.toFixed(0)})**`,
    );
    expect(cells(text, 'off')?.[2]).toBe(`${air!.fanOff.endPpm.toFixed(0)} ppm`);
    expect(text).toContain('data:image/svg+xml');
  });

  it.each(['\n  hea', 'require temperature-ris'])('behind `%s` is the warmth, by setting', (part) => {
    const text = at(part);
    expect(text).toContain(`**${asked('temperature-rise').value!.value.toFixed(1)} K`);
    for (const { setting, endRiseK } of air!.heat!.bySetting) {
      const row = cells(text, setting) ?? cells(text, `${setting}, session`);
      expect(row?.[1]).toBe(`${endRiseK.toFixed(1)} K`);
    }
  });

  it('tells the dew point against the cold surface', () => {
    const high = air!.moisture!.bySetting.find(({ setting }) => setting === air!.judged)!;
    expect(at('cold-surfac')).toContain(`**Dew point ${high.endDewPointC.toFixed(1)} °C**`);
    expect(cells(at('cold-surfac'), 'high, session')?.[3]).toBe(`${high.coldSurfaceMarginK!.toFixed(1)} K`);
  });

  it('behind a vent shows flow, speed and what its parts keep off', () => {
    const vent = ventilation.vents.find(({ name }) => name === 'outlet')!;
    const text = at('vent outle');
    expect(text).toContain(`**Air**: air goes ${vent.direction}`);
    expect(text).toContain(`${(vent.flowHighM3PerS! * 1000).toFixed(1)} L/s`);
    expect(cells(text, '**together**')?.slice(1)).toEqual(
      octaveTransmissionLoss([...vent.soundLossDb]).map((dB) => dB.toFixed(0)),
    );
  });

  it.each([
    ['    duc', 'duct'],
    ['    chambe', 'chamber'],
    ['    grill', 'grille'],
    ['    bend', 'bends'],
  ])('behind `%s` tells what that part does', (part, name) => {
    expect(at(part)).toMatch(new RegExp(`^\\*\\*${name} of outlet\\*\\*: .*(takes|clear)`));
  });

  it('behind `fan` says what it must give, and how loud it is at every setting', () => {
    const text = at('; fa');
    expect(text).toContain(`at ${(ventilation.high!.flowM3PerS! * 1000).toFixed(1)} L/s`);
    for (const { setting, session, total } of study.noise.bySetting) {
      const row = cells(text, `${setting}${session ? ', session' : ''}`);
      expect(row?.[4]).toContain(`${total.dBA!.value.toFixed(0)} dBA`);
    }
  });
});

describe('getting it in and putting it up', () => {
  const { moving, build } = study;

  it.each(['  panel', 'panels { widt', 'require panel-weigh'])('behind `%s` are the panels', (part) => {
    const text = at(part);
    const heaviest = build.panels.find(({ number }) => number === build.heaviestPanel)!;
    expect(text).toContain(`**${build.panels.length} panels, the heaviest ${heaviest.massKg.toFixed(0)} kg**`);
  });

  it.each([
    ['doorwa', 'doorway'],
    ['  lif', 'lift'],
    ['passage stai', 'stair'],
  ])('behind `%s` says whether every piece goes through', (part, way) => {
    const text = at(part);
    const passes = moving!.cards.flatMap(({ ways }) => ways.filter((each) => each.way === way));
    const stuck = passes.filter((each) => each.passes === 'does-not-go').length;
    expect(passes.length).toBe(moving!.cards.length);
    expect(text).toContain(
      stuck === 0 ? '**Every piece of study goes through**' : `**${stuck} of ${passes.length} pieces`,
    );
  });

  it('behind `stands` shows what is free on every side', () => {
    const text = at('  stand');
    for (const { side, reachable } of moving!.sides!) expect(cells(text, side)?.[3]).toBe(reachable ? 'yes' : 'no');
    for (const { id, fix } of moving!.problems.filter(({ id }) => id !== 'panel-does-not-go-through'))
      expect(text, id).toContain(fix.split('`')[0]!.slice(0, 20));
  });

  it('behind an obstacle says whether it is in the way', () => {
    const [beam] = moving!.obstacles;
    expect(at('obstacle bea')).toContain(beam!.collides ? '**In the way of study**' : '**Not in the way of study**');
  });

  it.each(['  floo', '  joist', 'require floor-loa'])('behind `%s` is the load, and that it is no check', (part) => {
    const text = at(part);
    const [first] = build.structure.beside;
    expect(text).toContain(`**${(build.floorLoadPa / 1000).toFixed(1)} kPa**`);
    expect(text).toContain(`${first!.ratio.toFixed(1)} times that`);
    expect(text).toContain(build.structure.words);
  });

  it('behind `mounts` says from where they help', () => {
    const { naturalHz, gainsAboveHz } = study.noise.mounts!;
    expect(at('  mount')).toContain(`**Helps above ${gainsAboveHz.toFixed(0)} Hz**`);
    // A spring passes on less than a rigid contact above the square root of two times its own frequency.
    expect(gainsAboveHz / naturalHz).toBeCloseTo(Math.SQRT2, 6);
  });
});

describe('money, neighbours, hazards', () => {
  it('behind `budget` is the sum, with reserve', () => {
    // 2 × 40 + 60 × 5 + 70, and a tenth on top.
    expect(at('\nbudge')).toMatch(/^\*\*450 EUR\*\*, 495 EUR with reserve for study/);
    expect(at('require cos')).toContain('**450 EUR**, 495 EUR with reserve');
  });

  it('behind an item says whether it is enough', () => {
    const check = study.build.shopping.checks.find(({ items }) => items.includes('plywood'))!;
    expect(check.verdict).toBe('too-few');
    expect(at('item plywoo')).toContain(
      `**too few: 2 bought, ${check.atLeast ? 'at least ' : ''}${check.needed} needed**`,
    );
    expect(at('item screw')).toContain('Taken as typed');
  });

  it.each(['neighbour fla', '  effor', 'require voice-outside <= 30 dBA in fla'])(
    'behind `%s` is what the neighbour hears',
    (part) => {
      const { session } = study.voiceAt.find(({ place }) => place === 'flat')!;
      expect(at(part)).toContain(`${session!.dBA!.value.toFixed(0)} dBA`);
    },
  );

  it('behind what is a hazard says which', () => {
    const alarm = cautions.find(({ id }) => id === 'alarm-not-heard');
    const stove = cautions.find(({ id }) => id === 'combustion-appliance');
    expect(at('  alar')).toContain(alarm!.number!.split(',')[0]!);
    expect(at('appliance stov')).toContain(stove!.ask.slice(0, 30));
  });

  it('behind a variant says what it turns', () => {
    const { requirements: with_ } = view.results!.variants.wide!;
    const met = (all: typeof requirements) => all.filter(({ verdict }) => verdict === 'met').length;
    expect(at('variant wid')).toContain(
      `${met(with_)} of ${with_.length} requirements met, ${met(requirements)} of ${requirements.length} requirements without it`,
    );
  });
});

it('on a word of a changed line that has no answer of its own the variant answers', () => {
  const text = wholeBooth.replace('variant wide { gap = 120 mm }', 'variant wide { study.panels.width = 450 mm }');
  const markdown = hoverAt(cursorAfter('study.pan', text));
  expect(markdown).toMatch(/^\*\*wide\*\*.*\d+ of \d+ requirements met/);
});

it('every line is answered in a few milliseconds', () => {
  const lines = wholeBooth.split('\n');
  const ask = () => {
    for (const [line, text] of lines.entries()) {
      const character = text.search(/\S/);
      if (character >= 0) hover(view, { line, character }, { pictures: true });
    }
  };
  ask();
  const start = performance.now();
  ask();
  expect((performance.now() - start) / lines.length).toBeLessThan(5);
});
