const numeral = /-?(?:\d+\.?\d*(?:e[-+]?\d+)?|Infinity)/g;

/** A value as an example writes it: strings in single quotes, lists and objects with a space after each comma. */
export function show(value: unknown): string {
  if (typeof value === 'string') return `'${value}'`;
  if (Array.isArray(value)) return `[${value.map(show).join(', ')}]`;
  if (value !== null && typeof value === 'object') {
    const fields = Object.entries(value).map(([name, field]) => `${name}: ${show(field)}`);
    return `{ ${fields.join(', ')} }`;
  }
  return Object.is(value, -0) ? '0' : String(value);
}

/**
 * Whether a value is the one stated: numbers are compared to the last digit that is written down, everything else to the
 * letter. A unit is no part of the result: it is stated bare.
 */
export function agrees(value: unknown, stated: string): boolean {
  const shown = show(value);
  const found = shown.match(numeral) ?? [];
  const expected = stated.match(numeral) ?? [];
  if (shown.replace(numeral, '#') !== stated.replace(numeral, '#')) return false;
  return found.length === expected.length && found.every((text, index) => sameNumber(Number(text), expected[index]!));
}

function sameNumber(found: number, stated: string): boolean {
  const wanted = Number(stated);
  if (!Number.isFinite(wanted)) return found === wanted;
  const [mantissa, exponent = '0'] = stated.split('e');
  const decimals = (mantissa!.split('.')[1] ?? '').length;
  const step = 10 ** (Number(exponent) - decimals);
  return Math.abs(found - wanted) <= step / 2 + 1e-9 * Math.abs(wanted);
}
