import { createAssessor, type ResultDocument } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import type { CodeAction } from 'vscode-languageserver';
import { type DesignOptions, designFixes } from '../../../src/common/code-actions/design-fixes.js';
import type { Promised } from '../../../src/common/code-actions/promise.js';
import type { View } from '../../../src/common/view.js';
import { applied } from '../../helpers/code-actions.js';
import { openSpecs } from '../../helpers/index.js';

/** A booth of two boards with a narrow gap and a duct that lets most of the sound in. Everything in it is invented. */
const narrow = `use catalog

assembly wall {
  gypsum-board 12.5 mm
  air 6 mm
  gypsum-board 12.5 mm
}

site {
  room 4 m x 3.5 m x 2.45 m
  noise street 60 dBA like road-traffic
}

booth box {
  outside 1262 mm x 1262 mm x 2062 mm
  inside 1.2 m x 1.2 m x 2 m
  walls wall
  roof wall
  floor wall
  slit crack on left { length 1.2 m; gap 1 mm; depth 31 mm }
}

require room-tone <= 20 dBA
require stc of wall >= 45
`;

const assessor = createAssessor();
const everything: DesignOptions = {
  assess: async (spec: BoothSpec) => assessor.assess(spec),
  pause: async () => undefined,
  isWanted: () => true,
};

function assessed(text: string): { view: View; results: ResultDocument } {
  const specs = openSpecs({ 'test.booth': text });
  specs.assess('test.booth');
  const view = specs.view('test.booth');
  if (view.results === undefined) throw new Error(view.checked.problems.map(({ message }) => message).join('\n'));
  return { view, results: view.results };
}

async function designsAt(
  text: string,
  part: string,
  options = everything,
): Promise<{ view: View; actions: CodeAction[] }> {
  const { view, results } = assessed(text);
  const at = text.indexOf(part);
  const memory = { text, fixes: new Map() };
  return { view, actions: await designFixes(view, results, at, at, memory, options) };
}

const promiseOf = (action: CodeAction) => (action.data as { promised: Promised }).promised;

