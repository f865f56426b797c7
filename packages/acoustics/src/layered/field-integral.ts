import { requireNumber } from '../errors/require-number.js';
import { type AdaptiveResult, PieceSum } from '../math/integrate-adaptive.js';
import { Pieces } from '../math/pieces.js';
import { type Follow, Incidents } from './angle-peaks.js';
import { putAnglePieces } from './angle-pieces.js';
import { waveBlock } from './kernel-in-use.js';
import type { Field } from './layer.js';
import type { Peak, PreparedStack } from './prepared-stack.js';
import { lookUpRadiation, type RadiationTable, radiationTable } from './radiation-table.js';

/** Error allowed in a power summed over directions, as a share of it: 0.02 dB. */
export const angularTolerance = 0.005;
/** Evaluations of a stack after which one frequency counts as not converged. */
export const angularEvaluationLimit = 60_000;

/** Passes in which peaks are looked for: narrow ones may lie beside where the first pass puts them. */
const mostRounds = 4;

/** Quantities of the waves in the block, after they were followed: component c of wave i goes to out[count c + i]. */
export type Response = (count: number, out: Float64Array) => void;

/** Working memory, which one integral leaves to the next. */
const pieces = new Pieces();
const sum = new PieceSum();
const scan = new Incidents();

/**
 * Integrates responses over the directions of diffuse fields that differ in the size of the panel alone.
 *
 * Component 0 of `response` is a transmitted share of power: its integral is 2 Integral r [sigma q] q sin theta dtheta for
 * a finite panel (q = cos theta, sigma of `finiteRadiationFactor`), and Integral r dsin^2 / sin^2(limit) for a limited
 * field. Further components are squared amplitudes per squared incident pressure: their integral is over solid angle,
 * 2 Integral r sin theta dtheta, for an incident intensity of 1.
 * The first values are the integrals of component 0, one for each of `fields`; then come those of the further components.
 * Waves through an unlimited stack know nothing of the size, so that they are followed once for all fields. Several fields
 * are all of finite panels.
 *
 * The nodes of a pass serve as a scan for sharp peaks as well. Where there is one that no piece is stretched around, its place
 * is found and the integration starts anew.
 */
export function integrateOverField(
  stack: PreparedStack,
  fields: readonly Field[],
  follow: Follow,
  response: Response,
  components: number,
): AdaptiveResult {
  const { from, perSine } = directionRange(fields[0]!);
  const tables: RadiationTable[] = [];
  for (const field of fields) {
    if (field.kind === 'finite') tables.push(radiationTable(stack.wavenumber, field.size));
  }
  let isScanning = true;
  scan.count = 0;
  const { cosine } = waveBlock();
  const integrand = (places: Float64Array, count: number, out: Float64Array) => {
    for (let i = 0; i < count; i++) cosine[i] = places[i]!;
    follow(count);
    if (isScanning) scan.note(stack, count);
    response(count, out);
    if (tables.length === 0) {
      for (let i = 0; i < count; i++) out[i]! *= perSine * places[i]!;
      for (let i = count; i < components * count; i++) out[i]! *= perSine;
      return;
    }
    // The further components move behind those of all fields; from the last one on, as they may overlap.
    const shift = (tables.length - 1) * count;
    for (let i = components * count - 1; i >= count; i--) out[i + shift] = out[i]! * perSine;
    for (let t = tables.length - 1; t >= 0; t--) radiate(tables[t]!, places, count, out, t * count);
  };
  let peaks: readonly Peak[] = stack.coincidences;
  for (let round = 1; ; round++) {
    putAnglePieces(pieces, stack, from, peaks);
    sum.start(integrand, components + fields.length - 1, pieces);
    const found: readonly Peak[] = round < mostRounds ? scan.unresolvedPeaks(stack, follow) : [];
    if (found.length === 0) {
      isScanning = false;
      return sum.refined(angularTolerance, angularEvaluationLimit);
    }
    peaks = withFound(peaks, found);
    scan.count = 0;
  }
}

/** Known peaks and found ones; one that lies where another was found is known better now. */
function withFound(known: readonly Peak[], found: readonly Peak[]): Peak[] {
  const isApart = (peak: Peak) =>
    found.every(({ place, halfWidth }) => Math.abs(place - peak.place) > 2 * Math.max(halfWidth, peak.halfWidth));
  return [...known.filter(isApart), ...found];
}

/** Writes from `at` on what a panel radiates of the shares at the start of `out`. */
function radiate(table: RadiationTable, places: Float64Array, count: number, out: Float64Array, at: number): void {
  for (let i = 0; i < count; i++) {
    const q = places[i]!;
    out[at + i] = out[i]! * 2 * q * q * lookUpRadiation(table, q);
  }
}

/** Smallest cosine of a field, and the factor 2/sin^2(limit) of its sum. */
export function directionRange(field: Field): { from: number; perSine: number } {
  if (field.kind === 'finite') return { from: 0, perSine: 2 };
  const limit = (field.maximumAngleDeg * Math.PI) / 180;
  return { from: Math.cos(limit), perSine: 2 / Math.sin(limit) ** 2 };
}

/**
 * Rejects a field that cannot exist.
 * Errors: ArgumentError that says what was found and what was expected.
 */
export function checkField(field: Field): void {
  if (field.kind === 'limited') {
    requireNumber('limiting angle', field.maximumAngleDeg, { above: 0, atMost: 90, unit: 'degrees' });
    return;
  }
  const { width, height } = field.size;
  requireNumber('panel width', width, { above: 0, unit: 'metres' });
  requireNumber('panel height', height, { above: 0, unit: 'metres' });
}
