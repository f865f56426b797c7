import { describe, expect, it } from 'vitest';
import type { DocumentSymbol } from 'vscode-languageserver';
import { documentSymbols } from '../../src/common/document-symbols.js';
import { smallBooth, viewOf } from '../helpers/index.js';

/** The outline as indented lines. */
function outline(symbols: readonly DocumentSymbol[], indent = ''): string[] {
  return symbols.flatMap(({ name, detail, children }) => [
    `${indent}${name}${detail ? ` (${detail})` : ''}`,
    ...outline(children ?? [], `${indent}  `),
  ]);
}

describe('documentSymbols', () => {
  it('lists what is declared, with what is in it', () => {
    expect(outline(documentSymbols(viewOf(smallBooth)))).toEqual([
      'gap (let)',
      'batt (wool batt)',
      'wall (outer wall)',
      'deck (assembly)',
      'site',
      '  street (street at noon)',
      '  steps (steps above)',
      'study (booth)',
      '  entry (door)',
      '  intake (vent)',
      'session',
      'require room-tone <= 8 dBA',
      'require voice-outside <= 70 dBA',
      'require stc of wall >= 20',
      'wide (variant)',
    ]);
  });

  it('puts the name inside the whole, as the protocol wants', () => {
    const view = viewOf(smallBooth);
    const check = (symbols: readonly DocumentSymbol[]): void => {
      for (const { range, selectionRange, children } of symbols) {
        expect(view.lines.offsetAt(selectionRange.start)).toBeGreaterThanOrEqual(view.lines.offsetAt(range.start));
        expect(view.lines.offsetAt(selectionRange.end)).toBeLessThanOrEqual(view.lines.offsetAt(range.end));
        check(children ?? []);
      }
    };
    check(documentSymbols(view));
  });

  it('keeps what can be read of a broken text', () => {
    const view = viewOf(smallBooth.replace('leaf wall', 'leaf wall wall {'));
    expect(outline(documentSymbols(view))).toContain('study (booth)');
  });
});
