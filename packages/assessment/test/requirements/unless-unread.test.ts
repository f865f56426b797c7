import { checkSpec, type Level, type Unread } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { assess } from '../fixtures/assessed.js';
import {
  booth,
  budget,
  deck,
  door,
  given,
  place,
  requirement,
  roomTone,
  shell,
  slab,
  spec,
} from '../fixtures/spec-builder.js';

const mass = requirement({ kind: 'mass', text: 'require mass', limit: given(1000) });
const cost = requirement({ kind: 'cost', text: 'require cost', limit: given(1000), currency: 'EUR' });
const stc = requirement({ kind: 'rating', text: 'require stc', rating: 'stc', assembly: slab, limit: given(20) });

function verdicts(part: Unread['part'], name?: string) {
  const unread = [{ part, name, within: [], message: 'a layer could not be read', range: place() }];
  const walls = [shell, deck, slab];
  const { requirements, leavesOut } = assess(
    spec({ walls, requirements: [mass, cost, stc], budget: budget([1, 100]), unread }),
  );
  expect(leavesOut[0]).toContain('errors');
  return requirements.map(({ verdict }) => verdict);
}

const tone = roomTone(60, 'A');
const voice = requirement({
  kind: 'voice-outside',
  where: undefined,
  text: 'require voice-outside',
  limit: given<Level>({ decibels: 80, weighting: 'A' }),
});
const co2 = requirement({ kind: 'co2', text: 'require co2', limit: given(100_000) });
const load = requirement({ kind: 'floor-load', text: 'require floor-load', limit: given(10_000) });

describe('a verdict beside an error in the text', () => {
  it('is withdrawn for the booth when any build-up or material could not be read', () => {
    expect(verdicts('assembly', 'shell')).toEqual(['not-assessed', 'met', 'met']);
    expect(verdicts('assembly', 'slab')).toEqual(['not-assessed', 'met', 'not-assessed']);
    // A layer of a material that could not be read may have gone from any wall.
    expect(verdicts('material', 'of-nobody')).toEqual(['not-assessed', 'met', 'not-assessed']);
    expect(verdicts('use')).toEqual(['not-assessed', 'met', 'not-assessed']);
  });

  it('stands where only a liner of a duct could not be read and nothing of it is asked', () => {
    const text = `use catalog
material liner { kind porous; density 48 kg/m3; resistivity 20 furlongs }
assembly shell { softwood-plywood 12 mm; mineral-wool-40 70 mm; gypsum-board 12.5 mm }
booth box {
  inside 1.5 m x 1.2 m x 2.0 m; walls shell; roof shell; floor shell; panels { width 600 mm }
  vent intake on left { duct 125 mm; run 1.2 m; lined liner 25 mm; fan supply 10 L/s }
  vent exhaust on right { duct 125 mm; run 1.2 m }
}
session { people 1; effort normal; length 60 min }
require co2 <= 9000 ppm
require panel-weight <= 90 kg
`;
    const verdictsOf = (source: string) => {
      const { spec: read } = checkSpec('box.booth', {
        read: (file: string) => (file === 'box.booth' ? { kind: 'text', text: source } : { kind: 'missing' }),
      });
      return assess(read).requirements.map(({ verdict }) => verdict);
    };
    expect(verdictsOf(text.replace('furlongs', 'kPa.s/m2'))).toEqual(['met', 'met']);
    expect(verdictsOf(text)).toEqual(['not-assessed', 'met']);
    // In a wall it may have changed anything.
    expect(verdictsOf(text.replace('mineral-wool-40 70', 'liner 70'))).toEqual(['not-assessed', 'not-assessed']);
  });

  it('is withdrawn for the booth and for the list alone', () => {
    expect(verdicts('booth', 'alcove')).toEqual(['not-assessed', 'met', 'met']);
    expect(verdicts('booth', 'another')).toEqual(['met', 'met', 'met']);
    expect(verdicts('budget')).toEqual(['met', 'not-assessed', 'met']);
  });

  it('is withdrawn everywhere for an error that can reach anything', () => {
    expect(verdicts('let', 'gap')).toEqual(['not-assessed', 'not-assessed', 'not-assessed']);
    expect(verdicts('outside')).toEqual(['not-assessed', 'not-assessed', 'not-assessed']);
  });

  it('is withdrawn by the session and the site where they enter', () => {
    const of = (part: Unread['part']) => {
      const unread = [{ part, name: undefined, within: [], message: 'not a number', range: place() }];
      return assess(spec({ requirements: [mass, tone, voice, co2, load], unread })).requirements.map(
        ({ verdict }) => verdict === 'not-assessed',
      );
    };
    expect(of('require')).toEqual([false, false, false, false, false]);
    // The room supplies the air of the booth.
    expect(of('site')).toEqual([false, true, true, true, false]);
    expect(of('session')).toEqual([false, true, true, true, true]);
  });

  it('is withdrawn when it would be missed as well', () => {
    const unread = [{ part: 'booth' as const, name: 'alcove', within: [], message: 'not a length', range: place() }];
    const light = requirement({ kind: 'mass', text: 'require mass', limit: given(1) });
    const [entry] = assess(spec({ requirements: [light], unread })).requirements;
    expect(entry).toMatchObject({ verdict: 'not-assessed', margin: null, withinRange: false });
  });

  it('stands beside another requirement that could not be read', () => {
    expect(verdicts('require')).toEqual(['met', 'met', 'met']);
  });

  it('names the part and the error, and still shows the value', () => {
    const unread = [
      { part: 'assembly' as const, name: 'shell', within: [], message: 'a thickness is a length', range: place() },
      { part: 'let' as const, name: 'gap', within: [], message: 'an unknown unit', range: place() },
    ];
    const { requirements } = assess(spec({ requirements: [mass], unread }));
    expect(requirements[0]?.explanation).toBe(
      '`assembly shell` has an error in the text (and 1 more part has one), so this cannot be judged until it is mended: a thickness is a length.',
    );
    expect(requirements[0]?.value).not.toBeNull();
  });

  it('adds the error to a verdict that is open for another reason', () => {
    const unread = [{ part: 'booth' as const, name: 'box', within: [], message: 'not a length', range: place() }];
    const [entry] = assess(spec({ booths: [], requirements: [mass], unread })).requirements;
    expect(entry?.explanation).toContain('no booth yet');
    expect(entry?.explanation).toContain('`booth box` has an error');
  });
});

