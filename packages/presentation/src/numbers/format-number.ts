/** A number with a fixed count of decimals; never `-0`, never an exponent, `–` when it is not a finite number. */
export function formatNumber(value: number, decimals = 0): string {
  if (!Number.isFinite(value)) return '–';
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `-${text}` : text;
}

/** A number with three figures that matter: 0.125, 4.9, 24.3, 860, 12500. */
export function formatFigures(value: number, figures = 3): string {
  if (!Number.isFinite(value)) return '–';
  if (value === 0) return '0';
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.min(6, Math.max(0, figures - 1 - magnitude));
  const text = formatNumber(value, decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
