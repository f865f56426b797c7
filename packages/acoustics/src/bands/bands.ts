/** A constant-percentage frequency band; all four values in Hz. */
export type Band = {
  /** The name of the band, as printed on charts. */
  readonly nominal: number;
  /** The exact mid-band frequency, at which every formula is evaluated. */
  readonly exact: number;
  readonly lower: number;
  readonly upper: number;
};

const thirdNames = [
  50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000,
];
const octaveNames = [63, 125, 250, 500, 1000, 2000, 4000];

function band(nominal: number, steps: number, stepsPerHalfBand: number): Band {
  return {
    nominal,
    exact: 1000 * 10 ** (steps / 10),
    lower: 1000 * 10 ** ((steps - stepsPerHalfBand) / 10),
    upper: 1000 * 10 ** ((steps + stepsPerHalfBand) / 10),
  };
}

/**
 * The working grid: 21 one-third-octave bands, 50 Hz to 5 kHz nominal.
 *
 * Equation: f_m = 1000 * 10^(k/10) Hz for k = -13 .. 7; band edges f_m * 10^(-1/20) and f_m * 10^(1/20).
 * Source: IEC 61260-1:2014, base-ten system, G = 10^(3/10), b = 3 (as transcribed; the printed page was not opened).
 */
export const thirdOctaveBands: readonly Band[] = thirdNames.map((nominal, index) => band(nominal, index - 13, 0.5));

/**
 * The seven octave bands that the working grid fills completely, 63 Hz to 4 kHz nominal.
 *
 * Equation: f_m = 1000 * 10^(3k/10) Hz for k = -4 .. 2; band edges f_m * 10^(-3/20) and f_m * 10^(3/20).
 * Source: IEC 61260-1:2014, base-ten system, b = 1 (as transcribed; the printed page was not opened).
 */
export const octaveBands: readonly Band[] = octaveNames.map((nominal, index) => band(nominal, 3 * (index - 4), 1.5));
