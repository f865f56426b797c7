import type { Severities } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { DiagnosticSeverity } from 'vscode-languageserver';
import { diagnostics } from '../../src/common/diagnostics.js';
import { severityComplaints } from '../../src/common/severities.js';
import { openSpecs, smallBooth, viewOf } from '../helpers/index.js';

const unusual = `${smallBooth}assembly passage {\n  air 1.5 m\n}\n`;

/** How the diagnostics with a code are told. */
const told = (text: string, code: string, severities: Severities = {}) =>
  diagnostics(viewOf(text), severities)
    .filter((each) => each.code === code)
    .map(({ severity }) => severity);

describe('severities that an editor sets', () => {
  it('change how a warning of the text is told, or leave it out', () => {
    expect(told(unusual, 'value-unusual')).toEqual([DiagnosticSeverity.Warning]);
    expect(told(unusual, 'value-unusual', { 'value-unusual': 'error' })).toEqual([DiagnosticSeverity.Error]);
    expect(told(unusual, 'value-unusual', { 'value-unusual': 'hint' })).toEqual([DiagnosticSeverity.Information]);
    expect(told(unusual, 'value-unusual', { 'value-unusual': 'off' })).toEqual([]);
  });

  it('hold for the text of a file that is used', () => {
    const specs = openSpecs({ 'a.booth': 'use "./b.booth"\n', 'b.booth': 'assembly passage {\n  air 1.5 m\n}\n' });
    const shown = (severities: Severities) =>
      diagnostics(specs.view('a.booth'), severities).flatMap(({ code, severity }) =>
        code === 'value-unusual' ? [severity] : [],
      );
    expect(shown({})).toEqual([DiagnosticSeverity.Warning]);
    expect(shown({ 'value-unusual': 'error' })).toEqual([DiagnosticSeverity.Error]);
    expect(shown({ 'value-unusual': 'off' })).toEqual([]);
  });

  it('hold for missed requirements and for findings', () => {
    expect(told(smallBooth, 'requirement-missed', { 'requirement-missed': 'error' })).toContain(
      DiagnosticSeverity.Error,
    );
    expect(told(smallBooth, 'requirement-missed', { 'requirement-missed': 'off' })).toEqual([]);
    const view = viewOf(smallBooth);
    const finding = view.results?.findings.find(({ severity }) => severity === 'warning');
    expect(finding).toBeDefined();
    const id = finding?.id ?? '';
    expect(told(smallBooth, id)).toContain(DiagnosticSeverity.Warning);
    expect(told(smallBooth, id, { [id]: 'off' })).toEqual([]);
  });

  it('leave an error an error', () => {
    const broken = smallBooth.replace('leaf wall', 'leaf wal');
    expect(told(broken, 'unknown-name', { 'unknown-name': 'off' })).toEqual(told(broken, 'unknown-name'));
    expect(told(broken, 'unknown-name')).toContain(DiagnosticSeverity.Error);
  });

  it('leave the numbers of a text good whose warning is told as an error', () => {
    const view = viewOf(unusual);
    expect(diagnostics(view, { 'value-unusual': 'error' }).map(({ message }) => message)).toEqual(
      diagnostics(view).map(({ message }) => message),
    );
    expect(view.stale).toBe(false);
  });
});

describe('severityComplaints', () => {
  it('says nothing of what can be followed', () => {
    for (const sent of [undefined, null, {}, { 'value-unusual': 'off', 'no-fresh-air': 'hint' }]) {
      expect(severityComplaints(sent)).toEqual([]);
    }
  });

  it('has a sentence for each wish that cannot be followed', () => {
    expect(severityComplaints('off')).toEqual([
      'boothwright.severities: expected an object with a level for each identifier',
    ]);
    expect(severityComplaints(['off'])).toHaveLength(1);
    expect(severityComplaints({ 'no-fresh-ar': 'off', 'value-unusual': 'loud', 'alarm-not-heard': 'off' })).toEqual([
      expect.stringMatching(/no problem `no-fresh-ar`; did you mean `no-fresh-air`/),
      expect.stringMatching(/one of error, warning, hint, off; found `loud`/),
      expect.stringMatching(/found no problem/),
    ]);
  });
});
