import { expect, it } from 'vitest';
import { inlayHints } from '../../src/common/inlay-hints.js';
import { defaultSettings } from '../../src/common/settings.js';
import { hintsOf, viewOf, wholeBooth } from '../helpers/index.js';

const view = viewOf(wholeBooth);
const { study } = view.results!.booths;
const hintOn = (kind: Parameters<typeof hintsOf>[1][number], start: string) =>
  hintsOf(view, [kind]).find(({ line }) => line.trimStart().startsWith(start))?.hint;

it('the air of a vent stands beside its share of the noise', () => {
  const { flowHighM3PerS, direction } = study!.ventilation.vents.find(({ name }) => name === 'outlet')!;
  expect(hintOn('openings', 'vent outlet')).toContain(`· ${(flowHighM3PerS! * 1000).toFixed(1)} L/s ${direction}`);
});

it('a neighbour hears the voice of the session', () => {
  const { session } = study!.voiceAt.find(({ place }) => place === 'flat')!;
  expect(hintOn('noise', 'neighbour')).toBe(`hears ${session!.dBA!.value.toFixed(0)} dBA of your raised voice`);
});

it('mic, mouth and mounts say what they come to', () => {
  const { noise, reflections } = study!;
  expect(hintOn('inside', 'mic')).toBe(`room tone ${noise.roomTone!.dBFS.value.toFixed(0)} dBFS`);
  expect(hintOn('inside', 'mouth')).toContain(`${reflections!.response!.spreadDb.toFixed(1)} dB of ups and downs`);
  expect(hintOn('inside', 'mounts')).toBe(`help above ${noise.mounts!.gainsAboveHz.toFixed(0)} Hz`);
});

it('on a line that is too long to see its end the hint stands before its block', () => {
  const long = wholeBooth.replace('pattern cardioid;', `pattern cardioid;${' '.repeat(60)}`);
  const wide = viewOf(long);
  const { line, text } = long
    .split('\n')
    .map((each, index) => ({ line: index, text: each }))
    .find((each) => each.text.startsWith('  mic'))!;
  const whole = wide.lines.rangeOf({ from: 0, to: long.length });
  const hint = inlayHints(wide, whole, defaultSettings).find(({ position }) => position.line === line);
  expect(text.slice(0, hint!.position.character).trimEnd()).toBe('  mic at 0.75 m, 0.60 m, 1.5 m');
});

it('panels and ways say what goes', () => {
  const { build, moving } = study!;
  const heaviest = build.panels.find(({ number }) => number === build.heaviestPanel)!;
  expect(hintOn('moving', 'panels')).toContain(
    `${build.panels.length} panels, the heaviest ${heaviest.massKg.toFixed(0)} kg`,
  );
  const left = Math.min(
    ...moving!.cards.flatMap(({ ways }) => ways.filter(({ way }) => way === 'doorway').map(({ leftM }) => leftM)),
  );
  expect(hintOn('moving', 'doorway')).toBe(`every piece goes, ${Math.floor(left * 1000 + 1e-6)} mm left`);
  expect(hintOn('moving', 'obstacle')).toBe(moving!.obstacles[0]!.collides ? 'in the way' : undefined);
});

it('money is summed, and an item that buys too little says what is needed', () => {
  const short = study!.build.shopping.checks.filter(({ verdict }) => verdict === 'too-few').length;
  expect(hintOn('money', 'budget')).toBe(
    `450 EUR, 495 EUR with reserve · too few of ${short} item${short === 1 ? '' : 's'}`,
  );
  const { needed, atLeast } = study!.build.shopping.checks.find(({ items }) => items.includes('plywood'))!;
  expect(hintOn('money', 'item plywood')).toBe(`${atLeast ? 'at least ' : ''}${needed} needed`);
  expect(hintOn('money', 'item screws')).toBeUndefined();
});

it('a variant says how many requirements it meets', () => {
  const met = (all: readonly { readonly verdict: string }[]) => all.filter(({ verdict }) => verdict === 'met').length;
  const { requirements, variants } = view.results!;
  expect(hintOn('variants', 'variant wide')).toBe(
    `meets ${met(variants.wide!.requirements)} of ${requirements.length}, ${met(requirements)} without`,
  );
});
