/** Range of bands that a spectrum adaptation term covers, named by its first and last nominal Hz. */
export type AdaptationRange = '100To3150' | '50To3150' | '100To5000' | '50To5000';

/** No. 1 stands for living noise (A-weighted pink noise), No. 2 for road traffic in town. */
export type AdaptationSpectrumNumber = 1 | 2;

/** Levels of a reference noise by band, and the band of the working grid at which they begin. */
export type AdaptationSpectrum = {
  /** A-weighted band levels relative to their total, dB, on the working grid from `first` on. */
  readonly levels: readonly number[];
  /** Index of the first band on the working grid. */
  readonly first: number;
  /**
   * `published`: as transcribed in a worked example. `from memory, confirmed`: written from memory, then found alike in
   * several public transcriptions that are independent of each other; the printed page was not opened.
   */
  readonly origin: 'published' | 'from memory, confirmed';
};

// ISO 717-1 Annex C Table C.1, as transcribed; the printed page was not opened.
const living100To3150 = [-29, -26, -23, -21, -19, -17, -15, -13, -12, -11, -10, -9, -9, -9, -9, -9];
const traffic100To3150 = [-20, -20, -18, -16, -15, -14, -13, -12, -11, -9, -8, -9, -10, -11, -13, -15];
// ISO 717-1 Annex B Table B.1, from memory and confirmed by four public transcriptions. The columns 50 Hz to 5 kHz meet
// both printed intermediate results of Annex C Table C.2 to three decimals; the two other ranges have no printed result to
// be held against.
const livingTo5000 = [-30, -27, -24, -22, -20, -18, -16, -14, -13, -12, -11, -10, -10, -10, -10, -10, -10, -10];
const trafficTo5000 = [...traffic100To3150, -16, -18];

/** The spectra of ISO 717-1 by number and range, with where each was read. */
export const adaptationSpectra: Readonly<
  Record<AdaptationSpectrumNumber, Readonly<Record<AdaptationRange, AdaptationSpectrum>>>
> = {
  1: {
    '100To3150': { levels: living100To3150, first: 3, origin: 'published' },
    '50To3150': { levels: [-40, -36, -33, ...living100To3150], first: 0, origin: 'from memory, confirmed' },
    '100To5000': { levels: livingTo5000, first: 3, origin: 'from memory, confirmed' },
    '50To5000': { levels: [-41, -37, -34, ...livingTo5000], first: 0, origin: 'from memory, confirmed' },
  },
  2: {
    '100To3150': { levels: traffic100To3150, first: 3, origin: 'published' },
    '50To3150': { levels: [-25, -23, -21, ...traffic100To3150], first: 0, origin: 'from memory, confirmed' },
    '100To5000': { levels: trafficTo5000, first: 3, origin: 'from memory, confirmed' },
    '50To5000': { levels: [-25, -23, -21, ...trafficTo5000], first: 0, origin: 'from memory, confirmed' },
  },
};
