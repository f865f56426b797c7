import { createAssessor } from '@boothwright/assessment';
import type { Severities } from '@boothwright/language';
import { shownAtFirst } from '@boothwright/presentation';
import { describe, expect, it } from 'vitest';
import { type CodeActionParams, CodeActionTriggerKind } from 'vscode-languageserver';
import { createCodeActions } from '../../../src/common/code-actions/service.js';
import { applied } from '../../helpers/code-actions.js';
import { openSpecs } from '../../helpers/index.js';

const assessor = createAssessor();
const wall = 'use catalog\nassembly wall {\n  gypsum-board 12.5 mm\n  air 6 mm\n  gypsum-board 12.5 mm\n}\n';

function started(text: string, resolvesEdits = true) {
  const specs = openSpecs({ 'test.booth': text });
  const uri = specs.uri('test.booth');
  const token = { isCancellationRequested: false, onCancellationRequested: () => ({ dispose: () => undefined }) };
  const worked: string[] = [];
  const state = { whenAssessing: (): void => undefined, severities: {} as Severities };
  const actions = createCodeActions({
    viewOf: (asked) => specs.workspace.view(asked),
    settle: async () => specs.assess('test.booth'),
    assess: async (spec) => {
      worked.push(specs.view('test.booth').text);
      state.whenAssessing();
      return assessor.assess(spec);
    },
    later: (task) => {
      const turn = setImmediate(task);
      return () => clearImmediate(turn);
    },
    resolvesEdits: () => resolvesEdits,
    severities: () => state.severities,
    shown: () => shownAtFirst,
  });
  const params = (part: string, only?: string[]): CodeActionParams => {
    const view = specs.view('test.booth');
    const at = view.lines.positionAt(view.text.indexOf(part));
    const context = { diagnostics: [], triggerKind: CodeActionTriggerKind.Invoked, ...(only ? { only } : {}) };
    return { textDocument: { uri }, range: { start: at, end: at }, context };
  };
  return { specs, actions, params, token, worked, state };
}

describe('the answer of the server', () => {
  it('waits for the numbers and gives design fixes of the layer at the cursor', async () => {
    const { actions, params, token } = started(wall);
    const offered = await actions.offer(params('air 6 mm'), token);
    const wider = offered.find(({ title }) => title.startsWith('air 6 mm → 50 mm: STC of wall'));
    expect(wider?.kind).toBe('refactor.rewrite');
  });

  it('works nothing out when only the text is asked about, or something broken', async () => {
    const sound = started(wall);
    await sound.actions.offer(sound.params('air 6 mm', ['refactor.extract']), sound.token);
    expect(sound.worked).toEqual([]);
    const broken = started(wall.replace('6 mm', '6 mmm'));
    expect((await broken.actions.offer(broken.params('mmm'), broken.token)).map(({ title }) => title)).toContain(
      'Replace `mmm` by `mm`',
    );
    expect(broken.worked).toEqual([]);
  });

  it('stops working out at the next keystroke', async () => {
    const { actions, params, token, worked, state, specs } = started(wall);
    state.whenAssessing = () => specs.change('test.booth', wall.replace('6 mm', '60 mm'));
    await actions.offer(params('air 6 mm'), token);
    expect(worked).toHaveLength(1);
  });

  it('stops when the editor takes its question back', async () => {
    const { actions, params, token, worked, state } = started(wall);
    state.whenAssessing = () => {
      token.isCancellationRequested = true;
    };
    await actions.offer(params('air 6 mm'), token);
    expect(worked).toHaveLength(1);
  });
});

describe('a problem that the settings leave out', () => {
  const disagreeing = `${wall}booth box {\n  inside 1 m x 1 m x 2 m\n  outside 1.5 m x 1.062 m x 2.062 m\n  walls wall\n  roof wall\n  floor wall\n}\n`;

  it('is not mended', async () => {
    const { actions, params, token, state, specs } = started(disagreeing);
    expect(specs.view('test.booth').checked.problems.map(({ id }) => id)).toContain('dimensions-disagree');
    const mends = async () =>
      (await actions.offer(params('1.5 m x', ['quickfix']), token)).filter(({ diagnostics }) =>
        diagnostics?.some(({ code }) => code === 'dimensions-disagree'),
      );
    expect(await mends()).not.toEqual([]);
    state.severities = { 'dimensions-disagree': 'error' };
    expect((await mends())[0]?.diagnostics?.[0]?.severity).toBe(1);
    state.severities = { 'dimensions-disagree': 'off' };
    expect(await mends()).toEqual([]);
  });
});

describe('the mend of everything', () => {
  const broken = wall.replace('6 mm', '6,5 mm');

  it('is worked out once it is chosen where the editor can wait for it', async () => {
    const { actions, params, token, specs } = started(broken);
    const [action] = await actions.offer(params('air', ['source.fixAll']), token);
    expect(action).toMatchObject({ kind: 'source.fixAll.boothwright' });
    expect(action?.edit).toBeUndefined();
    expect(applied(specs.view('test.booth'), actions.resolve(action!))).toBe(wall.replace('6 mm', '6.5 mm'));
  });

  it('comes with its edit to an editor that cannot', async () => {
    const { actions, params, token, specs } = started(broken, false);
    const [action] = await actions.offer(params('air', ['source']), token);
    expect(applied(specs.view('test.booth'), action!)).toBe(wall.replace('6 mm', '6.5 mm'));
  });

  it('is not offered for a sound text', async () => {
    const { actions, params, token } = started(wall);
    expect(await actions.offer(params('air', ['source.fixAll']), token)).toEqual([]);
  });
});
