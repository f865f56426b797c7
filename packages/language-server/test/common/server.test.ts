import { PassThrough } from 'node:stream';
import { createAssessor } from '@boothwright/assessment';
import { afterEach, describe, expect, it } from 'vitest';
import { createConnection, type Diagnostic, type InlayHint } from 'vscode-languageserver/node.js';
import {
  CancellationTokenSource,
  createMessageConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node.js';
import { startServer } from '../../src/common/server.js';
import { smallBooth } from '../helpers/index.js';

const uri = 'file:///booths/a.booth';
/** One for all tests: what one has worked out, the others need not. */
const assessor = createAssessor();
const pause = (milliseconds = 30) => new Promise((resolve) => setTimeout(resolve, milliseconds));
const refreshing = { workspace: { inlayHint: { refreshSupport: true } } };

async function until(wished: () => boolean): Promise<void> {
  const end = Date.now() + 10_000;
  while (!wished()) {
    if (Date.now() > end) throw new Error('Waited in vain');
    await pause(5);
  }
}

const stops: (() => void)[] = [];
afterEach(() => {
  for (const stop of stops.splice(0)) stop();
});

/** A server and an editor in one process; numbers come, and turns begin, when the test lets them. */
async function connected(capabilities: object, { initialized = true } = {}) {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const answers: (() => void)[] = [];
  const turns = { held: false, waiting: [] as (() => void)[] };
  startServer(createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient)), {
    read: () => ({ kind: 'missing' }),
    list: async () => [],
    assess: (spec) =>
      new Promise((resolve) => {
        answers.push(() => resolve(assessor.assess(spec)));
      }),
    later(task) {
      let off = false;
      const turn = () => {
        if (!off) task();
      };
      if (turns.held) turns.waiting.push(turn);
      else setImmediate(turn);
      return () => {
        off = true;
      };
    },
  });

  const client = createMessageConnection(new StreamMessageReader(toClient), new StreamMessageWriter(toServer));
  stops.push(() => client.dispose());
  const seen = { refreshes: 0, diagnostics: [] as Diagnostic[] };
  client.onRequest('workspace/inlayHint/refresh', () => {
    seen.refreshes += 1;
    return null;
  });
  client.onNotification('textDocument/publishDiagnostics', ({ diagnostics }: PublishDiagnosticsParams) => {
    seen.diagnostics = diagnostics;
  });
  client.listen();
  await client.sendRequest('initialize', { processId: null, rootUri: 'file:///booths', capabilities });
  if (initialized) client.sendNotification('initialized', {});

  let version = 0;
  return {
    client,
    answers,
    turns,
    seen,
    /** What the editor was told about the numbers. */
    hasNumbers: () => seen.diagnostics.some(({ code }) => code === 'requirement-missed'),
    open(text: string) {
      version = 1;
      const textDocument = { uri, languageId: 'booth', version, text };
      return client.sendNotification('textDocument/didOpen', { textDocument });
    },
    change(text: string) {
      version += 1;
      return client.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ text }],
      });
    },
    /** The labels on the whole document; undefined as long as there is no answer. */
    hints() {
      const source = new CancellationTokenSource();
      const asked: { labels?: string[]; done: Promise<void>; cancel(): void } = {
        done: Promise.resolve(),
        cancel: () => source.cancel(),
      };
      const range = { start: { line: 0, character: 0 }, end: { line: 500, character: 0 } };
      asked.done = client
        .sendRequest<InlayHint[]>('textDocument/inlayHint', { textDocument: { uri }, range }, source.token)
        .then((found) => {
          asked.labels = found.map(({ label }) => String(label));
        });
      return asked;
    },
    runTurns() {
      turns.held = false;
      for (const turn of turns.waiting.splice(0)) turn();
    },
  };
}

const rating = /^STC \d+/;
const rated = (labels: readonly string[] | undefined) => labels?.some((label) => rating.test(label)) ?? false;

