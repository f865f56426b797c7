import currencyCodes from 'currency-codes';

/** Codes of ISO 4217 that stand for no money: for tests, and for no currency at all. */
const NO_MONEY: ReadonlySet<string> = new Set(['XTS', 'XXX']);

const codes: ReadonlySet<string> = new Set(currencyCodes.codes().filter((code) => !NO_MONEY.has(code)));

/** Whether a word is the code of a currency in ISO 4217. */
export function isCurrency(word: string): boolean {
  return codes.has(word);
}
