import type { AssemblyResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../numbers/format-number.js';

/** `STC 41 · 24.3 kg/m² · f₀ 112 Hz`. */
export function assemblyLabel(result: AssemblyResult): string {
  const [first] = result.resonancesHz;
  return [
    `STC ${result.ratings.stc}`,
    `${formatFigures(result.surfaceMassKgPerM2)} kg/m²`,
    ...(first === undefined ? [] : [`f₀ ${formatNumber(first)} Hz`]),
  ].join(' · ');
}
