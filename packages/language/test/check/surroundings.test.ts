import { format } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const site = (lines: string, more = ''): string =>
  `use catalog\nassembly wall { gypsum-board 12.5 mm }\nsite { room 4 m x 3 m x 2.5 m\n${lines}\n}\n${more}`;
const siteOf = (lines: string) => checkText(site(lines)).spec.site!;

describe('the air and the surfaces of a site', () => {
  it('are read in the units of the model', () => {
    const text = site(
      'joists along depth\ncold-surface 8 degC\noutdoor-air 450 ppm\nfresh-air 6 L/s\noccupants 2\nalarm 85 dBA',
    );
    const { spec, problems } = checkText(text);
    expect(problems).toEqual([]);
    expect(spec.site).toMatchObject({
      joists: { value: 'depth' },
      coldSurface: { value: 8 },
      outdoorAir: { value: 450 },
      freshAir: { value: 0.006 },
      occupants: { value: 2 },
      alarm: { value: { decibels: 85, weighting: 'A' } },
    });
  });

  it('are not assumed where they are unknown', () => {
    const { joists, coldSurface, freshAir, alarm } = siteOf('');
    expect([joists, coldSurface, freshAir, alarm]).toEqual([undefined, undefined, undefined, undefined]);
  });

  it('tell what is assumed of the air only where something depends on it', () => {
    const assumed = (text: string): string[] =>
      checkText(text).values.flatMap(({ value: { origin } }) => (origin.kind === 'default' ? [origin.name] : []));
    const told = (text: string): string[] => assumed(text).filter((name) => /^(outdoor-air|occupants)$/.test(name));
    expect(told(site(''))).toEqual([]);
    expect(told(site('fresh-air 6 L/s'))).toEqual(['outdoor-air', 'occupants']);
    const out =
      'booth b { inside 1 m x 1 m x 2 m; walls wall; roof wall; floor wall\nvent v on left { duct 100 mm; run 1 m; opens-to outdoors } }';
    expect(told(site('', out))).toEqual(['outdoor-air']);
    expect(siteOf('').occupants).toMatchObject({ value: 0, origin: { name: 'occupants' } });
  });

  it('cannot be colder than they are warm', () => {
    const result = checkText(site('temperature 18 degC; cold-surface 20 degC'));
    expect(result.problems.map(({ id, severity }) => [id, severity])).toEqual([['cold-surface-warm', 'warning']]);
    expect(underlined(result)).toBe('20 degC');
  });
});

