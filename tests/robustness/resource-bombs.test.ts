import { checkSpec, format, type SourceAnswer } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { bombs } from './resource-bombs.js';

/** ms, with much to spare for a busy machine. What is without bounds needs minutes. */
const MOST = 30_000;

function filesOf(files: (typeof bombs)[number]['files']): Readonly<Record<string, string>> {
  return typeof files === 'string' ? { 'spec.booth': files } : files;
}

describe('a text that asks for more than anyone may spend', () => {
  it.each(bombs)(
    '$what: ends soon, with a message at its place',
    ({ files, told }) => {
      const all = filesOf(files);
      const read = (path: string): SourceAnswer =>
        Object.hasOwn(all, path) ? { kind: 'text', text: all[path]! } : { kind: 'missing' };
      const started = performance.now();
      const result = checkSpec(Object.keys(all)[0]!, { read });
      const took = performance.now() - started;
      expect(took).toBeLessThan(MOST);
      if (told !== undefined) expect(result.problems.map(({ id }) => id)).toContain(told);
      for (const { range } of result.problems) {
        const text = result.files.find(({ file }) => file === range.file)!.text;
        expect(0 <= range.from && range.from <= range.to && range.to <= text.length).toBe(true);
      }
      expect(result.problems.length).toBeLessThan(2000);
    },
    120_000,
  );

  it.each(bombs)(
    '$what: is formatted soon',
    ({ files }) => {
      const text = Object.values(filesOf(files))[0]!;
      const started = performance.now();
      const formatted = format(text);
      expect(performance.now() - started).toBeLessThan(MOST);
      expect(format(formatted)).toBe(formatted);
    },
    120_000,
  );
});
