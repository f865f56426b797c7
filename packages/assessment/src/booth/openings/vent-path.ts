import type { Air } from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { chamberSides } from '../../air/vent-sections.js';
import { nominalHz, perBand } from '../../bands/grid.js';
import { textRange } from '../../text/text-range.js';
import { combinedHalfWidth } from '../../uncertainty/combined.js';
import {
  ductExtrapolatedHalfWidth,
  ductHalfWidth,
  halfWidthAt,
  statedLossHalfWidth,
} from '../../uncertainty/model-uncertainty.js';
import type { BoothPath } from '../booth-path.js';
import { ductArea } from './duct-area.js';
import { ductEntryGain } from './duct-entry.js';
import { ductPathLoss } from './duct-loss.js';

/**
 * Sound through an air path, referred to the clear cross-section of its duct: what the outer end takes in, less the lined run,
 * the bends, boxes, maze and the reflection at the inner end. Sound through the walls of the duct outside the booth is left out.
 */
export function ventPath(vent: Vent, air: Air): BoothPath {
  const area = ductArea(vent);
  const { alongDuct, attenuation, outerReflection, stated, extrapolated, notes } = ductPathLoss(vent, air);
  const entry = ductEntryGain(area, outerReflection, air);
  return {
    result: {
      id: `vent:${vent.name}`,
      kind: 'vent',
      name: vent.name,
      range: textRange(vent.nameRange),
      areaM2: area,
      transmissionLossDb: perBand((band) =>
        stated[band] ? (alongDuct[band] as number) : (alongDuct[band] as number) - (entry[band] as number),
      ),
      notes,
    },
    halfWidth: nominalHz.map((nominal, band) =>
      stated[band]
        ? halfWidthAt(statedLossHalfWidth, nominal)
        : combinedHalfWidth(halfWidthAt(ductHalfWidth, nominal), extrapolated ? ductExtrapolatedHalfWidth : 0),
    ),
    elements: [{ kind: 'leak', area, depth: airwayLength(vent) }],
    attenuation,
    leak: true,
  };
}

/** m that sound and air travel in the path. */
function airwayLength({ run, chambers, maze }: Vent): number {
  const boxes = chambers.reduce((sum, chamber) => sum + chamberSides(chamber)[0], 0);
  return run.value + boxes + (maze === undefined ? 0 : (maze.turns.value + 1) * maze.leg.value);
}
