import { assemblyThickness } from '../assembly/thickness.js';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Angle below which a free-standing panel counts as unstable, degrees. Evidence: common practice. */
export const unstableBelowDegrees = 10;

/** A wall panel that stands alone during the build falls at a touch. */
export function tipOver({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth, result }) => {
    const height = result.geometry.insideM[2];
    const walls = (['front', 'back', 'left', 'right'] as const).flatMap((face) => {
      const built = booth.faces[face];
      return built === undefined ? [] : [assemblyThickness(built.assembly.layers)];
    });
    if (walls.length === 0) return [];
    const panels = result.build.panels.flatMap(({ tipAngleDegrees }) => tipAngleDegrees ?? []);
    const angle = panels.length > 0 ? Math.min(...panels) : (Math.atan(Math.min(...walls) / height) * 180) / Math.PI;
    if (angle >= unstableBelowDegrees) return [];
    return [
      caution('tip-over', booth.nameRange, {
        hazard: 'A wall panel standing alone tips over',
        number: `${panels.length > 0 ? 'the shakiest panel' : 'the thinnest wall'} falls once it leans ${decimals(angle, 1)} degrees`,
        why: 'Until two walls are joined at a corner, a push or a draught is enough. Sheets stored on edge crush people.',
        ask: 'Brace the first wall before letting go, keep children away, and ask a builder to show you how.',
      }),
    ];
  });
}
