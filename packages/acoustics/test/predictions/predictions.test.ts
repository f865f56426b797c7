import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import { getQuickJS } from 'quickjs-emscripten';
import { beforeAll, describe, expect, test } from 'vitest';
import { changedPredictions } from './changed-predictions.js';
import type { PredictedValue } from './prediction.js';

const table = fileURLToPath(new URL('./prediction-table.ts', import.meta.url));
const stored = JSON.parse(readFileSync(new URL('../../predictions.json', import.meta.url), 'utf8')) as {
  predictions: Record<string, PredictedValue>;
};

describe('the table of reference predictions', () => {
  /** A script that any engine can run; it answers the table as JSON. */
  let script = '';
  beforeAll(async () => {
    const bundle = await build({
      entryPoints: [table],
      bundle: true,
      write: false,
      format: 'iife',
      globalName: 'table',
      platform: 'neutral',
      target: 'es2022',
      conditions: ['boothwright-source'],
    });
    script = `${bundle.outputFiles[0]!.text}; JSON.stringify(table.predictionTable());`;
  });

  const compare = (json: string) => {
    const found = JSON.parse(json) as Record<string, PredictedValue>;
    expect(changedPredictions(stored.predictions, found), 'changed; `npm run predictions` writes them anew').toEqual(
      [],
    );
    expect(Object.keys(found).sort(), 'not stored').toEqual(Object.keys(stored.predictions).sort());
  };

  test('is what V8 computes', () => {
    expect(Object.keys(stored.predictions).length).toBeGreaterThan(30);
    compare(runInNewContext(script));
  });

  test('is what QuickJS computes, to a part in 1e9', async () => {
    const context = (await getQuickJS()).newContext();
    try {
      const result = context.evalCode(script);
      if (result.error) {
        const told = JSON.stringify(context.dump(result.error));
        result.error.dispose();
        throw new Error(told);
      }
      const json = context.dump(result.value) as string;
      result.value.dispose();
      compare(json);
    } finally {
      context.dispose();
    }
  }, 120_000);
});
