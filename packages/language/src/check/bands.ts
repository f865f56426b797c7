/** Nominal centres of IEC 61260-1, 16 Hz to 16 kHz. */
const OCTAVES = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000];
const THIRDS = [
  16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500,
  3150, 4000, 5000, 6300, 8000, 10000, 12500, 16000,
];

export interface NearBand {
  /** The nominal centre when the frequency is one. */
  readonly exact: number | undefined;
  readonly nearest: number;
}

export function nearestBand(grid: 'octave' | 'third', hz: number): NearBand {
  const centres = grid === 'octave' ? OCTAVES : THIRDS;
  const distance = (centre: number): number => Math.abs(Math.log(centre / hz));
  const nearest = centres.reduce((best, centre) => (distance(centre) < distance(best) ? centre : best));
  return { exact: Math.abs(nearest - hz) <= nearest * 1e-9 ? nearest : undefined, nearest };
}
