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

type Piece = { from: number; to: number; values: number[]; errors: number[] };

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
  return integratePieces(piecewise, components, breaks, tolerance, maximumEvaluations)!;
}

/**
 * The same for an integrand that is evaluated at the places of several pieces at once. `isResolved`, asked once after the first
 * pass over the breaks, can reject them: then nothing is returned.
 */
export function integratePieces(
  integrand: PieceIntegrand,
  components: number,
  breaks: readonly number[],
  tolerance: number,
  maximumEvaluations: number,
  isResolved?: () => boolean,
): AdaptiveResult | undefined {
  if (results.length < mostPlaces * components) results = new Float64Array(mostPlaces * components);
  const pieces: Piece[] = [];
  const totals = new Array<number>(components).fill(0);
  const errors = new Array<number>(components).fill(0);
  let evaluations = 0;
  const count = (piece: Piece, sign: 1 | -1) => {
    for (let c = 0; c < components; c++) {
      totals[c]! += sign * piece.values[c]!;
      errors[c]! += sign * piece.errors[c]!;
    }
  };
  for (let i = 0; i + 1 < breaks.length; i++) {
    if (breaks[i + 1]! > breaks[i]!) pieces.push(emptyPiece(breaks[i]!, breaks[i + 1]!));
  }
  for (let start = 0; start < pieces.length; start += piecesAtOnce) {
    const end = Math.min(start + piecesAtOnce, pieces.length);
    applyRule(integrand, components, pieces, start, end);
    evaluations += (end - start) * pointsPerPiece;
    for (let i = start; i < end; i++) count(pieces[i]!, 1);
  }
  if (isResolved !== undefined && !isResolved()) return undefined;
  const isGood = () => {
    // Written so that a value that is no number counts as bad.
    for (let c = 0; c < components; c++) if (!(errors[c]! <= tolerance * Math.abs(totals[c]!))) return false;
    return true;
  };
  while (!isGood() && evaluations + 30 <= maximumEvaluations) {
    let worst = 0;
    let worstShare = -1;
    for (let i = 0; i < pieces.length; i++) {
      let share = 0;
      for (let c = 0; c < components; c++) {
        if (errors[c]! > tolerance * Math.abs(totals[c]!)) {
          share = Math.max(share, pieces[i]!.errors[c]! / Math.abs(totals[c]! || Number.MIN_VALUE));
        }
      }
      if (share > worstShare) {
        worstShare = share;
        worst = i;
      }
    }
    const piece = pieces[worst]!;
    const middle = (piece.from + piece.to) / 2;
    if (!(middle > piece.from && middle < piece.to)) break;
    const left = emptyPiece(piece.from, middle);
    const right = emptyPiece(middle, piece.to);
    applyRule(integrand, components, [left, right], 0, 2);
    evaluations += 2 * pointsPerPiece;
    count(piece, -1);
    count(left, 1);
    count(right, 1);
    pieces[worst] = left;
    pieces.push(right);
  }
  return { values: totals, evaluations, converged: isGood() };
}

/** All 15 nodes in rising order with their weights; the Gauss weights are 0 where that rule has no node. */
const risingNodes = Float64Array.from([...nodes.map((x) => -x), ...nodes.slice(0, -1).reverse()]);
const mirrored = (half: readonly number[]) => Float64Array.from([...half, ...half.slice(0, -1).reverse()]);
const risingKronrod = mirrored(kronrodWeights);
const risingGauss = mirrored(nodes.map((_, i) => (i % 2 === 1 ? gaussWeights[(i - 1) / 2]! : 0)));

const places = new Float64Array(mostPlaces);
/** Made larger for an integrand of more components than there were before. */
let results = new Float64Array(mostPlaces * 8);

function emptyPiece(from: number, to: number): Piece {
  return { from, to, values: [], errors: [] };
}

/** Fills the pieces from index `start` up to, not including, `end`. */
function applyRule(
  integrand: PieceIntegrand,
  components: number,
  pieces: readonly Piece[],
  start: number,
  end: number,
): void {
  const count = (end - start) * pointsPerPiece;
  for (let index = start, at = 0; index < end; index++) {
    const { from, to } = pieces[index]!;
    const centre = (from + to) / 2;
    const half = (to - from) / 2;
    for (let i = 0; i < pointsPerPiece; i++, at++) places[at] = centre + half * risingNodes[i]!;
  }
  integrand(places, count, results);
  for (let c = 0; c < components; c++) {
    for (let index = start, at = count * c; index < end; index++) {
      const piece = pieces[index]!;
      const half = (piece.to - piece.from) / 2;
      let kronrod = 0;
      let gauss = 0;
      for (let i = 0; i < pointsPerPiece; i++, at++) {
        const value = results[at]!;
        kronrod += risingKronrod[i]! * value;
        gauss += risingGauss[i]! * value;
      }
      piece.values.push(kronrod * half);
      piece.errors.push(Math.abs(kronrod - gauss) * half);
    }
  }
}
