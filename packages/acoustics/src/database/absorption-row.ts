/** All categories of the table. */
export const absorptionCategories = [
  'ceiling absorber',
  'curtain',
  'diffuser',
  'door',
  'floor',
  'glazing',
  'hard surface',
  'lightweight lining',
  'opening',
  'other',
  'panel resonator',
  'people',
  'porous absorber',
  'seating',
  'special absorber',
  'wall absorber',
  'wall relief',
  'wood',
] as const;

/** What a row is about. */
export type AbsorptionCategory = (typeof absorptionCategories)[number];

/** All quantities of the table. */
export const absorptionQuantities = ['absorption', 'area-per-person', 'scattering'] as const;

/** What the values of a row are: a coefficient, m2 per person, or the share of reflected sound that is scattered. */
export type AbsorptionQuantity = (typeof absorptionQuantities)[number];

/** Where the figures of a row come from. */
export type RowProvenance = {
  readonly source: string;
  /** Table and page, or entry. */
  readonly where: string;
  /** How the figures were read. */
  readonly reading: string;
  readonly licence: string;
  /** True for a row under an open licence, which may be passed on as data. */
  readonly open: boolean;
};

/** One measured row in octave bands, random incidence. */
export type AbsorptionRow = {
  readonly id: string;
  readonly name: string;
  readonly category: AbsorptionCategory;
  readonly quantity: AbsorptionQuantity;
  /** Nominal octave centres, Hz, ascending. */
  readonly bandsHz: readonly number[];
  /** As printed: a coefficient above 1 is the edge effect of the reverberation room. */
  readonly values: readonly number[];
  /** m, of the absorbing layer */
  readonly thickness?: number;
  /** kg/m3 */
  readonly density?: number;
  /** As printed: A on a hard surface, E400 with 400 mm of air behind. */
  readonly mounting?: 'A' | 'E400';
  /** Rows of one series differ in thickness alone. */
  readonly series?: string;
  /** What is odd about the row. */
  readonly notes?: readonly string[];
  readonly provenance: RowProvenance;
};