describe('design fixes', () => {
  it('widen a gap, with what that changes in the title', async () => {
    const { actions } = await designsAt(narrow, 'air 6 mm');
    const wider = actions.find(({ title }) => title.startsWith('air 6 mm → 50 mm: '));
    expect(wider?.title).toMatch(
      /^air 6 mm → 50 mm: STC of wall \d+ → \d+ \(\+\d+\), room tone [\d.]+ → [\d.]+ dBA \(.[\d.]+\), .*depth \+44 mm, mass .\d+ kg/,
    );
  });

  it('are not offered for what the settings leave out', async () => {
    const at = async (severities: DesignOptions['severities'], part: string) =>
      (await designsAt(narrow, part, { ...everything, severities: severities ?? {} })).actions;
    expect((await at({ 'requirement-missed': 'error' }, 'require stc'))[0]?.diagnostics?.[0]?.severity).toBe(1);
    expect(await at({ 'requirement-missed': 'off' }, 'require stc')).toEqual([]);
    // The layer that the cursor is on is no problem, and its moves stay.
    expect(await at({ 'requirement-missed': 'off' }, 'air 6 mm')).not.toEqual([]);
  });

  it('yield exactly what they promised once they are applied', async () => {
    for (const part of ['require room-tone', 'require stc', 'air 6 mm']) {
      const { view, actions } = await designsAt(narrow, part);
      expect(actions.length, part).toBeGreaterThan(1);
      for (const action of actions) {
        const now = assessed(applied(view, action));
        // With an assessor that knows nothing of how the promise was made.
        const results = createAssessor().assess(now.view.checked.spec);
        const { assembly, booth, requirement } = promiseOf(action);
        const wall = results.assemblies.wall!;
        if (assembly !== null) {
          expect(wall.ratings.stc).toBe(assembly.stc.after);
          expect(wall.thicknessM * 1000).toBe(assembly.depthMm.after);
        }
        expect(results.booths.box?.noise.total.dBA?.value).toBe(booth?.roomToneDbA?.after);
        expect(results.booths.box?.build.massKg).toBe(booth?.massKg.after);
        const judged = results.requirements.find(({ text }) => text === requirement?.text);
        expect(judged?.value?.value).toBe(requirement?.value.after);
        expect(judged?.verdict === 'met').toBe(requirement?.met);
        expect(action.title).toContain(
          `room tone ${booth?.roomToneDbA?.before.toFixed(1)} → ${booth?.roomToneDbA?.after.toFixed(1)} dBA`,
        );
      }
    }
  }, 120_000);

  it('stand in the order of what they bring to the requirement', async () => {
    const { actions } = await designsAt(narrow, 'require stc');
    const shares = actions.map((action) => promiseOf(action).requirement!.share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(shares.at(-1)).toBeGreaterThan(0);
    expect(actions.every((action) => action.diagnostics?.[0]?.code === 'requirement-missed')).toBe(true);
  });

  it('let the outside grow with the wall, so that the text stays sound', async () => {
    const { view, actions } = await designsAt(narrow, 'air 6 mm');
    const wider = actions.find(({ title }) => title.startsWith('air 6 mm → 50 mm'))!;
    const text = applied(view, wider);
    expect(text).toContain('outside 1350 mm x 1350 mm x 2150 mm');
    expect(openSpecs({ 'test.booth': text }).view('test.booth').checked.problems).toEqual(view.checked.problems);
  });

  it('make of a finding what the assessment said of its fix', async () => {
    // Walls so heavy that the slit lets most of the sound in.
    const heavy = narrow
      .replaceAll('gypsum-board 12.5 mm', 'gypsum-board 50 mm')
      .replace('air 6 mm', 'air 100 mm')
      .replace(/ {2}outside.*\n/, '')
      .replace('20 dBA', '5 dBA');
    const { view, results } = assessed(heavy);
    const leak = results.findings.find(({ id }) => id === 'leak-caps-wall');
    expect(leak?.edits).toMatchObject([{ kind: 'remove' }]);
    const at = leak!.range.from;
    const actions = await designFixes(view, results, at, at, { text: heavy, fixes: new Map() }, everything);
    const closed = actions.find(({ title }) => title.startsWith('without slit crack'));
    expect(applied(view, closed!)).not.toContain('slit');
    const { requirement } = promiseOf(closed!);
    expect(requirement?.value.after).toBeCloseTo(leak!.figures.requirementAfter!, 9);
    expect(requirement?.value.before).toBeCloseTo(leak!.figures.requirementBefore!, 9);
  });

  it('change the let of a value that nothing else uses, also beside a variant', async () => {
    const text = `let gap = 6 mm\n${narrow.replace('air 6 mm', 'air gap').replace(/ {2}outside.*\n/, '')}variant wide { gap = 30 mm }\n`;
    const { view, actions } = await designsAt(text, 'air gap');
    const wider = actions.find(({ title }) => title.startsWith('let gap 6 mm → 50 mm'));
    expect(applied(view, wider!)).toContain('let gap = 50 mm');
  });

  it('stop when the answer is not wanted any more', async () => {
    let worked = 0;
    const options = {
      ...everything,
      assess: (spec: BoothSpec) => {
        worked += 1;
        return everything.assess(spec);
      },
      isWanted: () => worked < 1,
    };
    const { actions } = await designsAt(narrow, 'air 6 mm', options);
    expect(worked).toBe(1);
    expect(actions.length).toBeLessThanOrEqual(1);
  });

  it('are worked out once for a text', async () => {
    const { view, results } = assessed(narrow);
    const at = narrow.indexOf('air 6 mm');
    const memory = { text: narrow, fixes: new Map() };
    let worked = 0;
    const counting = {
      ...everything,
      assess: (spec: BoothSpec) => {
        worked += 1;
        return everything.assess(spec);
      },
    };
    const first = await designFixes(view, results, at, at, memory, counting);
    const before = worked;
    expect(await designFixes(view, results, at, at, memory, counting)).toEqual(first);
    expect(worked).toBe(before);
  });

  it('offer nothing that helps nothing', async () => {
    const { actions } = await designsAt(`${narrow}require floor-load <= 0.5 kPa\n`, 'require floor-load');
    expect(actions).toEqual([]);
  });
});
