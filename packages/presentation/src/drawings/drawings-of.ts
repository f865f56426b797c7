import type { AssemblyResult, BoothResult } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { drawLayerSection } from './draw-layer-section.js';
import { drawPlan } from './draw-plan.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';

/** A specification and what was worked out from it: a result document, or one of its variants with the variant's spec. */
export interface DrawnFrom {
  readonly spec: BoothSpec;
  readonly result:
    | {
        readonly assemblies: Readonly<Record<string, AssemblyResult>>;
        readonly booths: Readonly<Record<string, BoothResult>>;
      }
    | undefined;
  /** Name of the booth; the first of the text without it. */
  readonly booth?: string | undefined;
}

/** Every drawing that there is for a booth, in the order in which one builds; what cannot be drawn says why. */
export function drawingsOf({ spec, result, booth: name }: DrawnFrom, options: DrawingOptions): (Drawing | NotDrawn)[] {
  const booth = name === undefined ? spec.booths[0] : spec.booths.find((one) => one.name === name);
  const sections = [...spec.assemblies.values()].map((assembly) => drawLayerSection(assembly, options));
  if (booth === undefined) return sections;
  const own = result?.booths[booth.name];
  return [drawPlan(booth, own, options), ...sections];
}
