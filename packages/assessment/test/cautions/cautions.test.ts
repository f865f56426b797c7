import type { Booth } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { assess, cautionsById, onlyBooth } from '../fixtures/assessed.js';
import { smallBooth } from '../fixtures/booth-text.js';
import {
  assembly,
  booth,
  byMass,
  door,
  frame,
  given,
  glass,
  lining,
  place,
  quietFan,
  session,
  sheet,
  shell,
  site,
  spec,
  vent,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

const airy = booth(shell, { vents: [vent('intake', { fan: quietFan }), vent('exhaust')] });
const withDoor = (changes: Parameters<typeof door>[1]): Booth => booth(shell, { doors: [door(shell, changes)] });

function boiler(flue: 'open-flued' | 'room-sealed' | 'unknown') {
  return { name: 'boiler', nameRange: place(), range: place(), flue: given(flue), where: undefined };
}

describe('combustion-appliance', () => {
  it('is a stop for a fan beside an open flue or one that is not stated', () => {
    for (const flue of ['open-flued', 'unknown'] as const) {
      const found = assess(spec({ booths: [airy], site: site({ appliances: [boiler(flue)] }) })).cautions;
      expect(found[0]).toMatchObject({ id: 'combustion-appliance', severity: 'stop' });
    }
  });

  it('is a caution without a fan or for a room-sealed appliance, and silent without an appliance', () => {
    const of = (booths: Booth[], flue: 'open-flued' | 'room-sealed') =>
      cautionsById(spec({ booths, site: site({ appliances: [boiler(flue)] }) }), 'combustion-appliance')[0]?.severity;
    expect(of([booth()], 'open-flued')).toBe('caution');
    expect(of([airy], 'room-sealed')).toBe('caution');
    expect(cautionsById(spec({ booths: [airy] }), 'combustion-appliance')).toEqual([]);
  });
});

describe('no-fan, fan-off and stale-air', () => {
  it('no-fan gives minutes, and is silent with a fan', () => {
    expect(cautionsById(spec(), 'no-fan')[0]?.number).toContain('1000 ppm after 3.7 min');
    expect(cautionsById(spec({ booths: [airy] }), 'no-fan')).toEqual([]);
  });

  it('fan-off says what happens when the fan stops', () => {
    expect(cautionsById(spec({ booths: [airy] }), 'fan-off')[0]?.number).toContain('with the fan off: 1000 ppm');
    expect(cautionsById(spec(), 'fan-off')).toEqual([]);
  });

  it('stale-air speaks when the fan does not keep up', () => {
    expect(cautionsById(spec({ booths: [airy], session: session({ people: given(3) }) }), 'stale-air')).toHaveLength(1);
    expect(cautionsById(spec({ booths: [airy] }), 'stale-air')).toEqual([]);
  });
});

describe('doors', () => {
  it('are silent when they open outwards without a lock', () => {
    const ids = assess(spec()).cautions.map((caution) => caution.id);
    expect(ids.filter((id) => id.startsWith('door') || id === 'no-door')).toEqual([]);
  });

  it('speak for an inward swing, a lock, a latch, and what is not stated', () => {
    const idsOf = (changed: Booth) =>
      assess(spec({ booths: [changed] }))
        .cautions.map((caution) => caution.id)
        .filter((id) => id.startsWith('door') || id === 'no-door');
    expect(idsOf(withDoor({ swing: given<'inward'>('inward') }))).toEqual(['door-opens-inward']);
    expect(idsOf(withDoor({ lock: given<'lock'>('lock') }))).toEqual(['door-lock']);
    expect(idsOf(withDoor({ lock: given<'latch'>('latch') }))).toEqual(['door-latch']);
    expect(idsOf(withDoor({ swing: undefined, lock: undefined }))).toEqual([
      'door-swing-not-stated',
      'door-lock-not-stated',
    ]);
    expect(idsOf(booth(shell, { doors: [] }))).toEqual(['no-door']);
  });
});

describe('alarm-not-heard', () => {
  it('is 85 dBA less the predicted difference near 3 kHz', () => {
    const [caution] = cautionsById(spec(), 'alarm-not-heard');
    const difference = Number(/is (\d+) dB/.exec(caution?.why ?? '')?.[1]);
    expect(Number(/^(\d+) dBA inside/.exec(caution?.number ?? '')?.[1])).toBe(85 - difference);
  });

  it('is silent for an open box', () => {
    const faces = { ...booth().faces, roof: undefined, front: undefined, left: undefined };
    const open = booth(shell, { faces, linings: [], doors: [] });
    expect(cautionsById(spec({ booths: [open] }), 'alarm-not-heard')).toEqual([]);
  });
});

describe('floor-load and timber-floor', () => {
  it('floor-load speaks above a generic design load and names the stated limit', () => {
    const floor = { kind: given<'timber'>('timber'), limit: given(1500) };
    const [caution] = cautionsById(spec({ site: site({ floor }) }), 'floor-load');
    expect(caution?.number).toContain('stated limit 1.50 kPa');
    expect(caution?.why).toContain('not a check');
  });

  it('floor-load is silent for a light booth', () => {
    const thin = assembly('thin', byMass(vinyl, 3));
    const face = { assembly: thin, range: place() };
    const light = booth(thin, { faces: { front: face, back: face, left: face, right: face, roof: face, floor: face } });
    expect(onlyBooth(spec({ walls: [thin], booths: [light] })).build.floorLoadPa).toBeLessThan(1440);
    expect(cautionsById(spec({ walls: [thin], booths: [light] }), 'floor-load')).toEqual([]);
  });

  it('timber-floor speaks for timber and unknown, not for concrete or when no floor is named', () => {
    const on = (kind: 'timber' | 'unknown' | 'concrete') =>
      cautionsById(spec({ site: site({ floor: { kind: given(kind), limit: undefined } }) }), 'timber-floor');
    expect(on('timber')).toHaveLength(1);
    expect(on('unknown')).toHaveLength(1);
    expect(on('concrete')).toEqual([]);
    expect(cautionsById(spec(), 'timber-floor')).toEqual([]);
  });
});

describe('glazing, fire class, fibre, lifting, tip-over, electricity', () => {
  it('glazing weighs a pane of glass and is silent for other panes', () => {
    const window = (pane: ReturnType<typeof assembly>) => ({
      name: 'view',
      nameRange: place(),
      range: place(),
      face: 'front' as const,
      faceRange: place(),
      size: { width: given(0.4), height: given(0.5) },
      offset: undefined,
      pane,
    });
    const at = (pane: ReturnType<typeof assembly>) =>
      cautionsById(spec({ booths: [booth(shell, { windows: [window(pane)] })] }), 'glazing');
    expect(at(assembly('pane', sheet(glass, 0.006)))[0]?.number).toBe('3.0 kg of pane');
    expect(at(shell)).toEqual([]);
  });

  it('fire-class-not-stated names soft materials without a class only', () => {
    expect(cautionsById(spec(), 'fire-class-not-stated')[0]?.hazard).toContain('wool');
    const classed = { ...wool, fireClass: given('as on the sheet') };
    const stated = booth(shell, { linings: [lining(['left'], 1, sheet(classed, 0.05))] });
    expect(cautionsById(spec({ booths: [stated] }), 'fire-class-not-stated')).toEqual([]);
  });

  it('bare-fibre speaks for fibre without cloth', () => {
    expect(cautionsById(spec(), 'bare-fibre')).toHaveLength(1);
    expect(cautionsById(spec({ booths: [booth(shell, { linings: [] })] }), 'bare-fibre')).toEqual([]);
  });

  it('lifting lists parts above 25 kg', () => {
    const [caution] = cautionsById(spec(), 'lifting');
    expect(caution?.number).toMatch(/left \d+ kg/);
    expect(caution?.number).not.toContain('linings');
  });

  it('tip-over gives the angle of the thinnest wall, atan(t / h)', () => {
    const angle = (Math.atan(0.0945 / 2) * 180) / Math.PI;
    expect(cautionsById(spec(), 'tip-over')[0]?.number).toContain(`${angle.toFixed(1)} degrees`);
    const thick = assembly('thick', sheet(vinyl, 0), frame(0.5), byMass(vinyl, 10));
    expect(cautionsById(spec({ walls: [thick], booths: [booth(thick)] }), 'tip-over')).toEqual([]);
  });

  it('lifting and tip-over look at panels where the faces are cut into them', () => {
    const cut = smallBooth({ booth: 'panels { width 600 mm }' });
    const { panels } = onlyBooth(cut).build;
    const number = cautionsById(cut, 'lifting')[0]?.number ?? '';
    expect(number).not.toMatch(/left|roof/);
    for (const { number: panel, massKg } of panels) expect(number.includes(`panel ${panel} `)).toBe(massKg > 25);
    const least = Math.min(...panels.flatMap(({ tipAngleDegrees }) => tipAngleDegrees ?? []));
    expect(cautionsById(cut, 'tip-over')[0]?.number).toContain(`${least.toFixed(1)} degrees`);
  });

  it('alarm-not-heard takes the level that the site states, dB for dB', () => {
    const inside = (alarm?: number) => {
      const stated = alarm === undefined ? {} : { alarm: given({ decibels: alarm, weighting: 'A' as const }) };
      return Number.parseInt(cautionsById(spec({ site: site(stated) }), 'alarm-not-heard')[0]?.number ?? '', 10);
    };
    expect(inside(65)).toBe(inside() - 20);
    expect(inside(95)).toBe(inside() + 10);
  });

  it('electricity-and-heat speaks for watts inside', () => {
    expect(cautionsById(spec({ session: session({ heat: given(30) }) }), 'electricity-and-heat')[0]?.number).toContain(
      '30 W',
    );
    expect(cautionsById(spec(), 'electricity-and-heat')).toEqual([]);
  });
});

describe('cautionsOf(context)', () => {
  it('is empty without a booth and an appliance', () => {
    expect(assess(spec({ booths: [] })).cautions).toEqual([]);
  });

  it('defers to somebody in every caution and pronounces nothing fit', () => {
    const floor = { kind: given<'timber'>('timber'), limit: given(1500) };
    const everything = spec({
      booths: [airy, { ...withDoor({ swing: undefined, lock: undefined }), name: 'second' }],
      site: site({ floor, appliances: [boiler('open-flued')] }),
      session: session({ heat: given(30), people: given(4) }),
    });
    for (const caution of assess(everything).cautions) {
      expect(caution.ask).toMatch(/\b(ask|have|show|measure)\b|alarm/i);
      expect(JSON.stringify(caution)).not.toMatch(/\b(safe|compliant|approved)\b/i);
    }
  });
});