describe('the hours of a noise', () => {
  const spans = (hours: string) => siteOf(`noise n 50 dBA like pink { hours ${hours} }`).sources[0]!.hours?.value;
  const hour = 3600;

  it('are seconds after midnight, over midnight too', () => {
    expect(spans('06:00 to 22:00, 23:30 to 2:00')).toEqual([
      { from: 6 * hour, to: 22 * hour },
      { from: 23.5 * hour, to: 2 * hour },
    ]);
    expect(spans('0:00 to 24:00')).toEqual([{ from: 0, to: 24 * hour }]);
    expect(spans('24:00 to 6:15')).toEqual([{ from: 0, to: 6.25 * hour }]);
  });

  it('may be said of an impact, and are any hour when they are not', () => {
    const { sources } = siteOf(
      'impact steps "from above" { hours 7:00 to 9:00 }\nimpact pump\nnoise n 50 dBA like pink',
    );
    expect(sources.map(({ hours }) => hours?.value)).toEqual([
      [{ from: 7 * hour, to: 9 * hour }],
      undefined,
      undefined,
    ]);
  });

  it('that begin and end at once are no hours', () => {
    const result = checkText(site('noise n 50 dBA like pink { hours 6:00 to 06:00 }'));
    expect(result.problems.map(({ id }) => id)).toEqual(['hours-empty']);
    expect(result.spec.site!.sources[0]!.hours).toBeUndefined();
    // Midnight has two names, and a day from one to the other is the whole of it in one order only.
    for (const never of ['24:00 to 0:00', '24:00 to 24:00', '0:00 to 0:00'])
      expect(checkText(site(`noise n 50 dBA like pink { hours ${never} }`)).problems.map(({ id }) => id)).toEqual([
        'hours-empty',
      ]);
  });

  it.each([
    ['25:00', '25:00', /no time of day: a day goes from 0:00 to 24:00/],
    ['24:01', '24:01', /a day goes from 0:00 to 24:00/],
    ['6:70', '6:70', /an hour has minutes from 00 to 59/],
    ['6:5', '6:5', /the minutes have two digits/],
    ['6 h', '6 h', /expected a time of day such as `06:00`, found `6 h`/],
    ['6', '6', /expected a time of day such as `06:00`, found `6`/],
    ['6.30', '6.30', /found `6.30`/],
    ['6 pm', '6 pm', /found `6 pm`/],
    ['6:30 pm', '6:30 pm', /found `6:30 pm`/],
    ['noon', 'noon', /expected a time of day such as `06:00`, found `noon`/],
  ])('have a time of day: `%s` is told at the token', (typed, place, message) => {
    const result = checkText(site(`noise n 50 dBA like pink { hours ${typed} to 22:00 }`));
    expect(result.problems).toHaveLength(1);
    expect(underlined(result)).toBe(place);
    expect(result.problems[0]!.message).toMatch(message);
  });

  it.each([
    ['6 pm to 22:00', 'write `18:00`'],
    ['6:30 am to 22:00', 'write `6:30`'],
    ['12 am to 22:00', 'write `0:00`'],
    ['6.30 to 22:00', 'write `6:30`'],
    ['6 h to 22:00', 'write `6:00`'],
    ['06:00-22:00', 'write it like `06:00 to 22:00`'],
    ['06:00', 'write it like `06:00 to 22:00`'],
  ])('say what to write for `%s`', (hours, hint) => {
    expect(checkText(site(`noise n 50 dBA like pink { hours ${hours} }`)).problems[0]!.hint).toBe(hint);
  });

  it('keep their line in a layout that does not change again', () => {
    const once = format('site{\nnoise n 50 dBA like pink{hours 6:00   to 22:00 ,23:00 to 2:00}\n}\n');
    expect(once).toBe('site {\n  noise n 50 dBA like pink { hours 6:00 to 22:00, 23:00 to 2:00 }\n}\n');
    expect(format(once)).toBe(once);
  });
});

describe('passages, obstacles and appliances', () => {
  it('are read with what is assumed of a turn', () => {
    const { passages, obstacles, appliances } = siteOf(
      'passage stair "cellar stair" { width 0.80 m; headroom 1.90 m; turn quarter; onto 0.90 m }\npassage hall { width 1.1 m }\nobstacle pipe at 0 m, 0 m, 1.98 m { size 4.00 m x 0.08 m x 0.10 m }\nappliance boiler open-flued next-room\nappliance stove room-sealed',
    );
    expect(passages).toMatchObject([
      {
        name: 'stair',
        title: 'cellar stair',
        width: { value: 0.8 },
        headroom: { value: 1.9 },
        turn: { value: 'quarter' },
        onto: { value: 0.9 },
      },
      { name: 'hall', headroom: undefined, turn: { value: 'none', origin: { name: 'passage-turn' } }, onto: undefined },
    ]);
    expect(obstacles).toMatchObject([
      {
        name: 'pipe',
        position: { x: { value: 0 }, z: { value: 1.98 } },
        size: { width: { value: 4 }, height: { value: 0.1 } },
      },
    ]);
    expect(appliances.map(({ where }) => where?.value)).toEqual(['next-room', undefined]);
  });

  it.each([
    ['passage p { width 0.3 m }', 'value-unusual', '0.3 m'],
    ['passage p { width 800 m }', 'value-implausible', '800 m'],
    ['passage p { width 0.8 m; onto 0.9 m }', 'fact-without-effect', '0.9 m'],
    ['passage p { headroom 2 m }', 'fact-missing', 'passage p'],
    ['passage p { width 1 m }\npassage p { width 2 m }', 'name-twice', 'p'],
    ['obstacle o at 3.9 m, 0 m, 0 m { size 0.2 m x 0.2 m x 1 m }', 'obstacle-outside', '3.9 m'],
    ['obstacle o at -0.1 m, 0 m, 0 m { size 0.2 m x 0.2 m x 1 m }', 'obstacle-outside', '-0.1 m'],
    [
      'obstacle o at 0 m, 0 m, 0 m { size 0.2 m x 0.2 m x 1 m }\nobstacle o at 1 m, 0 m, 0 m { size 0.2 m x 0.2 m x 1 m }',
      'name-twice',
      'o',
    ],
    ['appliance a unknown\nappliance a unknown', 'name-twice', 'a'],
  ])('`%s` is told', (lines, id, place) => {
    const result = checkText(site(lines));
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });

  it('an obstacle that just touches the walls stays inside', () => {
    expect(problemIds(site('obstacle o at 3.8 m, 2.8 m, 0 m { size 0.2 m x 0.2 m x 2.5 m }'))).toEqual([]);
  });
});

