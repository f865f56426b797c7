import {
  type ConstructionKind,
  emptyCavity,
  halfWidthAt,
  transmissionLossHalfWidth,
} from '../../packages/assessment/src/uncertainty/model-uncertainty.js';
import type { Construction } from './constructions.js';
import type { Curve } from './insulation-results.js';
import { octaveCentres } from './prediction.js';
import { rootMeanSquare } from './statistics.js';

/** Ends of the ranges of bands that share a half-width: octave centres and the words for them. */
export const zones = [
  { words: 'to 160 Hz', octaves: [125] },
  { words: '200 Hz to 1.25 kHz', octaves: [250, 500, 1000] },
  { words: 'above', octaves: [2000, 4000] },
] as const;

/** Half-widths by kind, dB, one for each zone. */
export type HalfWidths = Readonly<Record<string, readonly number[]>>;

/** The kind by which the assessment picks its half-width; undefined for doors, whose leaks are not the wall. */
export function kindOf({ type, layers, connections }: Construction): ConstructionKind | undefined {
  if (type === 'door') return undefined;
  const sheets = layers.flatMap(({ kind }, index) => (kind === 'plate' || kind === 'limp-sheet' ? [index] : []));
  const between = layers.slice(sheets[0]! + 1, sheets.at(-1));
  const depth = (kinds: readonly string[]) =>
    between.reduce((sum, each) => sum + (kinds.includes(each.kind) && 'thickness' in each ? each.thickness : 0), 0);
  const cavity = depth(['air-gap', 'porous']);
  if (cavity === 0) return 'single-leaf';
  if (connections.length > 0) return 'framed-leaves';
  return cavity >= emptyCavity.depth && depth(['porous']) < emptyCavity.fillShare * cavity
    ? 'empty-cavity'
    : 'separate-leaves';
}

/** Kinds whose errors are taken together, because one of them alone has too few curves. */
export const pools: readonly (readonly ConstructionKind[])[] = [
  ['single-leaf'],
  ['separate-leaves', 'empty-cavity'],
  ['framed-leaves'],
];

/** Of a normal distribution about zero, nine tenths lie within this many root mean squares. */
const ninetyPercent = 1.645;

/** 90 % half-widths out of the errors of these curves: 1.645 root mean squares by zone, dB, not rounded. */
export function derivedHalfWidths(curves: readonly Curve[]): HalfWidths {
  return Object.fromEntries(
    pools.flatMap((kinds) => {
      const chosen = curves.filter(({ construction }) => kinds.includes(kindOf(construction) ?? 'open'));
      const widths = zones.map(
        ({ octaves }) =>
          ninetyPercent * rootMeanSquare(chosen.flatMap((curve) => octaves.map((hz) => errorAt(curve, hz)))),
      );
      return kinds.map((kind) => [kind, widths]);
    }),
  );
}

/** The half-widths that the assessment ships, in the same form. */
export function shippedHalfWidths(): HalfWidths {
  return Object.fromEntries(
    pools
      .flat()
      .map((kind) => [kind, zones.map(({ octaves }) => halfWidthAt(transmissionLossHalfWidth[kind], octaves[0]))]),
  );
}

/** The shipped half-widths are in whole dB; within this of the derived ones they still are the derived ones, dB. */
export const roundingAllowance = 0.75;

/** How many octave values of how many lie within their half-width. */
export interface Coverage {
  readonly within: number;
  readonly of: number;
}

/** Coverage of the curves of some kinds by some half-widths. */
export function coverageOf(curves: readonly Curve[], kinds: readonly ConstructionKind[], widths: HalfWidths): Coverage {
  let within = 0;
  let of = 0;
  for (const curve of curves) {
    const kind = kindOf(curve.construction);
    if (kind === undefined || !kinds.includes(kind)) continue;
    zones.forEach(({ octaves }, zone) => {
      for (const hz of octaves) {
        of++;
        if (Math.abs(errorAt(curve, hz)) <= widths[kind]![zone]!) within++;
      }
    });
  }
  return { within, of };
}

/** Coverage when each curve is judged by half-widths that are derived without it. */
export function leaveOneOutCoverage(curves: readonly Curve[], kinds: readonly ConstructionKind[]): Coverage {
  const parts = curves.map((curve) =>
    coverageOf([curve], kinds, derivedHalfWidths(curves.filter((other) => other !== curve))),
  );
  return parts.reduce((sum, part) => ({ within: sum.within + part.within, of: sum.of + part.of }), {
    within: 0,
    of: 0,
  });
}

function errorAt(curve: Curve, hz: number): number {
  return curve.errors[(octaveCentres as readonly number[]).indexOf(hz)]!;
}