describe('a text with an error, from the text on', () => {
  it('loses no layer into a met verdict', () => {
    const text = `
material board { kind panel; density 650 kg/m3; modulus 3 GPa }
assembly shell { board 18 mm; bord 900 mm; board 12 mm }
booth box { inside 1.3 m x 1.5 m x 1.84 m; walls shell; roof shell; floor shell }
require mass <= 1000 kg
require stc of shell >= 10
`;
    const read = (changed: string) =>
      checkSpec('test.booth', {
        read: (path) =>
          path === 'test.booth' ? { kind: 'text' as const, text: changed } : { kind: 'missing' as const },
      });
    const { requirements, unread } = assess(read(text).spec);
    expect(requirements.map(({ verdict }) => verdict)).toEqual(['not-assessed', 'not-assessed']);
    expect(unread[0]).toMatchObject({ part: 'assembly', name: 'shell' });
    const mended = assess(read(text.replace('bord 900 mm', 'board 9 mm')).spec);
    expect(mended.requirements.map(({ verdict }) => verdict)).toEqual(['met', 'met']);
    expect(mended.unread).toEqual([]);
  });
});

describe('an error in a variant, from the text on', () => {
  it('withdraws the verdicts of that variant and leaves the base', () => {
    const text = `
material board { kind panel; density 650 kg/m3; modulus 3 GPa }
assembly shell { board 18 mm; air 60 mm; board 12 mm }
booth box { inside 1.3 m x 1.5 m x 1.84 m; walls shell; roof shell; floor shell }
require mass <= 1000 kg
variant other { assembly shell { board 18 mm; bord 900 mm } }
`;
    const { spec: checked } = checkSpec('test.booth', {
      read: (path) => (path === 'test.booth' ? { kind: 'text' as const, text } : { kind: 'missing' as const }),
    });
    const { requirements, unread, variants } = assess(checked);
    expect(requirements[0]?.verdict).toBe('met');
    expect(unread).toEqual([]);
    expect(variants.other?.unread.length).toBeGreaterThan(0);
    expect(variants.other?.requirements[0]?.verdict).toBe('not-assessed');
  });
});

