import type { Effort } from '@boothwright/language';
import { expect, it } from 'vitest';
import { defaultsUsed } from '../src/defaults-used.js';
import { assumed, booth, door, given, quietFan, session, shell, site, spec, vent } from './fixtures/spec-builder.js';

it('defaultsUsed(spec) lists each default that entered with its source', () => {
  const doors = [door(shell, { thresholdGap: assumed(3e-3, 'door-threshold-gap') })];
  const used = defaultsUsed(
    spec({ booths: [booth(shell, { doors })], session: session({ people: assumed(1, 'people') }) }),
  );
  const names = used.map((entry) => entry.name);
  expect(names).toContain('door-threshold-gap');
  expect(names).toContain('people');
  expect(used.find((entry) => entry.name === 'door-threshold-gap')).toMatchObject({
    value: '0.003',
    evidence: 'common-practice',
    source: 'a named default',
  });
});

it('defaultsUsed(spec) lists the assumptions of the assessment itself where they enter', () => {
  const names = (changes: Parameters<typeof spec>[0]) => defaultsUsed(spec(changes)).map((entry) => entry.name);
  expect(names({})).toEqual([
    'reference-panel',
    'microphone-noise-shape',
    'person-absorption',
    'wall-conductivities',
    'board-heat',
    'mouth-place',
    'strong-reflection',
    'least-from-wall',
  ]);
  expect(names({ booths: [], site: undefined })).toEqual(['reference-panel', 'air-without-site']);
  expect(names({ walls: [], booths: [], site: site() })).toEqual([]);
  expect(names({ booths: [], session: session({ effort: given<Effort>('casual') }) })).toContain('casual-speech');
  expect(names({ session: session({ effort: given<Effort>('shout') }) })).toContain('full-shout');
  const fanned = (fan: typeof quietFan) => names({ booths: [booth(shell, { vents: [vent('in', { fan })] })] });
  expect(fanned(quietFan)).toContain('fan-place');
  expect(fanned(quietFan)).toContain('vent-place');
  expect(names({})).not.toContain('vent-place');
  expect(fanned(quietFan)).toEqual(
    expect.arrayContaining(['duct-roughness', 'discharge-coefficient', 'duct-sheet', 'plain-duct-end']),
  );
  expect(names({})).not.toContain('duct-roughness');
  expect(fanned({ ...quietFan, place: given<'inside'>('inside') })).not.toContain('fan-place');
});
