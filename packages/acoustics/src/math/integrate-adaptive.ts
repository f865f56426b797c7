import { Pieces } from './pieces.js';

/** Nodes and weights of the 15-point Kronrod rule and the weights of the 7-point Gauss rule inside it (QUADPACK). */
const nodes = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
  0.4058451513773972, 0.2077849550078985, 0,
];
const kronrodWeights = [
  0.02293532201052922, 0.06309209262997856, 0.1047900103222502, 0.1406532597155259, 0.1690047266392679,
  0.1903505780647854, 0.2044329400752989, 0.2094821410847278,
];
const gaussWeights = [0.1294849661688697, 0.2797053914892767, 0.3818300505051189, 0.4179591836734694];

export type AdaptiveResult = {
  /** One integral per component. */
  readonly values: readonly number[];
  readonly evaluations: number;
  /** False when the allowed evaluations ran out before the error estimate met the tolerance. */
  readonly converged: boolean;
};

/** Writes the components of the integrand at x into `out`. */
export type Integrand = (x: number, out: Float64Array) => void;

/** Points of one application of the rule. */
export const pointsPerPiece = 15;

/** Pieces whose points are asked for at once. */
const piecesAtOnce = 4;
/** Most places at which an integrand is asked at once. */
export const mostPlaces = piecesAtOnce * pointsPerPiece;

/** The same at the first `count` of some places at once, in rising order: component c at place i goes to out[count c + i]. */
export type PieceIntegrand = (places: Float64Array, count: number, out: Float64Array) => void;

/**
 * Integrates several components at once over consecutive intervals given by `breaks`, with error control on each
 * component relative to its own total.
 *
 * Method: 7-15 Gauss-Kronrod on every interval; the one with the largest share of the error is halved until the sum of
 * |Kronrod - Gauss| is below `tolerance` times the total for every component, or `maximumEvaluations` are spent. The
 * estimate is that of the 7-point rule, so the result itself is much better.
 * Source: R. Piessens et al., QUADPACK (1983) (from memory; the nodes are checked in the tests).
 */
export function integrateAdaptive(
  integrand: Integrand,
  components: number,
  breaks: readonly number[],
  tolerance: number,
  maximumEvaluations: number,
): AdaptiveResult {
  const one = new Float64Array(components);
  const piecewise: PieceIntegrand = (places, count, out) => {
    for (let i = 0; i < count; i++) {
      integrand(places[i]!, one);
      for (let c = 0; c < components; c++) out[count * c + i] = one[c]!;
    }
  };
  const pieces = new Pieces();
  for (let i = 0; i + 1 < breaks.length; i++) pieces.addPlain(breaks[i]!, breaks[i + 1]!);
  const sum = new PieceSum();
  sum.start(piecewise, components, pieces);
  return sum.refined(tolerance, maximumEvaluations);
}

/**
 * The same for an integrand that is evaluated at the places of several pieces at once, and for pieces that may be stretched, in
 * two steps, so that its caller may look at the first pass before it asks for more. One sum serves for many integrals.
 */
export class PieceSum {
  private integrand: PieceIntegrand = () => {};
  private components = 0;
  private pieces = new Pieces();
  private totals: number[] = [];
  private readonly errors: number[] = [];
  /** One row of components for each piece. */
  private readonly values: number[] = [];
  private readonly spreads: number[] = [];
  private evaluations = 0;

  /** Makes the first pass over `pieces`, which the sum may halve later; what it held before is forgotten. */
  start(integrand: PieceIntegrand, components: number, pieces: Pieces): void {
    if (results.length < mostPlaces * components) results = new Float64Array(mostPlaces * components);
    this.integrand = integrand;
    this.components = components;
    this.pieces = pieces;
    this.evaluations = 0;
    this.totals = new Array<number>(components).fill(0);
    for (let c = 0; c < components; c++) this.errors[c] = 0;
    for (let start = 0; start < pieces.count; start += piecesAtOnce) {
      const end = Math.min(start + piecesAtOnce, pieces.count);
      for (let index = start; index < end; index++) putPlaces(pieces, index, (index - start) * pointsPerPiece);
      this.evaluate(end - start);
      for (let index = start; index < end; index++) this.take(index, index - start, end - start);
    }
  }