describe('a neighbour', () => {
  it('is read with what separates it', () => {
    const { neighbours } = siteOf(
      'neighbour flat "next door" beside { through wall; area 8 m2; volume 30 m3; reverberation 0.4 s }\nneighbour yard outdoors { loss octave 125 Hz 20 dB; distance 5 m }',
    );
    expect(neighbours).toMatchObject([
      {
        name: 'flat',
        title: 'next door',
        side: { value: 'beside' },
        separation: { kind: 'assembly', assembly: { name: 'wall' } },
        area: { value: 8 },
        volume: { value: 30 },
        reverberation: { value: 0.4 },
      },
      {
        name: 'yard',
        side: { value: 'outdoors' },
        separation: { kind: 'loss', loss: { value: { grid: 'octave', values: [{ hz: 125, value: 20 }] } } },
        distance: { value: 5 },
      },
    ]);
  });

  it.each([
    ['neighbour n above', 'neighbour-unassessable', 'neighbour n above'],
    ['neighbour n above { area 10 m2 }', 'neighbour-unassessable', 'neighbour n above'],
    ['neighbour n above { through wall; loss octave 125 Hz 20 dB }', 'separation-twice', 'through wall'],
    // The floor of the room has 12 m2, its largest wall 10 m2.
    ['neighbour n above { through wall; area 13 m2 }', 'area-too-large', '13 m2'],
    ['neighbour n beside { through wall; area 11 m2 }', 'area-too-large', '11 m2'],
    ['neighbour n beside { through wall; area 900 m2 }', 'value-unusual', '900 m2'],
    ['neighbour n beside { through wall; volume 0.5 m3 }', 'value-unusual', '0.5 m3'],
    ['neighbour n beside { through wall; distance 4 m }', 'fact-without-effect', 'distance 4 m'],
    ['neighbour n outdoors { through wall; volume 30 m3 }', 'fact-without-effect', 'volume 30 m3'],
    ['neighbour n above { through wall }\nneighbour n below { through wall }', 'name-twice', 'n'],
    ['neighbour n above { through wal }', 'unknown-name', 'wal'],
  ])('`%s` is told', (lines, id, place) => {
    const result = checkText(site(lines));
    expect(result.problems[0]!.id).toBe(id);
    expect(underlined(result)).toBe(place);
  });

  it('without anything between is a warning, so that the rest is still judged', () => {
    const { problems, spec } = checkText(site('neighbour n above'));
    expect(problems.map(({ severity }) => severity)).toEqual(['warning']);
    expect(spec.site!.neighbours[0]).toMatchObject({ name: 'n', separation: undefined });
    expect(spec.unread).toEqual([]);
  });

  it('is found by a requirement, and a misspelt one is told with what was meant', () => {
    const lines = 'neighbour nursery above { through wall }';
    const { spec, problems } = checkText(
      site(lines, 'require voice-outside <= 27 dBA in nursery\nrequire voice-outside <= 40 dBA\n'),
    );
    expect(problems).toEqual([]);
    expect(spec.requirements).toMatchObject([{ kind: 'voice-outside', where: 'nursery' }, { where: undefined }]);
    const wrong = checkText(site(lines, 'require voice-outside <= 27 dBA in nursry\n'));
    expect(wrong.problems).toMatchObject([{ id: 'unknown-name', hint: 'did you mean `nursery`?' }]);
    expect(underlined(wrong)).toBe('nursry');
    // A limit at a place that is not there must not turn into a limit at another.
    expect(wrong.spec.requirements).toEqual([]);
  });

  it('has its references found', () => {
    const { symbols } = checkText(
      site('neighbour nursery above { through wall }', 'require voice-outside <= 27 dBA in nursery\n'),
    );
    const entry = symbols.symbols.find(({ kind }) => kind === 'neighbour')!;
    expect([entry.name, entry.references.length]).toEqual(['nursery', 1]);
    const wall = symbols.symbols.find(({ name }) => name === 'wall')!;
    expect(wall.references).toHaveLength(1);
  });
});

