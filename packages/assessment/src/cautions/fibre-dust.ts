import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Fibre on the inside without a cloth in front of it. */
export function fibreDust({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth }) => {
    const bare = booth.linings.filter((lining) => {
      const innermost = lining.layers.at(-1);
      return innermost?.kind === 'material' && innermost.material.kind === 'porous';
    });
    if (bare.length === 0) return [];
    const faces = bare.reduce((sum, lining) => sum + lining.faces.length, 0);
    return [
      caution('bare-fibre', bare[0]?.range ?? booth.nameRange, {
        hazard: 'Porous lining without a cloth in front of it',
        number: `${decimals(faces, 0)} faces`,
        why: 'Mineral fibre irritates skin, eyes and throat, and foam crumbles with age (safety leaflets). Cutting and sanding raise far more dust than living with it.',
        ask: 'Cover it with a breathable cloth, wear mask and eye cover when cutting, and read the data sheet; in an old house have asbestos and lead looked for before cutting anything.',
      }),
    ];
  });
}
