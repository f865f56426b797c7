import type { EnclosureModel } from '@boothwright/acoustics';
import { nominalHz } from '../bands/grid.js';
import type { LowBands } from '../result/noise-result.js';
import { decimals } from '../text/decimals.js';

/** Level difference by both models of the low bands, dB by band; null where the closed box does not hold at all. */
export interface LowModels {
  readonly closedBox: readonly (number | null)[];
  readonly statistical: readonly number[];
}

type Run = LowBands['decidedBy'][number];

/** Neighbouring bands up to the first mode in which the same model decides, from low to high. */
export function lowDeciders(models: LowModels, bandModels: readonly (EnclosureModel | 'not-assessed')[]): Run[] {
  const runs: Run[] = [];
  for (const [band, hz] of nominalHz.entries()) {
    const closed = models.closedBox[band] ?? null;
    const statistical = models.statistical[band];
    if (closed === null || statistical === undefined) continue;
    const only = bandModels[band] === 'small-enclosure';
    const model = only || closed <= statistical ? 'closed-box' : 'walls-and-absorption';
    const lessDb = only ? null : Math.abs(closed - statistical);
    const last = runs.at(-1);
    const joins = last?.model === model && (last.lessDb === null) === only;
    if (!joins) runs.push({ model, fromHz: hz, toHz: hz, lessDb });
    else runs[runs.length - 1] = { ...last, toHz: hz, lessDb: only ? null : Math.max(last.lessDb ?? 0, lessDb ?? 0) };
  }
  return runs;
}

/**
 * Which model decides in which low bands, and why a heavier wall may gain little there.
 *
 * Source: the two models themselves, see docs/models/small-enclosure.md; below the first resonance of a panel its stiffness
 * holds it, and a resonance of walls on the air inside, or of two leaves on the gap between them, mostly moves down where
 * mass is added. `leaves` are those resonances of the faces, Hz.
 */
export function lowDecidersText(
  runs: readonly Run[],
  breathing: LowBands['breathing'],
  leaves: ReadonlyMap<string, number>,
): string {
  if (runs.length === 0) return '';
  const parts = runs.map(({ model, fromHz, toHz, lessDb }) => {
    const bands = fromHz === toHz ? `at ${fromHz} Hz` : `from ${fromHz} to ${toHz} Hz`;
    const name = model === 'closed-box' ? 'the closed box' : 'walls and absorption';
    return lessDb === null
      ? `${bands} ${name} alone`
      : `${bands} ${name}, the worse of two models${lessDb < 0.5 ? ' by next to nothing' : ` by up to ${decimals(lessDb, 0)} dB`}`;
  });
  const has = (wanted: Run['model']) => runs.some(({ model }) => model === wanted);
  const near = breathing === null ? '' : `, here near ${decimals(breathing.hz, 0)} Hz`;
  const box = has('closed-box')
    ? ` In the closed box walls swing on the air inside as on a spring${near}: there more mass mostly moves that resonance down, and where a panel's own stiffness holds it mass does not count.`
    : '';
  const top = Math.max(...runs.map(({ toHz }) => toHz)) * 2;
  const close = [...leaves].filter(([, hz]) => hz <= top).map(([name, hz]) => `${name} ${decimals(hz, 0)} Hz`);
  const walls =
    has('walls-and-absorption') && close.length > 0
      ? ` Two leaves keep out least where they resonate on the gap between them (${close.join(', ')}): a second board moves that resonance down into these bands and may gain next to nothing there.`
      : '';
  return `What limits the low bands: ${parts.join('; ')}.${box}${walls}`;
}
