import { onePersonMass } from '../build/one-person-mass.js';
import { sheetLength } from './practice.js';

/**
 * People to carry a panel by common practice: one per 25 kg, and two for anything as long as a sheet is wide. A roof takes
 * two at least, and props: it is not to hang on the last pair of hands. Not a limit of any code.
 */
export function lifters(panel: { face: string; widthM: number; heightM: number; massKg: number }): {
  people: number;
  props: boolean;
} {
  const byMass = Math.max(1, Math.ceil(panel.massKg / onePersonMass - 1e-9));
  const props = panel.face === 'roof';
  const long = Math.max(panel.widthM, panel.heightM) >= sheetLength;
  return { people: Math.max(byMass, long || props ? 2 : 1), props };
}
