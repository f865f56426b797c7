import type { Material, Sourced } from '@boothwright/language';
// @ts-expect-error: the package ships no types
import MarkdownIt from 'markdown-it';
import { describe, expect, test } from 'vitest';
import {
  assemblyHover,
  boothHover,
  defaultHover,
  equipmentHover,
  keywordHover,
  materialHover,
  neighbourHover,
  openingHover,
  requirementHover,
  sourceHover,
} from '../../src/index.js';
import { nominalHz } from '../fixtures/sample-basics.js';
import { alcove } from '../fixtures/sample-booth.js';
import { requirements } from '../fixtures/sample-requirements.js';
import { sampleResult } from '../fixtures/sample-result.js';
import { shell } from '../fixtures/sample-shell.js';

/** The pictures have tests of their own; here only their place and text count. */
const withoutPictures = (markdown: string | undefined) =>
  `${markdown?.replace(/base64,[A-Za-z0-9+/=]+/g, 'base64,…')}\n`;
const range = { file: 'a.booth', from: 0, to: 1 };
const value = <T>(of: T, origin: Sourced<T>['origin']): Sourced<T> => ({ value: of, origin, range });
const wool: Material = {
  name: 'wool_x',
  title: 'reclaimed | wool',
  nameRange: range,
  range,
  kind: 'porous',
  density: { ...value(38, { kind: 'given' }), tolerance: 3.8 },
  flowResistance: value(240, { kind: 'given', evidence: 'measured', source: 'own rig, 2025' }),
  resistivity: value(9000, { kind: 'catalogue', evidence: 'published', source: 'a handbook (1999), table 3' }),
  lossFactor: value(0.1, {
    kind: 'default',
    name: 'porous-loss-factor',
    evidence: 'from-memory',
    source: 'usual for fibre',
  }),
  source: value('supplier data sheet, 2025', { kind: 'given' }),
  fromCatalogue: false,
};

describe('hover texts', () => {
  const hovers = {
    assembly: assemblyHover('shell', shell, {
      nominalHz,
      defaults: sampleResult.defaults,
      modelPage: (model) => `https://example.invalid/${model.replace(' ', '-')}`,
    }),
    booth: boothHover('alcove', alcove, { nominalHz, requirements }),
    source: sourceHover('tram', 'alcove', alcove, { nominalHz, requirements }),
    impact: sourceHover('footsteps', 'alcove', alcove, { nominalHz }),
    opening: openingHover('entry', 'alcove', alcove, { nominalHz }),
    requirement: requirements.map(requirementHover).join('\n\n---\n\n'),
    material: materialHover(wool),
    default: defaultHover({
      name: 'room-reverberation',
      text: '0.5 s',
      evidence: 'common-practice',
      source: 'furnished bedroom',
    }),
    keyword: keywordHover(
      {
        keyword: 'reverberation',
        parts: [],
        example: 'reverberation 0.5 s',
        documentation: 'Reverberation time of the room around the booth.',
        default: 'room-reverberation',
      },
      [
        {
          name: 'room-reverberation',
          value: 0.5,
          text: '0.5 s',
          evidence: 'common-practice',
          source: 'furnished bedroom',
        },
      ],
    ),
  };

  test.each(Object.entries(hovers))('%s', async (name, markdown) => {
    await expect(withoutPictures(markdown)).toMatchFileSnapshot(`__snapshots__/${name}.txt`);
  });

  test.each(Object.entries(hovers))('%s stays far below the length at which an editor cuts it', (_, markdown) => {
    expect(markdown!.length).toBeLessThan(20_000);
  });

  test('tables are tables: every row has as many cells as the head', () => {
    for (const markdown of Object.values(hovers)) {
      const tables = (markdown ?? '').split('\n\n').filter((block) => block.startsWith('|'));
      for (const table of tables) {
        const cells = table.split('\n').map((row) => row.split(/(?<!\\)\|/).length);
        expect(new Set(cells).size).toBe(1);
      }
    }
  });

  test('names from a text cannot become markup', () => {
    const html = new MarkdownIt({ html: true }).render(
      assemblyHover('<img src=x onerror=alert(1)>', { ...shell, title: '[a](javascript:b) **c** | d' }, { nominalHz }),
    );
    expect(html).not.toMatch(/<img src="?x|<a |<strong>c/);
  });
});

test('neighbourHover(name, ...) tells every effort, or what the text lacks', () => {
  const nursery = neighbourHover('nursery', 'alcove', alcove);
  expect(nursery).toContain('| full shout | 89 dBA | 26 dBA (20 to 32) |');
  expect(nursery).toContain('normal, yours');
  expect(neighbourHover('yard', 'alcove', alcove)).toContain('the text must say');
  expect(neighbourHover('nobody', 'alcove', alcove)).toBeUndefined();
});

test('equipmentHover(name, booth) tells what is heard at the microphone', () => {
  expect(equipmentHover('screen', alcove)).toContain('at the microphone, 0.60 m away: 19 dBA (16 to 22)');
  expect(equipmentHover('nothing', alcove)).toBeUndefined();
});

test('openingHover(name, ...) and sourceHover(name, ...) have no answer for names that are not there', () => {
  expect(openingHover('nothing', 'alcove', alcove, { nominalHz })).toBeUndefined();
  expect(sourceHover('nothing', 'alcove', alcove, { nominalHz })).toBeUndefined();
});
