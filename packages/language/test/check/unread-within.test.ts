import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

const within = (line: string, block = 'booth b') =>
  checkText(`${block} {\n  ${line}\n}\nsession { people 1 }\n`).spec.unread.map((unread) => [
    unread.part,
    unread.within.join(' > '),
  ]);

describe('the line that an error can have taken from a booth', () => {
  it('is the one that a misspelt first word surely means', () => {
    expect(within('mounst 4 stiffness 100 N/mm')).toContainEqual(['booth', 'mounts']);
    expect(within('linning on left { mineral-wool-60 50 mm }')).toContainEqual(['booth', 'lining']);
    expect(within('door d on front { size 1 m x 1 m; leaf osb 18 mm; swong outward }')).toContainEqual([
      'booth',
      'door > swing',
    ]);
    expect(within('obstacel x at 0 m, 0 m, 0 m { size 1 m x 1 m x 1 m }', 'site')).toContainEqual(['site', 'obstacle']);
  });

  it('is any line where two words are as near, where the word is far from all, or where it is short', () => {
    for (const line of ['mounth at 1 m, 1 m, 1 m', 'spring 4', 'mik at 1 m, 1 m, 1 m'])
      expect(within(line)).toContainEqual(['booth', '']);
  });

  it('is any line where several lines begin with that word', () => {
    expect(within('door d on front { size 1 m x 1 m; leaf osb 18 mm; gapp threshold 3 mm }')).toContainEqual([
      'booth',
      'door',
    ]);
  });

  it('is any line where the misspelt one opens a block that is not closed', () => {
    expect(within('linning on left { mineral-wool-60 50 mm')).toContainEqual(['booth', '']);
  });
});
