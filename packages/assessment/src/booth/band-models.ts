import { enclosureModels } from '@boothwright/acoustics';
import type { BandModel } from '../result/result-document.js';

/** Which model speaks in which band: the rule of the acoustics package, see `enclosureModels`. */
export function bandModelsOf(closedBoxLimit: number, firstMode: number, schroeder: number): BandModel[] {
  return enclosureModels(closedBoxLimit, firstMode, schroeder);
}
