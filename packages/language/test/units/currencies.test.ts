import { describe, expect, it } from 'vitest';
import { checkText, problemIds } from '../check-text.js';

const price = (text: string): string =>
  `material board { kind panel; density 700 kg/m3; modulus 3 GPa; price ${text} per m2 }\n`;

describe('currencies', () => {
  it.each(['EUR', 'NOK', 'KWD', 'ISK', 'TRY', 'MXN', 'XAF', 'ALL', 'VND'])('know %s of ISO 4217', (code) => {
    const { spec, problems } = checkText(price(`12.50 ${code}`));
    expect(problems).toEqual([]);
    expect(spec.materials.get('board')!.price!.value).toMatchObject({ amount: 12.5, currency: code });
  });

  it.each(['XXX', 'XTS', 'ABC', 'eur'])('do not know %s', (code) => {
    expect(problemIds(price(`12.50 ${code}`))).toEqual(['unknown-unit']);
  });

  it('are never added to each other', () => {
    expect(problemIds('let a = 3 ISK + 2 TRY\n')).not.toEqual([]);
    expect(problemIds('let a = 3 ISK + 2 ISK\n')).toEqual([]);
  });

  it('multiply and divide like other units, whichever was named first', () => {
    const { problems } = checkText(
      `let rate = 10 PHP / 1 m2\nlet all = rate * 3 m2\nlet other = 5 THB\n${price('all')}${price('other').replace('board', 'sheet')}`,
    );
    expect(problems).toEqual([]);
  });
});