describe('what rests on absence, beside an error in the text', () => {
  const unread = [{ part: 'booth' as const, name: 'alcove', within: [], message: 'not a length', range: place() }];
  const bare = booth(shell, { doors: [], vents: [], linings: [], faces: { ...booth().faces, roof: undefined } });

  it('is no finding', () => {
    const ids = (errors: readonly Unread[]) =>
      assess(spec({ booths: [bare], unread: errors })).findings.map(({ id }) => id);
    expect(ids([])).toContain('no-fresh-air');
    expect(ids([])).toContain('leak-caps-wall');
    expect(ids(unread)).not.toContain('no-fresh-air');
    expect(ids(unread)).not.toContain('leak-caps-wall');
  });

  it('is a caution that speaks of the text', () => {
    const hazards = (id: string) =>
      assess(spec({ booths: [bare], unread }))
        .cautions.filter((entry) => entry.id === id)
        .map(({ hazard }) => hazard);
    expect(hazards('no-door')[0]).toContain('could be read: the text has errors');
    expect(hazards('no-fan')[0]).toContain('could be read: the text has errors');
    const open = booth(shell, { doors: [door(shell, { swing: undefined, lock: undefined })] });
    const swing = assess(spec({ booths: [open], unread })).cautions.find(({ id }) => id === 'door-swing-not-stated');
    expect(swing?.hazard).toContain('could not be read');
  });

  it('is not in what is left out', () => {
    const lines = (errors: readonly Unread[]) => assess(spec({ booths: [bare], unread: errors })).leavesOut.join(' ');
    expect(lines([])).toContain('No build-up is given for roof');
    expect(lines(unread)).not.toContain('No build-up is given for roof');
  });
});

describe('an error in one line of a block', () => {
  const every = `
require room-tone <= 60 dBA
require voice-outside <= 90 dBA
require reverberation <= 9 s at 4 kHz
require co2 <= 100000 ppm
require temperature-rise <= 90 K
require mass <= 9000 kg
require floor-load <= 90 kPa
require height <= 9 m
require cost <= 9000 EUR`;
  const text = (lines: { booth?: string; door?: string; site?: string; requirements?: string }) => `use catalog
assembly shell { softwood-plywood 12 mm; frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }; gypsum-board 12.5 mm }
site "room" { noise street 55 dBA like road-traffic; room 4 m x 3.6 m x 2.5 m; ${lines.site ?? ''} }
booth small {
  inside 1.2 m x 1.4 m x 2.0 m
  walls shell; roof shell; floor shell
  door entry on front { size 660 mm x 1900 mm; leaf solid-core 44 mm; ${lines.door ?? ''} }
  vent in on left { duct 125 mm; run 1 m; fan supply 10 L/s sound-power octave 63 Hz 20 dB, 125 Hz 20 dB, 250 Hz 20 dB, 500 Hz 20 dB, 1 kHz 20 dB, 2 kHz 20 dB, 4 kHz 20 dB }
  vent out on right { duct 125 mm; run 1 m }
  ${lines.booth ?? ''}
}
session { people 1; length 60 min }
budget { item sheets 10 at 40 EUR }
${every}
${lines.requirements ?? ''}`;
  const open = (lines: Parameters<typeof text>[0]) => {
    const { spec: checked, problems } = checkSpec('a.booth', {
      read: (path) => (path === 'a.booth' ? { kind: 'text', text: text(lines) } : { kind: 'missing' }),
    });
    expect(problems.some(({ severity }) => severity === 'error')).toBe(true);
    return assess(checked)
      .requirements.filter(({ verdict }) => verdict === 'not-assessed')
      .map(({ kind }) => kind);
  };

  it('opens what depends on that line and nothing else', () => {
    expect(open({ booth: 'mic at 9 m, 0.6 m, 1.5 m { distance 150 mm }' })).toEqual(['room-tone', 'reverberation']);
    expect(open({ booth: 'contents 20 dB' })).toEqual(['floor-load']);
    expect(open({ door: 'swing outwrd' })).toEqual([]);
    expect(open({ door: 'gap perimeter 3 kg' })).toEqual(['room-tone', 'voice-outside']);
    expect(open({ site: 'noise other 45 dBA like road-trafic' })).toEqual(['room-tone']);
    expect(open({ site: 'joists along sideways' })).toEqual([]);
  });

  it('opens everything of the booth where the line itself is not understood, or a block has swallowed the rest', () => {
    expect(open({ booth: 'mik at 0.6 m, 0.6 m, 1.5 m' })).toHaveLength(8);
    expect(open({ booth: 'mic at 0.6 m, 0.6 m, 1.5 m { distance 150 mm' }).length).toBeGreaterThanOrEqual(8);
  });

  it('leaves every other requirement standing when one is not understood', () => {
    expect(open({ requirements: 'require air >= 8 L/s' })).toEqual([]);
    expect(open({ requirements: 'require isolation >= 20 dB against sreet' })).toEqual([]);
  });
});
