/**
 * Half-widths of the range in which a careful build is expected to measure, dB unless said otherwise.
 * The transmission loss of walls: derived from the measured curves of docs/accuracy.md, 1.645 times the root mean square of
 * the error by kind and range of bands, so that about nine of ten octave values lie within; tests/accuracy holds the table
 * to it. Everything else is common practice or memory, not published. See docs/models/uncertainty.md.
 */
export type ConstructionKind = 'single-leaf' | 'separate-leaves' | 'empty-cavity' | 'framed-leaves' | 'open';

interface Zone {
  /** Holds up to and including this nominal band, Hz. */
  readonly upToHz: number;
  readonly halfWidthDb: number;
}

/**
 * Transmission loss of walls, doors and panes, by construction and by third-octave band. Unframed leaves share one row,
 * because only two curves have fibre or a thin gap between them; the kinds stay apart for when there are more.
 */
export const transmissionLossHalfWidth: Readonly<Record<ConstructionKind, readonly Zone[]>> = {
  'single-leaf': wallZones(7, 5, 9),
  'separate-leaves': wallZones(7, 10, 11),
  'empty-cavity': wallZones(7, 10, 11),
  'framed-leaves': wallZones(10, 6, 13),
  open: wallZones(3, 3, 3),
};

/** A cavity at least this deep, m, with less than this share of fibre in it, counts as empty. */
export const emptyCavity = { depth: 0.03, fillShare: 0.25 } as const;

/**
 * No light wall that people build keeps out much more than this, dB: sound goes round it, through frames, floors and pipes
 * that no layer model knows. What a prediction promises beyond it widens its range by the same amount.
 * Evidence: common practice; laboratory reports of light double walls rarely pass 65 dB, buildings rarely 55 dB.
 */
export const practicalCeilingDb = 55;

/** Slits and holes: the clear width under a real seal is never known well. */
export const leakHalfWidth: readonly Zone[] = zones(5, 5, 5, 5);
/** Lined ducts from handbook regressions. */
export const ductHalfWidth: readonly Zone[] = zones(5, 4, 4, 6);
/** Added as an independent error where an input lies outside what those regressions cover, dB. */
export const ductExtrapolatedHalfWidth = 5;
/** A loss that the user states, measured or from a data sheet. */
export const statedLossHalfWidth: readonly Zone[] = zones(3, 2, 2, 2);

/**
 * Added as an independent error, because the sound field is less certain than the wall. Below the first mode it also holds
 * how the leaves are held: whole faces, held at studs or one stiff sandwich differ by 5 dB to the bad side and more to the
 * good one (derived with the same model, docs/models/uncertainty.md).
 */
export const fieldHalfWidth = {
  'small-enclosure': 8,
  'hand-over': 8,
  'few-modes': 4,
  statistical: 1.5,
} as const;

/** A stated outside level, a talker's level against the standard spectrum, and a fan's stated sound power, dB. */
export const voiceLevelHalfWidth = 3;
export const fanPowerHalfWidth = 3;
/** Noise of the air in ducts: regressions for smooth ducts at speeds above those of a booth, dB. */
export const airNoiseHalfWidth = 6;
/**
 * Hiss of grilles and ends of ducts, dB. Our own: published rules differ by 3 dB, the loss of a grille that is not measured by a third,
 * which is 4 dB at 30 lg dp, and the speeds of a booth lie below theirs.
 */
export const openingNoiseHalfWidth = 8;
/** Shares of the value. */
export const reverberationShare = 0.25;
export const co2RiseShare = 0.25;
export const massShare = 0.1;

function wallZones(toOneSixty: number, toTwelveFifty: number, above: number): readonly Zone[] {
  return [
    { upToHz: 160, halfWidthDb: toOneSixty },
    { upToHz: 1250, halfWidthDb: toTwelveFifty },
    { upToHz: Number.POSITIVE_INFINITY, halfWidthDb: above },
  ];
}

function zones(toHundred: number, toThreeFifteen: number, toThreeOneFifty: number, above: number): readonly Zone[] {
  return [
    { upToHz: 100, halfWidthDb: toHundred },
    { upToHz: 315, halfWidthDb: toThreeFifteen },
    { upToHz: 3150, halfWidthDb: toThreeOneFifty },
    { upToHz: Number.POSITIVE_INFINITY, halfWidthDb: above },
  ];
}

/** The half-width of a table in the band with this nominal centre, dB. */
export function halfWidthAt(table: readonly Zone[], nominal: number): number {
  for (const zone of table) if (nominal <= zone.upToHz) return zone.halfWidthDb;
  return Number.NaN;
}
