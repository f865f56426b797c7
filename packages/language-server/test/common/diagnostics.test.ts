import { describe, expect, it } from 'vitest';
import { DiagnosticSeverity } from 'vscode-languageserver';
import { diagnosed, diagnosticsOf, openSpecs, smallBooth } from '../helpers/index.js';

describe('diagnostics', () => {
  it('has no errors for a sound spec', () => {
    const errors = diagnosticsOf(smallBooth).filter(
      ({ diagnostic }) => diagnostic.severity === DiagnosticSeverity.Error,
    );
    expect(errors.map(({ diagnostic }) => diagnostic.message)).toEqual([]);
  });

  it('marks the token with the wrong dimension', () => {
    const [first] = diagnosticsOf(smallBooth.replace('run 1.2 m', 'run 1.2 kg')).filter(
      ({ diagnostic }) => diagnostic.severity === DiagnosticSeverity.Error,
    );
    expect(first?.marked).toBe('1.2 kg');
    expect(first?.diagnostic.source).toBe('boothwright');
  });

  it('warns of a missed requirement, on its line, with what limits it', () => {
    const missed = diagnosticsOf(smallBooth).find(({ diagnostic }) => diagnostic.code === 'requirement-missed');
    expect(missed?.diagnostic.severity).toBe(DiagnosticSeverity.Warning);
    expect(missed?.marked).toBe('require room-tone <= 8 dBA');
    expect(missed?.diagnostic.message).toMatch(/wall.*street/);
  });

  it('says nothing about a requirement that is met', () => {
    const marked = diagnosticsOf(smallBooth)
      .filter(({ diagnostic }) => String(diagnostic.code).startsWith('requirement'))
      .map((each) => each.marked);
    expect(marked).not.toContain('require voice-outside <= 70 dBA');
  });

  it('marks no more than one line for what it found in a block', () => {
    for (const { diagnostic } of diagnosticsOf(smallBooth)) {
      if (diagnostic.severity === DiagnosticSeverity.Error) continue;
      expect(diagnostic.range.end.line).toBe(diagnostic.range.start.line);
    }
  });

  it('keeps the findings of the last sound text and says so', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    specs.assess('a.booth');
    specs.change('a.booth', `# a line more\n${smallBooth}`);
    specs.view('a.booth');
    specs.change('a.booth', `# a line more\n${smallBooth.replace('run 1.2 m', 'run 1.2 kg')}`);
    const missed = diagnosed(specs.view('a.booth')).find(({ diagnostic }) => diagnostic.code === 'requirement-missed');
    expect(missed?.marked).toBe('require room-tone <= 8 dBA');
    expect(missed?.diagnostic.message).toContain('from before the text was broken');
  });

  it('names a problem of a file that is used, on the line that uses it', () => {
    const found = diagnosticsOf('use "./parts.booth"\n', { 'parts.booth': 'let gap = 5 mm +\n' });
    const use = found.find(({ diagnostic }) => diagnostic.message.startsWith('In parts.booth'));
    expect(use?.marked).toContain('use "./parts.booth"');
    expect(use?.diagnostic.relatedInformation?.[0]?.location.uri).toBe('file:///booths/parts.booth');
  });

  it('reports a file that is not there on the line that uses it', () => {
    const found = diagnosticsOf('use "./none.booth"\n');
    expect(found.some(({ diagnostic }) => diagnostic.severity === DiagnosticSeverity.Error)).toBe(true);
  });
});
