import {
  asInsertionLoss,
  flexibleDuctBreakoutLoss,
  flexibleDuctReferenceLength,
  octaveDuctLossInThirds,
  rectangularDuctBreakinLoss,
  rectangularDuctBreakoutLoss,
  roundDuctBreakinLoss,
  roundDuctBreakoutLoss,
} from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';

/** kg/m2 of the wall of a smooth rectangular duct. Evidence: common practice, sheet steel of 0.6 mm. */
const sheetMass = 0.0006 * 7850;

/** Steel of the printed rows goes up to here, m. */
const largestRound = 0.303;

/** How far sound that falls on the wall of the duct stays below what falls on its open section, dB by band, and what it stands on. */
export interface DuctWallEntry {
  readonly loss: readonly number[];
  readonly note: string;
}

/**
 * What enters an air path through the wall of its run and goes towards the booth, referred to the section of the duct: R_in + 3 - 10 lg(S/A),
 * S the wall, A the section, at least 0 dB. Undefined for a path without a run or a duct whose wall no source tells.
 *
 * Equation: power on the wall Lp + 10 lg S - 6, half of what enters goes each way; `rectangularDuctBreakinLoss`,
 * `roundDuctBreakinLoss`. A smooth duct is taken as sheet steel; a lined round hose by the rule for flexible ducts, which does not
 * depend on the length. Source and validity: docs/models/duct-walls.md.
 */
export function ductWallEntry({ duct, wall, run, lining }: Vent): DuctWallEntry | undefined {
  const length = run.value;
  if (length <= 0) return undefined;
  if (wall.value === 'flexible') {
    // The rule is for a lined hose; a bare one of foil keeps less, which nobody has printed.
    if (duct.kind !== 'round' || lining === undefined) return undefined;
    const diameter = duct.diameter.value;
    const inward = roundDuctBreakinLoss(flexibleDuctBreakoutLoss({ diameter }), {
      diameter,
      length: flexibleDuctReferenceLength,
    });
    return entry(inward, (4 * flexibleDuctReferenceLength) / diameter, 'a lined flexible hose');
  }
  if (duct.kind === 'rectangular') {
    const [width, height] = [duct.width.value, duct.height.value];
    const out = rectangularDuctBreakoutLoss({ width, height, surfaceMass: sheetMass });
    const share = (2 * (width + height) * length) / (width * height);
    return entry(rectangularDuctBreakinLoss(out, { width, height, length }), share, 'sheet steel of 0.6 mm');
  }
  const diameter = duct.diameter.value;
  if (diameter > largestRound) return undefined;
  const inward = roundDuctBreakinLoss(roundDuctBreakoutLoss({ diameter }), { diameter, length });
  return entry(inward, (4 * length) / diameter, 'a round duct of sheet steel');
}

function entry(inward: readonly number[], share: number, kind: string): DuctWallEntry {
  const octaves = inward.map((loss) => Math.max(0, loss + 3 - 10 * Math.log10(share)));
  const inThirds = octaveDuctLossInThirds({
    octaves: asInsertionLoss(octaves),
    validity: { extrapolated: false, notes: [] },
  });
  return { loss: inThirds.loss, note: kind };
}

/**
 * What the rest of a lined run takes, in the mean, from sound that enters all along it, dB: -10 lg((1 - e^-x)/x), x = IL ln 10/10.
 * Source: derived; each part of the wall has the run behind it to the booth before it.
 */
export function lossFromAlongTheRun(insertionLoss: number): number {
  const x = (insertionLoss * Math.LN10) / 10;
  return x < 1e-6 ? 0 : -10 * Math.log10((1 - Math.exp(-x)) / x);
}
