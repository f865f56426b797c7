/** Nominal third-octave centres, Hz, IEC 61260-1 (as on every chart); the octaves are among them. */
const nominalCentres = [
  16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500,
  3150, 4000, 5000, 6300, 8000, 10_000, 12_500, 16_000, 20_000,
];

/** What the heading of a column says. */
export type Heading =
  | { readonly kind: 'band'; readonly hz: number; readonly percent: boolean }
  /** A frequency that is no nominal band. */
  | { readonly kind: 'unknown-band' }
  | { readonly kind: 'word' };

const pattern = /^(?:f|hz|alpha|a|r|tl)?[ _]?(\d+(?:[.,]\d+)?) ?(k)? ?(?:hz)?(?: ?[([]?(%|db)[)\]]?)?$/;

/** Reads "125", "125 Hz", "1k", "1.25 kHz", "f_500" or "250 Hz (%)" as a band. */
export function bandHeading(text: string): Heading {
  const match = pattern.exec(text.trim().toLowerCase());
  if (match === null) return { kind: 'word' };
  const hz = Number(match[1]!.replace(',', '.')) * (match[2] === 'k' ? 1000 : 1);
  const nominal = nominalCentres.find((centre) => Math.abs(centre - hz) < 1e-6 * centre);
  if (nominal === undefined) return { kind: 'unknown-band' };
  return { kind: 'band', hz: nominal, percent: match[3] === '%' };
}
