import type { Air, BandMode } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { bandIndexOf, exactHz, nominalHz, perBand } from '../bands/grid.js';
import { openFaces } from '../booth/geometry.js';
import { mouthPlace } from '../booth/mouth-place.js';
import type { Memo } from '../memo/memo.js';
import type { BandDecay, RoomSoundResult } from '../result/room-sound-result.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { textRange } from '../text/text-range.js';
import { type AcousticBox, acousticBoxOf } from './acoustic-box.js';
import { fieldDecay } from './field-decay.js';
import { modalBands } from './layers-admittance.js';
import { cornerToCorner, type Decay, modalDecay, modesBetween } from './modal-decay.js';
import { modalSpread } from './modal-spread.js';
import { clustersOf, gapsOf, modeList } from './mode-list.js';

/** Half an octave to both sides of the Schroeder frequency modes and field are both asked: it is a gradual limit. */
export const bothWithin = Math.SQRT2;

/** Bands of the middle value: third octaves from 500 Hz to 2 kHz. */
export const midBands = { from: bandIndexOf(500), to: bandIndexOf(2000) } as const;

type Figures = Omit<RoomSoundResult, 'range' | 'assumes'>;

/** Decay by band and the modes of a booth; null with an open face, from which sound does not come back. */
export function roomSound(
  booth: Booth,
  people: number,
  schroederHz: number,
  air: Air,
  memo: Memo,
): RoomSoundResult | null {
  if (openFaces(booth).length > 0) return null;
  const box = acousticBoxOf(booth, people, air, memo);
  const figures = memo.of(`room-sound ${JSON.stringify([box, schroederHz, air])}`, () =>
    figuresOf(box, schroederHz, air),
  );
  return { range: textRange(booth.range), ...figures, assumes: assumptions(booth) };
}

/** What a change of the booth makes of one band and of the middle. */
export interface DecayAfter {
  readonly band: BandDecay;
  readonly mid: RoomSoundResult['mid'];
  /** m, as of `RoomSoundResult` */
  readonly airM: readonly number[];
}

/** The same of one band and the middle alone, for a change that is tried; null with an open face. */
export function decayAfter(
  booth: Booth,
  people: number,
  band: number,
  schroederHz: number,
  air: Air,
  memo: Memo,
): DecayAfter | null {
  if (openFaces(booth).length > 0) return null;
  const wanted = nominalHz.flatMap((_, index) =>
    index === band || (index >= midBands.from && index <= midBands.to) ? index : [],
  );
  const box = acousticBoxOf(booth, people, air, memo, wanted);
  return memo.of(`room-sound-after ${JSON.stringify([box, band, schroederHz, air])}`, () => {
    const decay = nominalHz.map((_, index) =>
      wanted.includes(index) ? bandDecay(box, index, schroederHz, cornersOnce(box, air), air) : undefined,
    );
    return {
      band: decay[band]!,
      mid: midOf(decay.slice(midBands.from, midBands.to + 1) as BandDecay[]),
      airM: [...box.size],
    };
  });
}

function cornersOnce(box: AcousticBox, air: Air): (band: number) => readonly BandMode[] {
  const known = new Map<number, BandMode[]>();
  return (band) => {
    const modes = known.get(band) ?? modesBetween(box, band, air, ...cornerToCorner(box));
    known.set(band, modes);
    return modes;
  };
}

function figuresOf(box: AcousticBox, schroederHz: number, air: Air): Figures {
  const cornersOf = cornersOnce(box, air);
  const decay = perBand((band) => bandDecay(box, band, schroederHz, cornersOf, air));
  const modes = modeList(cornersOf, (band, mode) =>
    modalSpread(box, band, [mode], (3 * Math.LN10) / mode.damping, air),
  );
  const mid = midOf(decay.slice(midBands.from, midBands.to + 1));
  const ratio = (hz: number) => {
    const seconds = decay[bandIndexOf(hz)]?.seconds ?? null;
    return seconds === null || mid === null ? null : seconds / mid.seconds;
  };
  return {
    decay,
    mid,
    ratio125: ratio(125),
    ratio250: ratio(250),
    modes,
    clusters: clustersOf(modes),
    gaps: gapsOf(modes),
    airM: [...box.size],
  };
}

function bandDecay(
  box: AcousticBox,
  band: number,
  schroederHz: number,
  cornersOf: (band: number) => readonly BandMode[],
  air: Air,
): BandDecay {
  const hz = nominalHz[band]!;
  // Above 1 kHz no band is counted by its modes, however bare the booth.
  const byModes = exactHz[band]! < schroederHz * bothWithin && band < modalBands;
  const byField = exactHz[band]! > schroederHz / bothWithin || !byModes;
  const modal = byModes ? modalDecay(box, band, cornersOf(band), air) : null;
  const field = byField ? fieldDecay(box, band, air) : null;
  const neighbours =
    modal !== null && modal.decay !== null && !modal.ownMode
      ? 'no mode in this band: it rings with its neighbours'
      : '';
  if (modal?.decay && field !== null) {
    const weight = Math.log((exactHz[band]! * bothWithin) / schroederHz) / Math.log(bothWithin ** 2);
    return { hz, ...blend(modal.decay, field, weight), method: 'both', note: neighbours };
  }
  if (modal?.decay) return { hz, ...plain(modal.decay), method: 'modes', note: neighbours };
  if (field === null) {
    return { hz, seconds: null, lowS: null, highS: null, method: 'none', note: 'no mode: sound here does not ring' };
  }
  const note = field.dry
    ? 'so dry that few reflections are left: from evenly mixed to never scattered'
    : exactHz[band]! < schroederHz
      ? `below ${hertz(schroederHz)} few modes carry the sound, and single ones can ring longer`
      : '';
  return { hz, ...plain(field), method: field.dry ? 'dry' : 'statistical', note };
}

/** Geometric mean, by the place between the two; the range holds both. */
function blend(modal: Decay, field: Decay, weight: number): Decay {
  return {
    seconds: modal.seconds ** (1 - weight) * field.seconds ** weight,
    lowS: Math.min(modal.lowS, field.lowS),
    highS: Math.max(modal.highS, field.highS),
  };
}

function plain({ seconds, lowS, highS }: Decay): Decay {
  return { seconds, lowS, highS };
}

function midOf(used: readonly BandDecay[]): RoomSoundResult['mid'] {
  const mean = (of: (each: BandDecay) => number | null) =>
    used.reduce((sum, each) => sum + (of(each) ?? Number.NaN), 0) / used.length;
  const seconds = mean((each) => each.seconds);
  return Number.isNaN(seconds) ? null : { seconds, lowS: mean((each) => each.lowS), highS: mean((each) => each.highS) };
}

function assumptions(booth: Booth): string[] {
  const mouth = mouthPlace(booth);
  return [
    'Walls answer to sound as layers of endless extent that meet it straight on: stiff panels between studs have resonances of their own, and their edges absorb more.',
    'The booth is a plain box; what stands in it moves no mode.',
    ...(booth.microphone === undefined
      ? ['No microphone is placed: every mode is counted as in a corner.']
      : mouth === undefined || mouth.stated
        ? []
        : [
            `The mouth is not placed: it is taken to be at ${mouth.at.map((value) => `${decimals(value, 2)} m`).join(', ')}, as for the reflections.`,
          ]),
    'Times below about 16 divided by the width of a band, 0.6 s in the third octave at 125 Hz, are those of the filter when they are measured with one: measure decay in octaves, backwards in time.',
  ];
}
