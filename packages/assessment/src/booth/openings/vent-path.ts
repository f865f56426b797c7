import { type Air, energyOf, levelOf } from '@boothwright/acoustics';
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
import { type DuctPathLoss, ductPathLoss } from './duct-loss.js';
import { type DuctWallEntry, ductWallEntry, lossFromAlongTheRun } from './duct-wall.js';

/**
 * Sound through an air path, referred to the clear cross-section of its duct: what the outer end takes in, less the lined run,
 * the bends, boxes, maze and the reflection at the inner end; and beside it what enters through the wall of the run, less what the
 * rest of a lining, the maze and the inner end take. Where boxes and bends lie along the run is not in the text, so that they count
 * nothing for it, which is cautious. A stated insertion loss is that of the whole path.
 */
export function ventPath(vent: Vent, air: Air): BoothPath {
  const area = ductArea(vent);
  const path = ductPathLoss(vent, air);
  const { alongDuct, attenuation, outerReflection, stated, extrapolated, notes } = path;
  const entry = ductEntryGain(area, outerReflection, air);
  const alongAir = perBand((band) => (alongDuct[band] as number) - (entry[band] as number));
  const throughWall = wallLoss(vent, path);
  const more = perBand((band) => {
    const wall = throughWall?.loss[band];
    return wall === undefined || stated[band] ? 0 : levelOf(1 + energyOf((alongAir[band] as number) - wall));
  });
  // A wall of which only the kind is guessed is no better known than a duct beyond its table.
  const widened = (band: number) => extrapolated || (more[band] as number) > 3;
  return {
    result: {
      id: `vent:${vent.name}`,
      kind: 'vent',
      name: vent.name,
      range: textRange(vent.nameRange),
      areaM2: area,
      transmissionLossDb: perBand((band) =>
        stated[band] ? (alongDuct[band] as number) : (alongAir[band] as number) - (more[band] as number),
      ),
      notes: [...notes, ...wallNotes(vent, throughWall, more, stated)],
    },
    halfWidth: nominalHz.map((nominal, band) =>
      stated[band]
        ? halfWidthAt(statedLossHalfWidth, nominal)
        : combinedHalfWidth(halfWidthAt(ductHalfWidth, nominal), widened(band) ? ductExtrapolatedHalfWidth : 0),
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

/** Loss of the way through the wall of the run and out of the inner end, dB by band. */
function wallLoss(vent: Vent, { parts, endReflection }: DuctPathLoss): DuctWallEntry | undefined {
  const wall = ductWallEntry(vent);
  if (wall === undefined) return undefined;
  const of = (name: string) => parts.find(({ part }) => part === name)?.loss;
  // The rule of the flexible hose already speaks of what comes out at its end.
  const lining = vent.wall.value === 'flexible' ? undefined : of('duct');
  const maze = of('maze');
  return {
    ...wall,
    loss: perBand(
      (band) =>
        (wall.loss[band] as number) +
        lossFromAlongTheRun(lining?.[band] ?? 0) +
        (maze?.[band] ?? 0) +
        (endReflection[band] as number),
    ),
  };
}

function wallNotes(
  vent: Vent,
  wall: DuctWallEntry | undefined,
  more: readonly number[],
  stated: readonly boolean[],
): string[] {
  if (vent.run.value <= 0 || stated.every(Boolean)) return [];
  if (wall === undefined) return ['sound through the wall of this duct is not predicted: no source tells it'];
  // Above 3 dB more comes through the wall than through the end.
  return more.some((gain) => gain > 3)
    ? [
        `more comes in through the wall of the run than through its end in some bands; the wall is taken as ${wall.note}`,
      ]
    : [];
}
