import { type Air, criticalFrequency, type PanelSize } from '@boothwright/acoustics';
import type { Assembly } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import type { AssemblyResult } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { insideAbsorption } from './absorption.js';
import { constructionOf } from './construction.js';
import { layerModel, layerText } from './layer-text.js';
import { pricePerArea } from './price.js';
import { ratingsOf } from './ratings.js';
import { referencePanel } from './reference-panel.js';
import { resonancesOf } from './resonances.js';
import { assemblyMass, layerMass } from './surface-mass.js';
import { assemblyThickness, layerThickness } from './thickness.js';
import { transmissionLossOf } from './transmission-loss.js';

/** Everything about one build-up that does not depend on a booth. */
export function assessAssembly(
  assembly: Assembly,
  air: Air,
  memo: Memo,
  panel: PanelSize = referencePanel,
): AssemblyResult {
  const { layers } = assembly;
  const construction = constructionOf(layers);
  const loss = transmissionLossOf(layers, panel, air, memo);
  return {
    title: assembly.title ?? null,
    range: textRange(assembly.range),
    panel: { widthM: panel.width, heightM: panel.height },
    transmissionLossDb: loss.total,
    transmissionLossRangeDb: loss.modelHalfWidth,
    transmissionLossLowDb: loss.low,
    transmissionLossHighDb: loss.high,
    airbornePathDb: loss.airborne,
    framePathDb: loss.connections,
    ratings: ratingsOf(loss.total),
    surfaceMassKgPerM2: assemblyMass(layers),
    thicknessM: assemblyThickness(layers),
    resonancesHz: resonancesOf(construction, air),
    criticalFrequenciesHz: criticalFrequencies(assembly, air),
    leaves: construction.leaves.length,
    insideAbsorption: insideAbsorption(layers, air, memo),
    layers: layers.map((layer) => ({
      text: layerText(layer),
      thicknessM: layerThickness(layer),
      surfaceMassKgPerM2: layerMass(layer),
      model: layerModel(layer),
      range: textRange(layer.range),
    })),
    pricePerM2: pricePerArea(layers),
  };
}

function criticalFrequencies(assembly: Assembly, air: Air): { layer: string; hz: number }[] {
  return assembly.layers.flatMap((layer) => {
    if (layer.kind !== 'material') return [];
    const plate = constructionOf([layer]).layers[0];
    return plate?.kind === 'plate' ? [{ layer: layerText(layer), hz: criticalFrequency(plate, air) }] : [];
  });
}
