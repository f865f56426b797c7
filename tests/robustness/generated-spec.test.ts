import { type BoothSpec, checkSpec, type SourceAnswer } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { generatedSpec } from '../bench/latency/generated-spec.js';
import { jsonDocument, typeScriptDocument, yamlDocument } from '../bench/latency/neighbour-documents.js';

const check = (text: string) =>
  checkSpec('generated.booth', {
    read: (path): SourceAnswer => (path === 'generated.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
const thicknesses = (spec: BoothSpec, name: string): string =>
  JSON.stringify(spec.assemblies.get(name)?.layers, (key, value) => (/range/i.test(key) ? undefined : value));
const lineCount = (text: string): number => text.split('\n').length - 1;

describe('the spec that the speed of the editor is measured on', () => {
  it.each([
    { thousands: 1, assemblies: 40, booths: 3 },
    { thousands: 10, assemblies: 400, booths: 30 },
  ])(
    'has $thousands thousand lines, all sound, and assemblies that all differ',
    ({ thousands, assemblies, booths }) => {
      const { text } = generatedSpec(thousands);
      const { problems, spec } = check(text);
      expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(lineCount(text)).toBe(thousands * 1000);
      expect(spec.assemblies.size).toBe(assemblies);
      expect(spec.booths).toHaveLength(booths);
      const builds = [...text.matchAll(/^assembly build-up-\d+ "[^"]*" \{\n(.*?)^\}/gms)].map(([, body]) => body);
      expect(new Set(builds).size).toBe(assemblies);
    },
  );

  it('is typed over at a thickness of a wall of a booth', () => {
    const { text, edited } = generatedSpec(1);
    const line = text.split('\n')[edited.line]!;
    const typed = text.replace(line, `${line.slice(0, edited.from)}21.987${line.slice(edited.to)}`);
    const { problems, spec } = check(typed);
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    const before = check(text).spec;
    const differing = [...spec.assemblies.keys()].filter(
      (name) => thicknesses(spec, name) !== thicknesses(before, name),
    );
    expect(differing).toHaveLength(1);
    expect(text).toContain(`walls ${differing[0]}\n`);
  });

  it('stands beside documents of the same length', () => {
    const neighbours = [jsonDocument(1000), yamlDocument(1000, 'walls.schema.json'), typeScriptDocument(1000)];
    expect(neighbours.map(({ text }) => lineCount(text))).toEqual([1000, 1000, 1000]);
    expect(Object.keys(JSON.parse(neighbours[0]!.text))).toHaveLength(100);
  });
});
