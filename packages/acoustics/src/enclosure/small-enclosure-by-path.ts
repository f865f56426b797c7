import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { heatRatio } from '../openings/air-friction.js';
import type { LevelDifference } from '../quantities/level-difference.js';
import { addFlow, createFlows, driveOf, levelDifferenceOf } from './enclosure-flows.js';
import { checkElement, enclosureParts } from './enclosure-parts.js';
import {
  defaultCancellation,
  defaultIsothermalShare,
  type EnclosureElement,
  type SmallEnclosure,
} from './small-enclosure-level-difference.js';

/** A way into an enclosure: parts of its skin that belong together, such as the lined and the bare share of a face. */
export type EnclosurePath = {
  readonly elements: readonly EnclosureElement[];
  /** dB at each frequency; taken off the flow through the leaks of this path in place of their own `attenuation`. */
  readonly attenuation?: readonly number[];
};

/** A small enclosure by its paths. */
export type SmallEnclosureOfPaths = Pick<
  SmallEnclosure,
  'volume' | 'air' | 'hz' | 'isothermalShare' | 'cancellation'
> & {
  readonly paths: readonly EnclosurePath[];
};

/** Level outside minus level inside, dB per frequency: by all paths at once, and as if each were the only one. */
export type LevelDifferencesByPath = { readonly all: LevelDifference; readonly alone: readonly LevelDifference[] };

/**
 * `smallEnclosureLevelDifference` of a box with all of its paths and with each of them alone: all others are rigid and tight
 * then. The two-port of a part is worked out once for both.
 *
 * Equation, units, source, validity: as there. `all` and `alone` are infinite where nothing flows in.
 * Errors: as there; ArgumentError for an attenuation below zero or another number of them than of frequencies.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { smallEnclosureByPath } from '@boothwright/acoustics/enclosure';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const wall = { kind: 'wall', layers: [{ kind: 'limp-sheet', surfaceMass: 12 }], area: 9 } as const;
 * const hole = { kind: 'leak', area: 0.002, depth: 0.1 } as const;
 * const paths = [{ elements: [wall] }, { elements: [hole], attenuation: [6] }];
 * const { all, alone } = smallEnclosureByPath({ volume: 2, air, hz: [80], paths });
 * all; // [11.38]
 * alone.map(([difference]) => difference); // [11.49, 55.67]
 * ```
 */
export function smallEnclosureByPath({
  volume,
  paths,
  air,
  hz,
  isothermalShare = defaultIsothermalShare,
  cancellation = defaultCancellation,
}: SmallEnclosureOfPaths): LevelDifferencesByPath {
  requireNumber('volume of the enclosure', volume, { above: 0, unit: 'cubic metres' });
  requireNumber('isothermal share', isothermalShare, { atLeast: 0, atMost: 1 });
  requireOneOf('cancellation', cancellation, ['full', 'none']);
  const elements = paths.flatMap((path) => path.elements);
  if (elements.length === 0)
    throw new ArgumentError('number of elements', 0, '1 or more, as sound gets in through them');
  elements.forEach(checkElement);
  for (const frequency of hz) requireNumber('frequency', frequency, { above: 0, unit: 'Hz' });
  for (const { attenuation } of paths) checkAttenuation(attenuation, hz.length);
  const parts = enclosureParts(elements, air);
  const compliance = (volume / (air.density * air.soundSpeed ** 2)) * (1 + isothermalShare * (heatRatio(air) - 1));
  const together: number[] = [];
  const alone: number[][] = paths.map(() => []);
  hz.forEach((frequency, at) => {
    const sum = createFlows(frequency, compliance);
    let part = 0;
    paths.forEach((path, index) => {
      const own = createFlows(frequency, compliance);
      for (const element of path.elements) {
        const { area, twoPort } = parts[part]!;
        part += 1;
        if (area === 0) continue;
        const taken = element.kind === 'leak' ? path.attenuation?.[at] : undefined;
        const drive = taken === undefined ? driveOf(element) : 10 ** (-taken / 20);
        const through = twoPort(frequency);
        addFlow(own, area, drive, through);
        addFlow(sum, area, drive, through);
      }
      alone[index]!.push(levelDifferenceOf(own, cancellation));
    });
    together.push(levelDifferenceOf(sum, cancellation));
  });
  return {
    all: together as readonly number[] as LevelDifference,
    alone: alone as readonly unknown[] as LevelDifference[],
  };
}

function checkAttenuation(attenuation: readonly number[] | undefined, count: number): void {
  if (attenuation === undefined) return;
  if (attenuation.length !== count) {
    throw new ArgumentError('attenuations of a path', attenuation.length, `one for each of the ${count} frequencies`);
  }
  for (const each of attenuation) requireNumber('attenuation of a path', each, { atLeast: 0, unit: 'dB' });
}
