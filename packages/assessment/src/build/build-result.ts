import type { Booth, Budget, Session } from '@boothwright/language';
import { geometryOf } from '../booth/geometry.js';
import type { BoothResult } from '../result/result-document.js';
import { costOf } from './cost.js';
import { massByPart } from './mass.js';

/** Standard gravity, m/s2. */
export const gravity = 9.80665;

/**
 * What the booth weighs, and how hard it presses on the floor.
 *
 * Floor load: (mass of the booth + people + contents) x g / outside footprint, Pa. It is the mean over the footprint: a
 * booth on feet or runners presses harder where it stands. It is a number to show to a qualified person, not a check.
 */
export function buildResult(
  booth: Booth,
  session: Session | undefined,
  budget: Budget | undefined,
): BoothResult['build'] {
  const parts = massByPart(booth);
  const massKg = parts.reduce((sum, part) => sum + part.kg, 0);
  const peopleKg = session === undefined ? 0 : session.people.value * session.bodyMass.value;
  const loadedMassKg = massKg + peopleKg + booth.contents.value;
  const { footprintM2 } = geometryOf(booth);
  return {
    massKg,
    massByPart: parts,
    loadedMassKg,
    floorLoadPa: (loadedMassKg * gravity) / footprintM2,
    footprintM2,
    cost: costOf(budget),
  };
}
