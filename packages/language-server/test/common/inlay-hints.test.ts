import { describe, expect, it } from 'vitest';
import { inlayHints } from '../../src/common/inlay-hints.js';
import { defaultSettings } from '../../src/common/settings.js';
import { hintsOf, openSpecs, smallBooth, viewOf } from '../helpers/index.js';

describe('inlayHints', () => {
  const view = viewOf(smallBooth);

  it('say at each assembly its rating, mass and resonance', () => {
    const hints = hintsOf(view, ['assemblies']);
    expect(hints.map(({ line }) => line)).toEqual(['assembly wall "outer wall" {', 'assembly deck {']);
    expect(hints[0]?.hint).toMatch(/^STC \d+ · [\d.]+ kg\/m² · f₀ \d+ Hz$/);
  });

  it('say at each requirement whether it is met, and by how much', () => {
    const hints = hintsOf(view, ['requirements']);
    expect(hints).toHaveLength(3);
    expect(hints[0]?.hint).toMatch(/^missed by .*dBA/);
    expect(hints[1]?.hint).toMatch(/^met with .*dBA/);
  });

  it('say at each opening its share, once', () => {
    const hints = hintsOf(view, ['openings']);
    expect(hints.map(({ line }) => line.trim().split(' ').slice(0, 2).join(' '))).toEqual([
      'door entry',
      'vent intake',
    ]);
    for (const { hint } of hints) expect(hint).toMatch(/%/);
  });

  it('say at each noise its level outside and inside', () => {
    const hints = hintsOf(view, ['noise']);
    expect(hints.find(({ line }) => line.includes('noise street'))?.hint).toMatch(/dBA outside, .*dBA inside/);
    expect(hints.find(({ line }) => line.includes('impact steps'))?.hint).toBe('not predicted');
  });

  it('say at a booth and at the session what they come to', () => {
    const hints = hintsOf(view, ['booths']);
    expect(hints.find(({ line }) => line.startsWith('booth study'))?.hint).toMatch(/dBA inside · .* kg/);
    expect(hints.find(({ line }) => line.startsWith('session'))?.hint).toMatch(/ppm/);
  });

  it('say how many facts of a block are assumed, and which in the tooltip', () => {
    const whole = view.lines.rangeOf({ from: 0, to: view.text.length });
    const off = Object.fromEntries(Object.keys(defaultSettings.inlayHints).map((kind) => [kind, false]));
    const hints = inlayHints(view, whole, {
      ...defaultSettings,
      inlayHints: { ...off, defaults: true } as typeof defaultSettings.inlayHints,
    });
    const door = hints.find(({ position }) => view.text.split('\n')[position.line]?.includes('door entry'));
    expect(String(door?.label)).toMatch(/^\d+ assumed$/);
    expect(JSON.stringify(door?.tooltip)).toContain('threshold');
  });

  it('are none when all are switched off', () => {
    expect(hintsOf(view, [])).toEqual([]);
  });

  it('stand at the ends of the lines, on a long line behind its name and title', () => {
    const whole = view.lines.rangeOf({ from: 0, to: view.text.length });
    const hints = inlayHints(view, whole, defaultSettings);
    const lineOf = (line: number) => view.text.split('\n')[line]!;
    for (const { position } of hints.filter(({ position: { line } }) => lineOf(line).length <= 100)) {
      expect(position.character).toBe(lineOf(position.line).length);
    }
    const long = hints.filter(({ position: { line } }) => lineOf(line).length > 100);
    expect(long.map(({ position: { line, character } }) => lineOf(line).slice(0, character).trim())).toEqual([
      'noise street "street at noon"',
    ]);
  });

  it('stay, marked and on their lines, while the text is broken', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    specs.assess('a.booth');
    specs.change('a.booth', `# a line more\n${smallBooth}`);
    specs.view('a.booth');
    specs.change('a.booth', `# a line more\n${smallBooth.replace('run 1.2 m', 'run 1.2 kg')}`);
    const [first] = hintsOf(specs.view('a.booth'), ['assemblies']);
    expect(first?.line).toBe('assembly wall "outer wall" {');
    expect(first?.hint).toMatch(/^was STC \d+/);
  });

  it('are none for a requirement that was deleted', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    specs.assess('a.booth');
    specs.change('a.booth', smallBooth.replace('require stc of wall >= 20\n', ''));
    expect(hintsOf(specs.view('a.booth'), ['requirements'])).toHaveLength(2);
  });
});
