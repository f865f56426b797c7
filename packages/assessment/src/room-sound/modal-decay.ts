import {
  type Air,
  type BandMode,
  type BoxPoint,
  decayOfExponentials,
  modesOfBand,
  thirdOctaveBands,
} from '@boothwright/acoustics';
import type { AcousticBox, ModalBox } from './acoustic-box.js';
import { dampingByArea, modalSpread } from './modal-spread.js';

/** Modes with less than this share of the energy of the strongest are left out: all of them end about at the end of T30. */
const leastShare = 3e-4;

/** A decay and its range, s. */
export interface Decay {
  readonly seconds: number;
  readonly lowS: number;
  readonly highS: number;
}

/** The decay of a band from its modes, or why there is none. */
export interface ModalDecay {
  readonly decay: Decay | null;
  /** False where no mode's half-power band reaches into this band, so that it rings with its neighbours. */
  readonly ownMode: boolean;
}

/**
 * Decay of one band (index of the grid) by the modes of the box: T20 of their sum between mouth and microphone. The range
 * goes from the shortest to the longest of EDT, T20 and T30 there and from corner to corner, where every mode is heard,
 * and further at both ends by `modalSpread`. `corners` are the modes from corner to corner. Null below the first mode.
 */
export function modalDecay(box: AcousticBox, band: number, corners: readonly BandMode[], air: Air): ModalDecay {
  const here = modesBetween(box, band, air, ...heardFrom(box));
  const { lower, upper } = thirdOctaveBands[band]!;
  const reach = ({ damping }: BandMode) => damping / (2 * Math.PI);
  const ownMode = corners.some((mode) => mode.hz + reach(mode) >= lower && mode.hz - reach(mode) <= upper);
  const first = Math.min(...corners.map((mode) => mode.hz - reach(mode)));
  if (!ownMode && !(first < lower)) return { decay: null, ownMode };
  const times = [timesOf(here), timesOf(corners)];
  const at = times[0];
  if (at === null || at === undefined) return { decay: null, ownMode };
  const all = times.flatMap((each) => (each === null ? [] : [each.edt, each.t20, each.t30]));
  const wider = Math.exp(modalSpread(box, band, here, at.t20, air));
  return {
    decay: { seconds: at.t20, lowS: Math.min(...all) / wider, highS: Math.max(...all) * wider },
    ownMode,
  };
}

/** Modes of a band between two places, damped also by people and things: c A / (8 V) each. */
export function modesBetween(box: ModalBox, band: number, air: Air, from: BoxPoint, to: BoxPoint): BandMode[] {
  const more = dampingByArea(box, box.objects[band]!, air);
  return modesOfBand(box.size, from, to, thirdOctaveBands[band]!, box.admittance[band]!, leastShare, air).map(
    (mode) => ({
      ...mode,
      damping: mode.damping + more,
    }),
  );
}

/** Two opposite corners: no mode has a node there. */
export function cornerToCorner({ size }: ModalBox): [BoxPoint, BoxPoint] {
  return [[0, 0, 0], size];
}

function heardFrom(box: ModalBox): [BoxPoint, BoxPoint] {
  return box.heard === null ? cornerToCorner(box) : [box.heard.mouth, box.heard.microphone];
}

/** T20 of a band by its modes alone, from mouth to microphone, s; null where nothing decays. */
export function modalTime(box: ModalBox, band: number, air: Air): number | null {
  return timesOf(modesBetween(box, band, air, ...heardFrom(box)))?.t20 ?? null;
}

function timesOf(modes: readonly BandMode[]) {
  return decayOfExponentials(modes.map(({ share, damping }) => ({ energy: share, rate: 2 * damping })));
}
