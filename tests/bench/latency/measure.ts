import type { InlayHint } from 'vscode-languageserver-protocol/node.js';
import type { Document } from './generated-spec.js';
import { residentMemory } from './resident-memory.js';
import { type Contender, type Session, startSession } from './session.js';

export interface Subject extends Contender {
  readonly document: Document;
  /** What is typed the n-th time; `isWrong` when the line then has an error. */
  keystroke(n: number): { readonly text: string; readonly isWrong: boolean };
  /** True for a server that computes numbers from the text and tells when they are there. */
  readonly hasNumbers: boolean;
}

/** Times in ms, one list for each thing that is waited for. */
export interface Measured {
  readonly coldStart: readonly number[];
  readonly diagnostics: readonly number[];
  readonly numbers: readonly number[];
  readonly hover: readonly number[];
  readonly completion: readonly number[];
  /** MiB at the end. */
  readonly memory: number | undefined;
}

export interface Rounds {
  readonly coldStarts: number;
  readonly keystrokes: number;
  readonly warmUp: number;
}

/** Between two keystrokes a fast typist leaves more, ms. */
const pause = 30;

/** Measures one server on one document; what it answers is checked to be an answer. */
export async function measure(subject: Subject, folder: string, rounds: Rounds): Promise<Measured> {
  const coldStart: number[] = [];
  const { document } = subject;
  let session = await startSession(subject, folder, document.text);
  coldStart.push(session.coldStart);
  while (coldStart.length < rounds.coldStarts) {
    await session.end();
    session = await startSession(subject, folder, document.text);
    coldStart.push(session.coldStart);
  }
  try {
    const { diagnostics, numbers } = await typeNumbers(subject, session, rounds);
    const textDocument = { uri: session.uri };
    const hover = await series(rounds, async () => {
      const answer = await session.request('textDocument/hover', { textDocument, position: document.hover });
      if (answer === null) throw new Error(`${subject.name} has no hover`);
    });
    const completion = await series(rounds, async () => {
      const answer = await session.request<unknown[] | { items: unknown[] } | null>('textDocument/completion', {
        textDocument,
        position: document.completion,
        context: { triggerKind: 1 },
      });
      const items = Array.isArray(answer) ? answer : (answer?.items ?? []);
      if (items.length === 0) throw new Error(`${subject.name} completes nothing`);
    });
    return { coldStart, diagnostics, numbers, hover, completion, memory: residentMemory(session.process.pid!) };
  } finally {
    await session.end();
  }
}

/** Types over the edited number; every number is a new one. */
async function typeNumbers(subject: Subject, session: Session, rounds: Rounds) {
  const { line, from, to } = subject.document.edited;
  const diagnostics: number[] = [];
  const numbers: number[] = [];
  let end = to;
  let last = subject.hasNumbers ? await hintsOf(subject, session) : '';
  for (let n = 0; n < rounds.warmUp + rounds.keystrokes; n++) {
    const { text, isWrong } = subject.keystroke(n);
    const refreshed = subject.hasNumbers ? session.nextRefresh() : undefined;
    const started = performance.now();
    session.type(line, from, end, text);
    end = from + text.length;
    await session.diagnostics(
      (found) => isWrong === found.some(({ range, severity }) => range.start.line === line && (severity ?? 1) <= 2),
    );
    const reported = performance.now();
    await refreshed;
    if (refreshed !== undefined) {
      const hints = await hintsOf(subject, session);
      if (hints === last) throw new Error(`${subject.name} tells the numbers of an earlier text`);
      last = hints;
    }
    const told = performance.now();
    if (n >= rounds.warmUp) {
      diagnostics.push(reported - started);
      if (refreshed !== undefined) numbers.push(told - started);
    }
    await new Promise((resolve) => setTimeout(resolve, pause));
  }
  return { diagnostics, numbers };
}

/** What stands behind the lines of the assembly that is edited. */
async function hintsOf({ document, name }: Subject, session: Session): Promise<string> {
  const { first, last } = document.lines;
  const hints = await session.request<InlayHint[]>('textDocument/inlayHint', {
    textDocument: { uri: session.uri },
    range: { start: { line: first, character: 0 }, end: { line: last, character: 0 } },
  });
  if (hints.length === 0) throw new Error(`${name} tells no numbers`);
  return JSON.stringify(hints.map(({ label }) => label));
}

async function series(rounds: Rounds, once: () => Promise<void>): Promise<number[]> {
  const times: number[] = [];
  for (let n = 0; n < rounds.warmUp + rounds.keystrokes; n++) {
    const started = performance.now();
    await once();
    if (n >= rounds.warmUp) times.push(performance.now() - started);
  }
  return times;
}
