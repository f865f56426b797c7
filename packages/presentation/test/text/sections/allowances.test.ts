import { describe, expect, it } from 'vitest';
import { allowancesSection } from '../../../src/text/sections/allowances.js';
import { sampleResult } from '../../fixtures/sample-result.js';

const style = { colour: false, width: 80, detail: 'short' } as const;
const range = { file: 'a.booth', from: 0, to: 1 };

describe('allowancesSection(result, style)', () => {
  it('lists what is allowed with its reason, and what has no effect', () => {
    const text = allowancesSection(
      {
        ...sampleResult,
        allowances: [
          {
            id: 'off-gassing',
            kind: 'caution',
            reason: 'aired',
            range,
            state: 'allowed',
            told: ['new glue'],
            note: '',
          },
          { id: 'no-fan', kind: 'caution', reason: 'x', range, state: 'refused', told: [], note: 'it can kill' },
        ],
      },
      style,
    );
    expect(text).toContain('off-gassing: new glue (aired)');
    expect(text).toContain('no effect: it can kill');
  });

  it('is absent where no comment allows anything', () => {
    expect(allowancesSection(sampleResult, style)).toBeUndefined();
  });
});
