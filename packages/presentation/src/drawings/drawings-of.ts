import type { AssemblyResult, BoothResult } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { faceNames } from './booth-frame.js';
import { drawElevation } from './draw-elevation.js';
import { drawLayerSection } from './draw-layer-section.js';
import { drawLengths } from './draw-lengths.js';
import { drawPanels } from './draw-panels.js';
import { drawPlan } from './draw-plan.js';
import { drawRoomPlan } from './draw-room-plan.js';
import { drawSheets } from './draw-sheets.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { explodedView } from './exploded-view.js';

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
  return [
    drawRoomPlan(booth, spec.site, own, options),
    drawPlan(booth, own, options),
    ...faceNames.map((face) => drawElevation(booth, face, own, options)),
    ...sections,
    explodedView(booth.name, own, options),
    ...drawPanels(booth.name, own, options),
    ...(own === undefined ? [] : [...drawSheets(own.build, options), ...drawLengths(own.build, options)]),
  ];
}
