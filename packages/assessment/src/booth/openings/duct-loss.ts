import {
  type Air,
  type DuctLoss,
  ductBendLoss,
  endReflectionLoss,
  flexibleDuctOctaveLoss,
  largestLinedDuctLoss,
  linedRectangularDuctLoss,
  linedRoundDuctLoss,
  octaveDuctLossInThirds,
} from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { perBand } from '../../bands/grid.js';
import { valuesOnGrid } from '../../bands/quantity-table.js';
import { chamberLoss } from './chamber-loss.js';
import { ductArea } from './duct-area.js';
import { mazeLoss } from './maze-loss.js';

/** What a part of an air path takes off, dB by band. */
export interface DuctPathPart {
  readonly part: 'duct' | 'bends' | 'chambers' | 'maze' | 'end';
  readonly loss: readonly number[];
}

export interface DuctPathLoss {
  /** What the whole path and its end inside the booth take from sound that travels in it, dB. */
  readonly alongDuct: readonly number[];
  /** The same without the reflection at the end: what lining, bends, boxes and maze take, or what the user states. */
  readonly attenuation: readonly number[];
  /** Loss by reflection at the end inside the booth, dB; part of `alongDuct`. */
  readonly endReflection: readonly number[];
  /** Loss by reflection at the end in the room, dB; no part of `alongDuct`. */
  readonly outerReflection: readonly number[];
  /** Bands in which the user's own insertion loss stands in `alongDuct`. */
  readonly stated: readonly boolean[];
  /** True when an input lies outside what the sources of the computed losses cover. */
  readonly extrapolated: boolean;
  /** What the sources of the computed losses do not cover, and what was done about it. */
  readonly notes: readonly string[];
  /** Computed parts in the order of the path, before the hold and before a stated loss. */
  readonly parts: readonly DuctPathPart[];
}

/**
 * Loss of one air path in third-octave bands: its lined run, bends, boxes, maze and the end in the booth, one after the other.
 * A bare run counts nothing. The computed loss of the whole path is held at the 40 dB that the source of lined ducts grants:
 * beyond it sound goes round, through walls of ducts. A stated insertion loss replaces the computed loss in the bands that it
 * names; the others keep the computed one. Bends of rectangular ducts are mitred turns, those of round ducts round bends. A
 * lined round duct with a flexible wall takes the table of flexible ducts. Changes of the section between the parts reflect
 * sound too; that is left out.
 */
export function ductPathLoss(vent: Vent, air: Air): DuctPathLoss {
  const known = losses.get(vent);
  if (known?.air === air) return known.loss;
  const loss = computedLoss(vent, air);
  losses.set(vent, { air, loss });
  return loss;
}

/** The way in, the fans and the table of vents ask for the same path within one assessment; a vent never changes. */
const losses = new WeakMap<Vent, { readonly air: Air; readonly loss: DuctPathLoss }>();

function computedLoss(vent: Vent, air: Air): DuctPathLoss {
  const run = lengthLoss(vent);
  const bend = bendLoss(vent, air);
  const bends = vent.bends.value;
  const chambers = vent.chambers.map((chamber) => chamberLoss(chamber, ductArea(vent), air));
  const maze = vent.maze === undefined ? undefined : mazeLoss(vent.maze, air);
  const end = endReflectionLoss({ area: innerEndArea(vent), termination: 'flush' }, air);
  const outer = endReflectionLoss({ area: ductArea(vent), termination: 'flush' }, air);
  const parts: DuctPathPart[] = [
    ...(run === undefined ? [] : [{ part: 'duct' as const, loss: run.loss }]),
    ...(bends > 0 ? [{ part: 'bends' as const, loss: bend.loss.map((loss) => bends * loss) }] : []),
    ...(chambers.length === 0
      ? []
      : [
          {
            part: 'chambers' as const,
            loss: perBand((band) => chambers.reduce((sum, { loss }) => sum + (loss[band] as number), 0)),
          },
        ]),
    ...(maze === undefined ? [] : [{ part: 'maze' as const, loss: maze.loss }]),
    { part: 'end', loss: end.loss },
  ];
  const stated = vent.insertionLoss === undefined ? perBand(() => null) : valuesOnGrid(vent.insertionLoss.value);
  const total = (of: readonly DuctPathPart[]) =>
    perBand((band) => of.reduce((sum, { loss }) => sum + (loss[band] as number), 0));
  const computed = total(parts.filter(({ part }) => part !== 'end'));
  const summed = total(parts);
  const held = summed.some((loss, band) => stated[band] === null && loss > largestLinedDuctLoss);
  const used = [...(run === undefined ? [] : [run]), ...(bends > 0 ? [bend] : []), end].map(({ validity }) => validity);
  const anyComputed = stated.some((value) => value === null);
  const extrapolated = used.some((validity) => validity.extrapolated) || (maze?.extrapolated ?? false);
  return {
    alongDuct: perBand((band) => stated[band] ?? Math.min(summed[band] as number, largestLinedDuctLoss)),
    attenuation: perBand((band) => stated[band] ?? Math.min(computed[band] as number, largestLinedDuctLoss)),
    endReflection: end.loss,
    outerReflection: outer.loss,
    stated: stated.map((value) => value !== null),
    extrapolated: anyComputed && extrapolated,
    notes: anyComputed
      ? [
          ...new Set([
            ...used.flatMap(({ notes }) => notes),
            ...chambers.flatMap(({ notes }) => notes),
            ...(maze?.notes ?? []),
            ...(vent.grille === undefined ? [] : ['a grille at the end takes some of the reflection there away']),
            ...(held ? [`loss held at ${largestLinedDuctLoss} dB: beyond it sound goes round the duct`] : []),
          ]),
        ]
      : [],
    parts,
  };
}

function lengthLoss({ duct, lining, run, wall }: Vent): DuctLoss | undefined {
  const thickness = lining?.thickness?.value ?? 0;
  const length = run.value;
  if (thickness <= 0) return undefined;
  if (duct.kind === 'rectangular') {
    return linedRectangularDuctLoss({
      width: duct.width.value,
      height: duct.height.value,
      length,
      lining: thickness,
    });
  }
  const diameter = duct.diameter.value;
  return wall.value === 'flexible'
    ? octaveDuctLossInThirds(flexibleDuctOctaveLoss({ diameter, length }))
    : linedRoundDuctLoss({ diameter, length, lining: thickness });
}

function bendLoss({ duct, lining }: Vent, air: Air): DuctLoss {
  return ductBendLoss(
    {
      width: duct.kind === 'round' ? duct.diameter.value : Math.max(duct.width.value, duct.height.value),
      lined: (lining?.thickness?.value ?? 0) > 0,
      form: duct.kind === 'round' ? 'round' : 'square',
    },
    air,
  );
}

/** m2 of the face at which the path ends in the booth: its grille, or its maze, or the duct. */
function innerEndArea(vent: Vent): number {
  const face = vent.grille?.size ?? vent.maze?.channel;
  return face === undefined ? ductArea(vent) : face.width.value * face.height.value;
}
