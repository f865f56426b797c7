/**
 * Loss coefficients K of fittings, referred to the speed in the duct that the fitting ends or turns.
 * Source: common practice; figures of this kind differ by a third and more between tables and with the shape of the piece. A
 * maker's or a measured figure goes before them.
 * Valid: rough planning, Reynolds numbers above 10 000, a straight run before the fitting.
 */
export const commonLossCoefficients = {
  /** From a room into a duct end that stands free, and into one that is flush with a wall. */
  'free inlet': 0.9,
  'flush inlet': 0.5,
  /** A rounded inlet, radius 0.2 of the diameter or more. */
  'bell inlet': 0.05,
  /** From a duct into a room: all of the speed is lost. */
  outlet: 1,
  /** Right angles: mitred, mitred with vanes, round with a mean radius of one width. */
  'square bend': 1.2,
  'square bend with vanes': 0.3,
  'round bend': 0.25,
} as const;

/** Name of a fitting of `commonLossCoefficients`. */
export type CommonFitting = keyof typeof commonLossCoefficients;
