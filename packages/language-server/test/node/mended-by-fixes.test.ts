import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-protocol';
import { lineTable } from '../../src/common/line-table.js';
import { smallBooth } from '../helpers/index.js';
import { type BuiltServer, buildServer, type LspClient, startClient } from '../helpers/lsp-client.js';

const file = 'broken.booth';
/** Slips that people make, each at another place of a sound spec. */
const slips: readonly (readonly [right: string, wrong: string])[] = [
  ['use catalog\n\n', '\n'],
  ['let gap = 60 mm', 'gap = 60 millimetres'],
  ['  kind porous\n', '  kind wool\n'],
  ['density 38 kg/m3', 'densty 38 kg/m3'],
  ['gypsum-board 12.5 mm', 'gypsum-board 12,5 mm'],
  ['fill batt 70 mm', 'fill bat 70 mm'],
  ['softwood-plywood 18 mm', 'softwood-plywod 18 mm'],
  ['room 4 m x 3.5 m x 2.45 m', 'room 4 m x 3.5 m x 2.45'],
  ['inside 1.50 m x 1.20 m x 2.00 m\n', 'inside 1.50 m x 1.20 m x 2.00 m\n  inside 1.50 m x 1.20 m x 2.00 m\n'],
  ['  floor deck\n', '  flor deck\n'],
  ['    leaf wall\n', ''],
  ['mic at 0.7 m', 'mic at .7 m'],
  ['length 90 min', 'length 90 minutes'],
  ['require room-tone <= 8 dBA', 'require room-tone >= 8 dB(A)'],
  ['require stc of wall >= 20', 'require stc of wal >= 20'],
  ['variant wide { gap = 120 mm }\n', 'variant wide { gap = 120 mm\n'],
];

describe('a broken spec over the protocol', () => {
  let folder: string;
  let client: LspClient;
  let built: BuiltServer;

  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'booth-fixes-'));
    built = buildServer();
    client = await startClient(built.process, folder);
  }, 60_000);
  afterAll(() => {
    client.server.kill();
    built.remove();
    rmSync(folder, { recursive: true });
  });

  const errorsOf = async (): Promise<readonly Diagnostic[]> =>
    (await client.diagnostics(file)).diagnostics.filter(({ severity }) => severity === 1);
  const fixesOf = (diagnostic: Diagnostic): Promise<CodeAction[]> =>
    client.request('textDocument/codeAction', {
      textDocument: { uri: client.uri(file) },
      range: diagnostic.range,
      context: { diagnostics: [diagnostic], only: ['quickfix'] },
    });

  it('is mended by quick fixes only until no error is left', async () => {
    const broken = slips.reduce((text, [right, wrong]) => text.replace(right, wrong), smallBooth);
    let text = broken;
    client.open(file, text);
    let errors = await errorsOf();
    expect(errors.length).toBeGreaterThan(5);
    const taken: string[] = [];
    while (errors.length > 0) {
      expect(
        taken.length,
        `${taken.join('\n')}\nleft: ${errors.map(({ message }) => message).join('\n')}`,
      ).toBeLessThan(30);
      const fix = await firstFix(errors);
      expect(fix, errors.map(({ message }) => message).join('\n')).toBeDefined();
      taken.push(fix!.title);
      text = applied(text, fix!, client.uri(file));
      client.change(file, text);
      errors = await errorsOf();
    }
    expect(taken.length).toBeGreaterThanOrEqual(slips.length - 2);
    const plain = (spec: string): string => spec.replace(/\s+/g, ' ').trim();
    // A fact that is added comes last in its block.
    const inOrder = smallBooth.replace(
      '    leaf wall\n    gap perimeter 0.3 mm\n',
      '    gap perimeter 0.3 mm\n    leaf wall\n',
    );
    expect(plain(text)).toBe(plain(inOrder));
    // The numbers come as they do for a text that was never broken.
    await client.diagnostics(file, ({ diagnostics }) => diagnostics.some(({ code }) => code === 'requirement-missed'));
    expect(client.log).toEqual([]);
  }, 120_000);

  /** As a writer does: what the server prefers first, else the first that leaves nothing to be filled in. */
  async function firstFix(errors: readonly Diagnostic[]): Promise<CodeAction | undefined> {
    let other: CodeAction | undefined;
    for (const error of errors) {
      const fixes = (await fixesOf(error)).filter(({ diagnostics }) => diagnostics?.[0]?.severity === 1);
      const preferred = fixes.find(({ isPreferred }) => isPreferred === true);
      if (preferred !== undefined) return preferred;
      other ??= fixes.find(({ title }) => !title.endsWith('to be filled in'));
    }
    return other;
  }
});

function applied(text: string, { edit }: CodeAction, uri: string): string {
  const lines = lineTable(text);
  const edits = (edit?.changes?.[uri] ?? [])
    .map(({ range, newText }) => ({ from: lines.offsetAt(range.start), to: lines.offsetAt(range.end), newText }))
    .sort((a, b) => b.from - a.from || b.to - a.to);
  return edits.reduce((now, { from, to, newText }) => now.slice(0, from) + newText + now.slice(to), text);
}
