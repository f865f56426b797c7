import type { Appliance, Vent } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { cautionsById } from '../fixtures/assessed.js';
import { assumed, booth, given, place, quietFan, shell, site, spec, vent } from '../fixtures/spec-builder.js';

type Direction = 'supply' | 'exhaust';
type OpensTo = Vent['opensTo']['value'];

function boiler(changes: Partial<Appliance> = {}): Appliance {
  return {
    name: 'boiler',
    nameRange: place(),
    range: place(),
    flue: given<Appliance['flue']['value']>('open-flued'),
    where: given<'same-room' | 'next-room' | 'elsewhere'>('next-room'),
    ...changes,
  };
}

function severityOf(direction: Direction, fanTo: OpensTo, passiveTo: OpensTo, appliance = boiler()) {
  const vents = [
    vent('driven', { fan: { ...quietFan, direction: given<Direction>(direction) }, opensTo: given<OpensTo>(fanTo) }),
    vent('passive', { opensTo: given<OpensTo>(passiveTo) }),
  ];
  const text = spec({ booths: [booth(shell, { vents })], site: site({ appliances: [appliance] }) });
  return cautionsById(text, 'combustion-appliance')[0]?.severity;
}

// Balance of the air of the room: what the booth takes from it and what it gives back.
describe('combustion with the way of the air stated', () => {
  it('stops an exhaust fan that takes the air of the room elsewhere', () => {
    expect(severityOf('exhaust', 'next-room', 'room')).toBe('stop');
    expect(severityOf('exhaust', 'outdoors', 'room')).toBe('stop');
    expect(severityOf('supply', 'room', 'outdoors')).toBe('stop');
  });

  it('stops air from the room of the appliance, whichever way the fan blows', () => {
    expect(severityOf('supply', 'appliance-room', 'room')).toBe('stop');
    expect(severityOf('exhaust', 'room', 'appliance-room')).toBe('stop');
  });

  it('only cautions where the room gains air or keeps it', () => {
    expect(severityOf('supply', 'next-room', 'room')).toBe('caution');
    expect(severityOf('supply', 'outdoors', 'outdoors')).toBe('caution');
    expect(severityOf('exhaust', 'room', 'room')).toBe('caution');
  });

  it('only cautions for a flame elsewhere in the house or with a sealed flue', () => {
    const elsewhere = boiler({ where: given<'same-room' | 'next-room' | 'elsewhere'>('elsewhere') });
    expect(severityOf('exhaust', 'next-room', 'room', elsewhere)).toBe('caution');
    const sealed = boiler({ flue: given<Appliance['flue']['value']>('room-sealed') });
    expect(severityOf('exhaust', 'next-room', 'room', sealed)).toBe('caution');
  });

  it('stops where it is only assumed that the vents open to the room', () => {
    const vents = [
      vent('driven', {
        fan: { ...quietFan, direction: given<Direction>('exhaust') },
        opensTo: assumed<OpensTo>('room', 'vent-opens-to'),
      }),
      vent('passive'),
    ];
    const text = spec({ booths: [booth(shell, { vents })], site: site({ appliances: [boiler()] }) });
    expect(cautionsById(text, 'combustion-appliance')[0]).toMatchObject({
      severity: 'stop',
      number: 'fan of 10.0 L/s, where the vents open to is not stated, open-flued appliance',
    });
  });
});
