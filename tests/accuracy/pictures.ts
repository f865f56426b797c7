import type { AbsorptionCurve } from './absorption-results.js';
import type { ConstructionType } from './constructions.js';
import type { Curve } from './insulation-results.js';
import { smallMultiples } from './plots.js';

/** Centres as the pictures and tables name them. */
export const bandNames = ['125', '250', '500', '1k', '2k', '4k'] as const;

const insulationPictures: readonly { file: string; title: string; types: readonly ConstructionType[] }[] = [
  { file: 'single-leaves.svg', title: 'transmission loss of single leaves, dB', types: ['single leaf'] },
  {
    file: 'two-leaf.svg',
    title: 'transmission loss of walls and panes of two leaves, dB',
    types: ['stud wall', 'joist floor', 'independent leaves', 'double pane'],
  },
  {
    file: 'lined-and-doors.svg',
    title: 'transmission loss of lined leaves and doors, dB',
    types: ['lined leaf', 'door'],
  },
];

/** Pictures of docs/accuracy by file name. */
export function pictures(curves: readonly Curve[], absorption: readonly AbsorptionCurve[]): Record<string, string> {
  const description = 'Octaves from 125 Hz to 4 kHz, one small chart for each measured row, named by its id';
  const insulation = insulationPictures.map(({ file, title, types }) => {
    const panels = curves
      .filter(({ construction }) => types.includes(construction.type))
      .map(({ row, measured, predicted }) => ({ title: row.id, measured, predicted }));
    return [file, smallMultiples(panels, { title, description, bandNames, highest: 80, step: 20 })] as const;
  });
  const panels = absorption.map(({ row, measured, finite }) => ({ title: row.id, measured, predicted: finite }));
  const title = 'absorption coefficient of a sample of 10.8 m2';
  const porous = smallMultiples(panels, { title, description, bandNames, highest: 1.4, step: 0.2 });
  return { ...Object.fromEntries(insulation), 'absorption.svg': porous };
}