describe('a variant of a site', () => {
  const base = site(
    'fresh-air 6 L/s\nnoise tram "on the street" 60 dBA like road-traffic { hours 6:00 to 22:00 }\npassage stair { width 0.8 m }\nobstacle pipe at 0 m, 0 m, 2 m { size 1 m x 0.1 m x 0.1 m }\nneighbour flat beside { through wall; area 8 m2 }\nappliance boiler open-flued',
  );
  const variantOf = (change: string) => {
    const { spec, problems } = checkText(`${base}variant v { ${change} }\n`);
    return { site: spec.variants[0]!.spec.site!, problems: problems.map(({ id }) => id) };
  };

  it.each([
    ['site.fresh-air = 12 L/s', { freshAir: { value: 0.012 } }],
    ['site.alarm = 90 dBA', { alarm: { value: { decibels: 90 } } }],
    [
      'site.tram = 66 dBA like pink',
      {
        sources: [
          { title: 'on the street', reading: { value: { decibels: 66 } }, hours: { value: [{ from: 21_600 }] } },
        ],
      },
    ],
    [
      'site.tram.reading = 66 dBA',
      { sources: [{ reading: { value: { decibels: 66 } }, shape: { value: 'road-traffic' } }] },
    ],
    ['site.tram.hours = 8:00 to 9:00', { sources: [{ hours: { value: [{ from: 28_800, to: 32_400 }] } }] }],
    ['site.stair.width = 0.7 m', { passages: [{ width: { value: 0.7 } }] }],
    ['site.stair.turn = half', { passages: [{ turn: { value: 'half' } }] }],
    ['site.pipe.z = 1.9 m', { obstacles: [{ position: { z: { value: 1.9 } } }] }],
    ['site.pipe.size.height = 0.2 m', { obstacles: [{ size: { height: { value: 0.2 } } }] }],
    ['site.flat.area = 6 m2', { neighbours: [{ area: { value: 6 } }] }],
    ['site.boiler.where = elsewhere', { appliances: [{ where: { value: 'elsewhere' } }] }],
  ])('makes `%s`', (change, expected) => {
    const { site: changed, problems } = variantOf(change);
    expect(problems).toEqual([]);
    expect(changed).toMatchObject(expected);
  });

  it('tells a wrong hour and a fact that is not there', () => {
    expect(variantOf('site.tram.hours = 25:00 to 9:00').problems).toEqual(['no-such-time']);
    expect(variantOf('site.stair.with = 1 m').problems).toEqual(['unknown-name']);
  });
});
