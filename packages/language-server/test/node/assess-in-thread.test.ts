import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { BoothSpec } from '@boothwright/language';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { assessInThread } from '../../src/node/assess-in-thread.js';

const spec = (file: string) => ({ file }) as BoothSpec;

/** A script for the thread that answers by the name of the spec's file. */
const script = `
const { parentPort } = require('node:worker_threads');
parentPort.on('message', ({ id, spec, ended }) => {
  if (spec.file === 'ends') process.exit(3);
  if (spec.file === 'fails') parentPort.postMessage({ id, error: 'no number comes of it' });
  else if (spec.file === 'build-ups') parentPort.postMessage({ id, assemblies: { wall: {} } });
  else if (spec.file === 'waits') { while (Atomics.load(ended, 0) === 0); }
  else parentPort.postMessage({ id, results: { file: spec.file } });
});
`;

describe('assessInThread', () => {
  let folder: string;
  let file: string;
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'booth-thread-'));
    file = path.join(folder, 'thread.cjs');
    writeFileSync(file, script);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('gives each question its own answer', async () => {
    const assess = assessInThread(file);
    const answers = await Promise.all([assess(spec('a')), assess(spec('b'))]);
    expect(answers.map((answer) => answer.file)).toEqual(['a', 'b']);
  });

  it('hands a failure on and goes on answering', async () => {
    const assess = assessInThread(file);
    await expect(assess(spec('fails'))).rejects.toThrow('no number comes of it');
    expect((await assess(spec('a'))).file).toBe('a');
  });

  it('starts a new thread when one has ended', async () => {
    const assess = assessInThread(file);
    await expect(assess(spec('ends'))).rejects.toThrow('has ended');
    expect((await assess(spec('a'))).file).toBe('a');
  });

  it('hands the build-ups on when they are there', async () => {
    const assess = assessInThread(file);
    const found = await new Promise((resolve) => {
      void assess(spec('build-ups'), { assemblies: resolve });
    });
    expect(found).toEqual({ wall: {} });
  });

  it('ends what is not wanted any more, and the thread goes on with the next question', async () => {
    const assess = assessInThread(file);
    const end = new AbortController();
    const ended = assess(spec('waits'), { signal: end.signal });
    const next = assess(spec('a'));
    end.abort();
    await expect(ended).rejects.toThrow();
    expect((await next).file).toBe('a');
  });

  it('fails when there is no script', async () => {
    await expect(assessInThread(path.join(folder, 'none.cjs'))(spec('a'))).rejects.toThrow(/none\.cjs/);
  });
});
