import {
  type Air,
  defaultPanelEdges,
  type EnclosureElement,
  edgeFactor,
  type Leaf,
  leafAt,
  modeFrequency,
  smallEnclosureLevelDifference,
} from '@boothwright/acoustics';
import type { Booth, Face } from '@boothwright/language';
import { constructionOf } from '../assembly/construction.js';
import { resonancesOf } from '../assembly/resonances.js';
import { nominalHz } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
import { keyText } from '../memo/once-per.js';
import type { LowBands } from '../result/noise-result.js';
import type { BandModel } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import type { BoothPath } from './booth-path.js';
import type { Isolation } from './isolation.js';
import { lowDeciders, lowDecidersText } from './low-deciders.js';

/** Lowest frequency at which the breathing resonance is looked for, Hz, and the steps in an octave. */
const searchFrom = 12;
const stepsPerOctave = 6;

interface Limits {
  readonly closedBoxToHz: number;
  readonly firstModeHz: number;
  readonly schroederHz: number;
}

/** Where each model of the low bands holds, the resonances that rule there and how wide the range is. */
export function lowBandsOf(
  booth: Booth,
  paths: readonly BoothPath[],
  volume: number,
  limits: Limits,
  isolation: Isolation,
  bandModels: readonly BandModel[],
  air: Air,
  memo: Memo,
): LowBands {
  const panels = paths.flatMap((path) => (path.result.kind === 'face' ? facePanels(booth, path, air) : []));
  const breathing = breathingOf(paths, volume, limits.closedBoxToHz, air, memo);
  const widest = (from: number, to: number) =>
    Math.max(...isolation.halfWidth.filter((_, band) => inside(nominalHz[band] as number, from, to)));
  const halfWidthTo100HzDb = widest(0, 100);
  const halfWidthMidDb = widest(200, 1250);
  const decidedBy = lowDeciders(isolation.lowModels, bandModels);
  const decidedText = lowDecidersText(decidedBy, breathing, leafResonances(booth, air));
  return {
    ...limits,
    panels,
    breathing,
    decidedBy,
    decidedText,
    halfWidthTo100HzDb,
    halfWidthMidDb,
    text: lowBandsText(limits, panels, breathing, halfWidthTo100HzDb, halfWidthMidDb),
  };
}

/** First resonance of the leaves on their gap, Hz, of every assembly that closes a face. */
function leafResonances(booth: Booth, air: Air): Map<string, number> {
  const closing = Object.values(booth.faces).flatMap((face) => (face === undefined ? [] : [face.assembly]));
  return new Map(
    closing.flatMap((assembly): [string, number][] => {
      const [first] = resonancesOf(constructionOf(assembly.layers), air);
      return first === undefined ? [] : [[assembly.name, first]];
    }),
  );
}

function inside(hz: number, from: number, to: number): boolean {
  return hz >= from && hz <= to;
}

/** First resonance of the leaf that swings lowest, held at the rim of the face, and held by the studs besides. */
function facePanels(booth: Booth, path: BoothPath, air: Air): LowBands['panels'] {
  const face = path.result.name as Face;
  const spacing = booth.faces[face]?.assembly.layers.find((layer) => layer.kind === 'frame')?.spacing.value;
  return path.elements.slice(0, 1).flatMap((element) => {
    if (element.kind !== 'wall' || element.size === undefined) return [];
    const { layers, size } = element;
    const { width, height } = size;
    const plates = layers.flatMap((layer, index) => (layer.kind === 'plate' ? [index] : []));
    const resonances = [plates[0], plates.at(-1)].flatMap((index) => {
      if (index === undefined) return [];
      const leaf = leafAt(layers, index, air);
      const bay = spacing === undefined ? width : Math.min(spacing, width);
      return [{ whole: resonanceOf(leaf, width, height), bay: resonanceOf(leaf, bay, height) }];
    });
    if (resonances.length === 0) return [];
    return [
      {
        face,
        wholeHz: Math.min(...resonances.map(({ whole }) => whole)),
        betweenStudsHz: Math.min(...resonances.map(({ bay }) => bay)),
      },
    ];
  });
}

function resonanceOf(leaf: Leaf, a: number, b: number): number {
  const speed = Math.sqrt(leaf.bendingStiffness / leaf.surfaceMass);
  return modeFrequency(speed, a, b, 1, 1) * edgeFactor(a, b, defaultPanelEdges);
}

/** The frequency below the limit of the closed box at which it keeps out least; null when it lies at an end. */
function breathingOf(
  paths: readonly BoothPath[],
  volume: number,
  limit: number,
  air: Air,
  memo: Memo,
): LowBands['breathing'] {
  const elements = paths.flatMap((path) => path.elements.map((element) => quieted(element, path)));
  const steps = Math.floor(stepsPerOctave * Math.log2(limit / searchFrom));
  if (steps < 2 || elements.length === 0) return null;
  const hz = Array.from({ length: steps + 1 }, (_, step) => searchFrom * 2 ** (step / stepsPerOctave));
  const parts = elements.map((element) =>
    element.kind === 'wall' ? [keyText(element.layers), element.area, element.size] : element,
  );
  const differences = memo.of(`breathing ${JSON.stringify([volume, parts, hz])} ${keyText(air)}`, () =>
    smallEnclosureLevelDifference({ volume, elements, air, hz, cancellation: 'none' }),
  );
  const least = differences.reduce((best, value, index) => (value < (differences[best] as number) ? index : best), 0);
  if (least === 0 || least === steps) return null;
  return { hz: hz[least] as number, differenceDb: differences[least] as number };
}

/** What a lining takes off in the lowest band of the grid stands for all below it. */
function quieted(element: EnclosureElement, { attenuation }: BoothPath): EnclosureElement {
  const lowest = attenuation?.[0];
  return lowest === undefined || element.kind !== 'leak' ? element : { ...element, attenuation: Math.max(0, lowest) };
}

function lowBandsText(
  { closedBoxToHz, firstModeHz, schroederHz }: Limits,
  panels: LowBands['panels'],
  breathing: LowBands['breathing'],
  low: number,
  mid: number,
): string {
  const whole = panels.map(({ wholeHz }) => wholeHz);
  const bays = panels.map(({ betweenStudsHz }) => betweenStudsHz);
  const panelWords =
    panels.length === 0
      ? ''
      : ` The leaves are taken to swing as whole faces, from ${decimals(Math.min(...whole), 0)} Hz; a frame that holds them at every stud would move that up to ${decimals(Math.max(...bays), 0)} Hz and could keep out more below it, which is not counted on.`;
  const breathingWords =
    breathing === null
      ? ''
      : ` Walls and air breathe together near ${decimals(breathing.hz, 0)} Hz, where the booth keeps out ${breathing.differenceDb < 0 ? `nothing and adds ${decimals(-breathing.differenceDb, 0)} dB` : `only ${decimals(breathing.differenceDb, 0)} dB`}.`;
  return `Up to ${decimals(closedBoxToHz, 0)} Hz the booth is a closed box, its air one spring; from there to ${decimals(firstModeHz, 0)} Hz, the first mode, the worse of two models counts; up to ${decimals(schroederHz, 0)} Hz single modes rule.${panelWords}${breathingWords} Up to 100 Hz a figure is good to ±${decimals(low, 0)} dB, from 200 Hz to 1.25 kHz to ±${decimals(mid, 0)} dB.`;
}
