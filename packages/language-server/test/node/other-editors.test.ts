import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Hover, InlayHint, MarkupContent } from 'vscode-languageserver-protocol';
import { type BuiltServer, buildServer, type LspClient, startClient } from '../helpers/lsp-client.js';
import { smallBooth } from '../helpers/small-booth.js';

const read = (file: string) => readFileSync(new URL(`../../../../${file}`, import.meta.url), 'utf8');
const page = read('docs/editors.md');
const block = (language: string, says: string) =>
  [...page.matchAll(new RegExp(`\`\`\`${language}\\n([^]*?)\`\`\``, 'g'))]
    .map(([, text = '']) => text)
    .find((text) => text.includes(says)) ?? '';
const lua = block('lua', 'vim.lsp.config');
const toml = block('toml', '[language-server.boothwright]');

describe('the settings that the page on editors shows', () => {
  it('start the server that is built, over its standard streams, for booth specs', () => {
    const server = 'packages/language-server/dist/server.cjs';
    const [, inLua = ''] = /cmd = \{ (.*) \}/.exec(lua) ?? [];
    const [, command = ''] = /command = (.*)/.exec(toml) ?? [];
    const [, args = ''] = /args = \[(.*)\]/.exec(toml) ?? [];
    const words = [inLua.replaceAll("'", '"'), `${command}, ${args}`].map(
      (list) => JSON.parse(`[${list}]`) as string[],
    );
    for (const [node, script, flag, ...more] of words) {
      expect([node, flag, more]).toEqual(['node', '--stdio', []]);
      expect(script?.endsWith(`/${server}`)).toBe(true);
    }
    expect(read('packages/language-server/esbuild.mjs')).toContain('server.cjs');
    expect(lua).toContain("extension = { booth = 'booth' }");
    expect(toml).toContain('file-types = ["booth"]');
  });

  it('lay the text out as the extension does', () => {
    const manifest = JSON.parse(read('packages/extension/package.json'));
    const language = JSON.parse(read('packages/extension/language-configuration.json'));
    const size = manifest.contributes.configurationDefaults['[booth]']['editor.tabSize'];
    expect(toml).toContain(`comment-token = "${language.comments.lineComment}"`);
    expect(toml).toContain(`indent = { tab-width = ${size}, unit = "${' '.repeat(size)}" }`);
    expect(toml).toContain(`scope = "${manifest.contributes.grammars[0].scopeName}"`);
  });
});

describe('an editor that tells nothing about itself, as those settings do', () => {
  let folder: string;
  let client: LspClient;
  let built: BuiltServer;

  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'booth-plain-'));
    built = buildServer();
    client = await startClient(built.process, folder);
  }, 60_000);
  afterAll(() => {
    client.server.kill();
    built.remove();
    rmSync(folder, { recursive: true });
  });

  it('gets problems, hints and hovers, with pictures told in words and pages not named', async () => {
    client.open('a.booth', smallBooth);
    const report = await client.diagnostics('a.booth', ({ diagnostics }) =>
      diagnostics.some(({ code }) => code === 'requirement-missed'),
    );
    expect(report.diagnostics.every(({ codeDescription }) => codeDescription === undefined)).toBe(true);
    const textDocument = { uri: client.uri('a.booth') };
    const line = smallBooth.slice(0, smallBooth.indexOf('assembly wall')).split('\n').length - 1;
    const range = { start: { line: 0, character: 0 }, end: { line: 200, character: 0 } };
    const hints = await client.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range });
    expect(hints.some(({ label }) => /^STC \d+/.test(String(label)))).toBe(true);
    const hover = await client.request<Hover>('textDocument/hover', {
      textDocument,
      position: { line, character: 10 },
    });
    const { value } = hover.contents as MarkupContent;
    expect(value).toMatch(/STC \d+/);
    expect(value).not.toContain('data:image');
    expect(client.log).toEqual([]);
  }, 30_000);
});
