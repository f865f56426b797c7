import { createAssessor } from '@boothwright/assessment';
import { expect, it } from 'vitest';
import { defaultSettings } from '../../../src/common/settings.js';
import { createSheets } from '../../../src/common/sheet/service.js';
import { openSpecs, smallBooth } from '../../helpers/index.js';

const asked = { uri: 'file:///booths/a.booth', position: { line: 0, character: 0 }, width: 560, shut: [], known: {} };

function sheetsOf(text: string) {
  const specs = openSpecs({ 'a.booth': text });
  const assessor = createAssessor();
  let times = 0;
  const answer = createSheets({
    viewOf: (uri) => (uri === asked.uri ? specs.view('a.booth') : undefined),
    settle: async () => specs.assess('a.booth'),
    assess: async (spec) => {
      times += 1;
      return assessor.assess(spec);
    },
    sinceCommit: () => undefined,
    shown: () => defaultSettings.show,
  });
  return { specs, answer, times: () => times };
}

it('waits for the first numbers, since there is nothing else to show', async () => {
  const found = await sheetsOf(smallBooth).answer(asked);
  expect(found?.state).toBe('fresh');
  expect(found?.folds?.length).toBeGreaterThan(5);
});

it('assesses a text that was broken from the start as far as it can be read, once', async () => {
  const { answer, times } = sheetsOf(`${smallBooth}session { peoples 1 }\n`);
  const found = await answer(asked);
  expect(found?.state).toBe('partial');
  expect(found?.problems.length).toBeGreaterThan(0);
  expect(found?.folds?.find(({ id }) => id === 'noise')?.summary).toMatch(/dBA/);
  await answer(asked);
  expect(times()).toBe(1);
});

it('has nothing for a document that is not open', async () => {
  expect(await sheetsOf(smallBooth).answer({ ...asked, uri: 'file:///booths/b.booth' })).toBeNull();
});
