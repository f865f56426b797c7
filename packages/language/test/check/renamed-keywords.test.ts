import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formerWords } from '../../src/vocabulary/former-words.js';
import { checkText, underlined } from '../check-text.js';

beforeAll(() => {
  formerWords.push({ block: 'session', was: 'persons', now: 'people', since: '9.1' });
  formerWords.push({ block: 'door', was: 'undercut', now: 'gap threshold', since: '9.1' });
});
afterAll(() => {
  formerWords.length = 0;
});

const booth = (door: string, more = ''): string => `use catalog
assembly wall { osb 18 mm }
booth box { inside 1.2 m x 1.2 m x 2 m; walls wall; roof wall; floor wall; door entry on front { size 700 mm x 1900 mm; leaf wall; ${door} } }
${more}`;

describe('a keyword that was renamed', () => {
  it('is read as before, with a hint that can be carried out', () => {
    const result = checkText('session { persons 2 }\n');
    expect(result.spec.session?.people.value).toBe(2);
    expect(result.problems).toMatchObject([
      { id: 'keyword-renamed', severity: 'hint', tags: ['deprecated'], instead: ['people'] },
    ]);
    expect(underlined(result)).toBe('persons');
  });

  it('may have become two words', () => {
    const { spec, problems } = checkText(booth('undercut 4 mm'));
    expect(spec.booths[0]!.doors[0]!.thresholdGap.value).toBe(0.004);
    expect(problems).toMatchObject([{ id: 'keyword-renamed', instead: ['gap threshold'] }]);
  });

  it('is the same fact as the present one', () => {
    expect(checkText('session { persons 2; people 2 }\n').problems.map(({ id }) => id)).toEqual([
      'keyword-renamed',
      'fact-twice',
    ]);
  });

  it('works in the path of a variant', () => {
    const { spec, problems } = checkText(
      booth('gap threshold 2 mm', 'variant sealed { box.entry.undercut = 0.5 mm }\n'),
    );
    expect(spec.variants[0]!.spec.booths[0]!.doors[0]!.thresholdGap.value).toBe(0.0005);
    expect(problems).toMatchObject([{ id: 'keyword-renamed', instead: ['gap.threshold'] }]);
  });

  it('is unknown in another block', () => {
    expect(checkText('site { persons 2 }\n').problems.map(({ id }) => id)).toEqual(['unknown-keyword']);
  });
});
