import { describe, expect, it } from 'vitest';
import { roomToneSection } from '../../../src/text/sections/room-tone.js';
import { sampleResult } from '../../fixtures/sample-result.js';

const style = { colour: false, width: 200, detail: 'short' } as const;
const booth = sampleResult.booths.alcove!;
const [any] = sampleResult.requirements;

describe('room tone in the report', () => {
  it('says which of its two figures a requirement judges', () => {
    const asked = [{ ...any!, text: 'require room-tone <= -62 dBFS', kind: 'room-tone', unit: 'dBFS' } as const];
    const text = roomToneSection(booth, asked, '', style);
    expect(text).toContain('this is the figure that `require room-tone <= -62 dBFS` judges');
    expect(text).toContain('A-weighted the same noise would read -74 dBFS');
    expect(text).toContain('`require room-tone <= -62 dBFS` does not look at it');
  });

  it('says that nothing judges either where nothing is asked', () => {
    const text = roomToneSection(booth, [], '', style);
    expect(text).not.toContain('judges');
    expect(text).toContain('no requirement in dBFS is stated');
  });
});