  /** Halves the worst pieces until the error is small enough. */
  refined(tolerance: number, maximumEvaluations: number): AdaptiveResult {
    const { pieces, components, totals } = this;
    while (!this.isGood(tolerance) && this.evaluations + 2 * pointsPerPiece <= maximumEvaluations) {
      const worst = this.worstPiece(tolerance);
      const [from, to] = [pieces.from[worst]!, pieces.to[worst]!];
      const middle = (from + to) / 2;
      if (!(middle > from && middle < to)) break;
      const [centre, width] = [pieces.centre[worst]!, pieces.width[worst]!];
      const added = pieces.count++;
      for (let c = 0; c < components; c++) {
        totals[c]! -= this.values[worst * components + c]!;
        this.errors[c]! -= this.spreads[worst * components + c]!;
      }
      pieces.put(worst, from, middle, centre, width);
      pieces.put(added, middle, to, centre, width);
      putPlaces(pieces, worst, 0);
      putPlaces(pieces, added, pointsPerPiece);
      this.evaluate(2);
      this.take(worst, 0, 2);
      this.take(added, 1, 2);
    }
    return { values: totals, evaluations: this.evaluations, converged: this.isGood(tolerance) };
  }

  private isGood(tolerance: number): boolean {
    // Written so that a value that is no number counts as bad.
    for (let c = 0; c < this.components; c++) {
      if (!(this.errors[c]! <= tolerance * Math.abs(this.totals[c]!))) return false;
    }
    return true;
  }

  private worstPiece(tolerance: number): number {
    const { components, totals, errors, spreads } = this;
    let worst = 0;
    let worstShare = -1;
    for (let index = 0; index < this.pieces.count; index++) {
      let share = 0;
      for (let c = 0; c < components; c++) {
        const total = Math.abs(totals[c]!);
        if (errors[c]! > tolerance * total) {
          share = Math.max(share, spreads[index * components + c]! / (total || Number.MIN_VALUE));
        }
      }
      if (share > worstShare) {
        worstShare = share;
        worst = index;
      }
    }
    return worst;
  }

  private evaluate(count: number): void {
    this.integrand(places, count * pointsPerPiece, results);
    this.evaluations += count * pointsPerPiece;
  }

  /** Sums the results in the given slot of `slots` for a piece. */
  private take(piece: number, slot: number, slots: number): void {
    const { components, pieces } = this;
    const half = (pieces.to[piece]! - pieces.from[piece]!) / 2;
    const first = slot * pointsPerPiece;
    for (let c = 0; c < components; c++) {
      const at = c * slots * pointsPerPiece + first;
      let kronrod = 0;
      let gauss = 0;
      for (let i = 0; i < pointsPerPiece; i++) {
        const value = results[at + i]! * slopes[first + i]!;
        kronrod += risingKronrod[i]! * value;
        gauss += risingGauss[i]! * value;
      }
      const spread = Math.abs(kronrod - gauss) * half;
      this.values[piece * components + c] = kronrod * half;
      this.spreads[piece * components + c] = spread;
      this.totals[c]! += kronrod * half;
      this.errors[c]! += spread;
    }
  }
}

/** All 15 nodes in rising order with their weights; the Gauss weights are 0 where that rule has no node. */
const risingNodes = Float64Array.from([...nodes.map((x) => -x), ...nodes.slice(0, -1).reverse()]);
const mirrored = (half: readonly number[]) => Float64Array.from([...half, ...half.slice(0, -1).reverse()]);
const risingKronrod = mirrored(kronrodWeights);
const risingGauss = mirrored(nodes.map((_, i) => (i % 2 === 1 ? gaussWeights[(i - 1) / 2]! : 0)));

const places = new Float64Array(mostPlaces);
/** dx/du at the places, 1 in plain pieces. */
const slopes = new Float64Array(mostPlaces);
/** Made larger for an integrand of more components than there were before. */
let results = new Float64Array(mostPlaces * 8);

/** Writes the places of a piece from `at` on. */
function putPlaces(pieces: Pieces, index: number, at: number): void {
  const from = pieces.from[index]!;
  const to = pieces.to[index]!;
  const centre = (from + to) / 2;
  const half = (to - from) / 2;
  const width = pieces.width[index]!;
  if (width === 0) {
    for (let i = 0; i < pointsPerPiece; i++) {
      places[at + i] = centre + half * risingNodes[i]!;
      slopes[at + i] = 1;
    }
    return;
  }
  const peak = pieces.centre[index]!;
  const middle = (width / 2) * Math.exp(centre);
  const middleInverse = (width * width) / 4 / middle;
  for (let i = 0; i <= lastPoint / 2; i++) {
    // Nodes lie in pairs, so that half of the exponentials do.
    const grow = Math.exp(half * risingNodes[lastPoint - i]!);
    const shrink = 1 / grow;
    putStretched(at + i, peak, middle * shrink, middleInverse * grow);
    putStretched(at + lastPoint - i, peak, middle * grow, middleInverse * shrink);
  }
}

const lastPoint = pointsPerPiece - 1;

/** A place from the halves of exp(u) and exp(-u) by the width of the peak. */
function putStretched(at: number, peak: number, rising: number, falling: number): void {
  places[at] = peak + (rising - falling);
  slopes[at] = rising + falling;
}