describe('the server', () => {
  it.each([
    ['an editor that can be told to ask again', refreshing],
    ['any other editor', {}],
  ])('lets %s wait for the first numbers, however long they take', async (_editor, capabilities) => {
    const { open, hints, answers } = await connected(capabilities);
    await open(smallBooth);
    const asked = hints();
    await pause(1300);
    expect(asked.labels).toBeUndefined();
    answers[0]!();
    await asked.done;
    expect(rated(asked.labels)).toBe(true);
  });

  it('has hints asked for again after the first numbers and after later ones', async () => {
    const { open, change, answers, seen, hasNumbers } = await connected(refreshing);
    await open(smallBooth);
    await until(() => answers.length === 1);
    expect(seen.refreshes).toBe(0);
    answers[0]!();
    await until(() => seen.refreshes === 1);
    await until(hasNumbers);
    await change(smallBooth.replace('run 1.2 m', 'run 1.3 m'));
    await until(() => answers.length === 2);
    expect(seen.refreshes).toBe(1);
    answers[1]!();
    await until(() => seen.refreshes === 2);
  });

  it('tells problems anew when the settings change, and what of them it cannot follow', async () => {
    const { client, open, seen } = await connected({});
    const log: string[] = [];
    client.onNotification('window/logMessage', ({ message }: { message: string }) => log.push(message));
    const isTold = () => seen.diagnostics.some(({ code }) => code === 'value-unusual');
    await open(`${smallBooth}assembly passage {\n  air 1.5 m\n}\n`);
    await until(isTold);
    const severities = { 'value-unusual': 'off', 'value-unusal': 'off' };
    await client.sendNotification('workspace/didChangeConfiguration', { settings: { boothwright: { severities } } });
    await until(() => !isTold());
    expect(log).toEqual(['boothwright.severities: found no problem `value-unusal`; did you mean `value-unusual`?']);
  });

  it('tells figures in other units, with other ratings, as soon as the settings say so', async () => {
    const { client, answers, open, hints, hasNumbers } = await connected(refreshing);
    const warnings: string[] = [];
    client.onNotification('window/logMessage', ({ message }: { message: string }) => warnings.push(message));
    await open(smallBooth);
    await until(() => answers.length === 1);
    answers[0]?.();
    await until(hasNumbers);
    const labels = async () => {
      const asked = hints();
      await asked.done;
      return asked.labels ?? [];
    };
    const line = smallBooth.slice(0, smallBooth.indexOf('assembly wall')).split('\n').length - 1;
    const hoverText = async () => {
      const asked = { textDocument: { uri }, position: { line, character: 'assembly w'.length } };
      return JSON.stringify(await client.sendRequest('textDocument/hover', asked));
    };
    expect((await labels()).some((label) => /^STC \d+ · [\d.]+ kg\/m²/.test(label))).toBe(true);
    expect(await hoverText()).toContain('kg/m²');
    const set = (show: unknown) =>
      client.sendNotification('workspace/didChangeConfiguration', { settings: { boothwright: { show } } });
    await set({ units: 'imperial', ratings: ['Rw', 'OITC'], currency: 'CHF' });
    expect((await labels()).some((label) => /^Rw \d+ · OITC \d+ · [\d.]+ lb\/ft²/.test(label))).toBe(true);
    expect(await hoverText()).toMatch(/lb\/ft²/);
    expect(await hoverText()).not.toMatch(/kg\/m²/);
    const headline = await client.sendRequest<{ text: string }>('boothwright/headline', {
      uri,
      position: { line: 0, character: 0 },
    });
    expect(headline.text).toMatch(/ lb · \d+ lb\/ft²$/);
    const questions = await client.sendRequest<{ name: string; example: string }[]>('boothwright/questions');
    expect(questions.find(({ name }) => name === 'budget')?.example).toBe('1900 CHF');
    const spec = await client.sendRequest<{ text: string }>('boothwright/firstSpec', { answers: { budget: '1500' } });
    expect(spec.text).toMatch(/require cost +<= 1500 CHF/);
    await set({ units: 'feet' });
    expect((await labels()).some((label) => /^STC \d+ · [\d.]+ kg\/m²/.test(label))).toBe(true);
    await until(() => warnings.some((message) => message.includes('boothwright.show.units: expected `metric`')));
  });

  it('says so too when somebody asked for the numbers before their turn came', async () => {
    const { open, hints, runTurns, turns, answers, seen, hasNumbers } = await connected(refreshing);
    turns.held = true;
    await open(smallBooth);
    const asked = hints();
    await until(() => answers.length === 1);
    answers[0]!();
    await asked.done;
    expect(rated(asked.labels)).toBe(true);
    runTurns();
    await until(() => seen.refreshes > 0);
    await until(hasNumbers);
    expect(answers).toHaveLength(1);
  });

  it('says so too when a text was typed over while its numbers were worked out', async () => {
    const { client, open, change, runTurns, turns, answers, seen, hasNumbers } = await connected(refreshing);
    await open(smallBooth);
    await until(() => answers.length === 1);
    await change(smallBooth.replace('run 1.2 m', 'run 1.3 m'));
    const position = { line: 0, character: 0 };
    const hover = client.sendRequest('textDocument/hover', { textDocument: { uri }, position });
    await until(() => answers.length === 2);
    turns.held = true;
    for (const answer of answers) answer();
    await hover;
    await pause();
    runTurns();
    await until(() => seen.refreshes > 0);
    await until(hasNumbers);
  });

  it('says so too when the numbers come before the editor says that it is ready', async () => {
    const { client, open, answers, seen } = await connected(refreshing, { initialized: false });
    await open(smallBooth);
    await until(() => answers.length === 1);
    answers[0]!();
    await until(() => seen.refreshes > 0);
    client.sendNotification('initialized', {});
  });

  it('tells no editor to ask again that cannot be told', async () => {
    const { open, answers, seen, hasNumbers } = await connected({});
    await open(smallBooth);
    await until(() => answers.length === 1);
    answers[0]!();
    await until(hasNumbers);
    await pause();
    expect(seen.refreshes).toBe(0);
  });

  it('answers with the numbers of the text that was typed, when they come soon', async () => {
    const { open, change, hints, answers, seen } = await connected(refreshing);
    await open(smallBooth);
    await until(() => answers.length === 1);
    answers[0]!();
    await until(() => seen.refreshes === 1);
    await change(smallBooth.replace('bends 2; fan 10 L/s', 'bends 2; fan 12 L/s').replace('12.5 mm', '25 mm'));
    const before = hints();
    await until(() => answers.length === 2);
    await pause();
    expect(before.labels).toBeUndefined();
    answers[1]!();
    await before.done;
    expect(rated(before.labels)).toBe(true);
  });

  it('answers with the numbers at hand, when those of the text that was typed take long', async () => {
    const { open, change, hints, answers, seen } = await connected(refreshing);
    await open(smallBooth);
    await until(() => answers.length === 1);
    answers[0]!();
    await until(() => seen.refreshes === 1);
    await change(smallBooth.replace('run 1.2 m', 'run 1.3 m'));
    const asked = hints();
    await asked.done;
    expect(rated(asked.labels)).toBe(true);
    expect(answers).toHaveLength(2);
    answers[1]!();
    await until(() => seen.refreshes === 2);
  });

  it('ends the waiting of an editor that no longer wants the answer', async () => {
    const { open, hints, answers } = await connected(refreshing);
    await open(smallBooth);
    const asked = hints();
    await until(() => answers.length === 1);
    asked.cancel();
    await asked.done.catch(() => undefined);
    const again = hints();
    answers[0]!();
    await again.done;
    expect(rated(again.labels)).toBe(true);
  });

  it('gives what is known when the numbers cannot be worked out', async () => {
    const { open, hints } = await connected(refreshing);
    await open(smallBooth.replace('run 1.2 m', 'run 1.2 kg'));
    const asked = hints();
    await asked.done;
    expect(asked.labels?.some((label) => label.endsWith('assumed'))).toBe(true);
    expect(rated(asked.labels)).toBe(false);
  });
});
