import { type BandMode, thirdOctaveBands } from '@boothwright/acoustics';
import type { RoomMode, RoomSoundResult } from '../result/room-sound-result.js';
import { modalBands } from './layers-admittance.js';

/** Modes up to here are listed, Hz: above it no fundamental of speech lies. */
export const listedToHz = 300;
/** A hall has thousands; nobody reads them. */
export const mostListed = 100;

/**
 * Fundamentals of speech, Hz: low voices, mostly of men, and high ones, mostly of women.
 * Source: R. J. Baken, R. F. Orlikoff, Clinical Measurement of Speech and Voice, 2000, at second hand.
 */
export const fundamentals = {
  'low-voice': { fromHz: 85, toHz: 180 },
  'high-voice': { fromHz: 165, toHz: 255 },
} as const;

/** Modes nearer than this, as a ratio of frequencies, act as one. Evidence: the project's own bound. */
export const clusterRatio = 1.05;
/** Neighbours further apart than a third of an octave leave a gap. Evidence: the project's own bound. */
export const gapRatio = 2 ** (1 / 3);

/**
 * Modes of the lined box up to 300 Hz. Each is taken from the band that it rings in: the walls there are those that it
 * meets. `cornersOf` gives the modes of a band from corner to corner.
 */
export function modeList(
  cornersOf: (band: number) => readonly BandMode[],
  spreadOf: (band: number, mode: BandMode) => number,
): RoomMode[] {
  const found = new Map<string, { off: number; band: number; mode: BandMode }>();
  for (let band = 0; band < modalBands && thirdOctaveBands[band]!.lower <= listedToHz; band += 1) {
    const { exact } = thirdOctaveBands[band]!;
    for (const mode of cornersOf(band)) {
      const off = Math.abs(Math.log(mode.hz / exact));
      const key = mode.order.join();
      if (off < (found.get(key)?.off ?? Number.POSITIVE_INFINITY)) found.set(key, { off, band, mode });
    }
  }
  return [...found.values()]
    .filter(({ mode: { hz } }) => hz >= thirdOctaveBands[0]!.lower && hz <= listedToHz)
    .sort((a, b) => a.mode.hz - b.mode.hz)
    .slice(0, mostListed)
    .map(({ band, mode }) => listed(mode, () => Math.exp(spreadOf(band, mode))));
}

function listed({ hz, order, damping }: BandMode, widerOf: () => number): RoomMode {
  const base = { hz, order: [...order] as const, onVoice: voicesAt(hz) };
  if (!(damping > 0)) return { ...base, decayS: null, lowS: null, highS: null };
  const decayS = (3 * Math.LN10) / damping;
  const wider = widerOf();
  return { ...base, decayS, lowS: decayS / wider, highS: decayS * wider };
}

function voicesAt(hz: number): RoomMode['onVoice'] {
  return (['low-voice', 'high-voice'] as const).filter(
    (voice) => hz >= fundamentals[voice].fromHz && hz <= fundamentals[voice].toHz,
  );
}

/** Runs of two or more modes within 5 % of the lowest of them. */
export function clustersOf(modes: readonly RoomMode[]): RoomSoundResult['clusters'] {
  const runs: RoomMode[][] = [];
  for (const mode of modes) {
    const run = runs.at(-1);
    if (run !== undefined && mode.hz <= clusterRatio * run[0]!.hz) run.push(mode);
    else runs.push([mode]);
  }
  return runs
    .filter((run) => run.length > 1)
    .map((run) => ({ fromHz: run[0]!.hz, toHz: run.at(-1)!.hz, count: run.length }));
}

/** Between neighbours more than a third of an octave apart. */
export function gapsOf(modes: readonly RoomMode[]): RoomSoundResult['gaps'] {
  return modes.slice(1).flatMap((mode, index) => {
    const below = modes[index]!;
    return mode.hz > gapRatio * below.hz ? [{ fromHz: below.hz, toHz: mode.hz }] : [];
  });
}
