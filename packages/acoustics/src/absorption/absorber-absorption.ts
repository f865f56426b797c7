import type { Air } from '../air/air-properties.js';
import { thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { bandSamples, defaultSamplesPerBand } from '../layered/band-samples.js';
import { expectConverged } from '../layered/diffuse-transmission-loss.js';
import { angularEvaluationLimit, angularTolerance } from '../layered/field-integral.js';
import type { PanelSize } from '../layered/layer.js';
import { type Complex, complex, divide } from '../math/complex.js';
import { integrateAdaptive } from '../math/integrate-adaptive.js';
import { type AbsorberBacking, type AbsorberLayer, checkAbsorber } from './absorber-layer.js';
import { type FaceState, faceState, type PreparedAbsorber, prepareAbsorber } from './prepared-absorber.js';
import { sampleRadiationTable } from './sample-radiation-impedance.js';

/** From where the sound comes. */
export type Incidence =
  /** From all directions, on a sample so large that its edges do not count. */
  | { readonly kind: 'diffuse' }
  /** From all directions, on a sample of this size in a hard wall. */
  | { readonly kind: 'diffuse-on-sample'; readonly size: PanelSize }
  /** A plane wave; 0 deg is straight onto the face. */
  | { readonly kind: 'plane'; readonly angleDeg: number };

/** Surroundings of an absorber: the air, what stands behind it and from where the sound comes. */
export type AbsorberConditions = {
  readonly air: Air;
  readonly backing: AbsorberBacking;
  readonly incidence: Incidence;
};

/** Cosines between which the sum over directions is taken in pieces; finest near grazing, where a lining changes most. */
const pieces = [0, 0.02, 0.1, 0.3, 0.6, 1];
/** Added to the integrand and taken off again, so that rounding in a lossless absorber is not chased as if it were power. */
const unheard = 1e-4;
/** Distances from a coincidence at which the sum is split, in cos(theta). */
const roundCoincidence = [0, -1e-3, 1e-3, -1e-2, 1e-2];

/**
 * Absorption coefficient of a layered absorber in the 21 third-octave bands, the mean over each band.
 *
 * Layers run from the backing to the room. What passes into an open backing, or through a wall behind, counts as absorbed.
 * Equations: plane wave alpha = 4 Re(z) q/|z q + 1|^2, q = cos theta, z = Z/(rho c) of the face; diffuse field
 * alpha = 2 Integral_0^1 4 Re(z)/|z + z_r|^2 dq with z_r = 1/q for an infinite sample and z_r of
 * `sampleRadiationImpedance` for one of finite size.
 * Units: 0..1; on a finite sample in a diffuse field it can exceed 1, because sound bends in at the edges.
 * Source: transfer matrices, J.F. Allard, N. Atalla: Propagation of Sound in Porous Media, 2nd ed. (2009), ch. 11 (common
 * practice); finite sample: S.-I. Thomasson, Acustica 44 (1980) 265 (from memory).
 * Valid for linear, locally plane layers; a porous frame carries no stress; the finite sample lies flush in a hard wall, so
 * that its rim does not absorb.
 * Errors: ArgumentError that names the layer; Error when the sum over directions does not converge.
 *
 * @example
 * ```ts
 * import { absorberAbsorption } from '@boothwright/acoustics/absorption';
 * import { airProperties } from '@boothwright/acoustics/air';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // Invented: 100 mm of fibre before a hard wall.
 * const fibre = { kind: 'porous', model: 'miki', thickness: 0.1, flowResistivity: 10000 } as const;
 * const large = absorberAbsorption([fibre], { air, backing: 'rigid', incidence: { kind: 'diffuse' } });
 * large[10]; // 0.90
 * const incidence = { kind: 'diffuse-on-sample', size: { width: 3.6, height: 3 } } as const;
 * absorberAbsorption([fibre], { air, backing: 'rigid', incidence })[10]; // 1.11
 * ```
 */
export function absorberAbsorption(
  layers: readonly AbsorberLayer[],
  conditions: AbsorberConditions,
  samplesPerBand: number = defaultSamplesPerBand,
): number[] {
  checkConditions(layers, conditions);
  return thirdOctaveBands.map((band) => {
    const samples = bandSamples(band, samplesPerBand);
    return samples.reduce((sum, hz) => sum + absorptionAt(layers, hz, conditions), 0) / samples.length;
  });
}

/** The same at one frequency in Hz; see `absorberAbsorption`. */
export function absorberAbsorptionAt(
  layers: readonly AbsorberLayer[],
  hz: number,
  conditions: AbsorberConditions,
): number {
  checkConditions(layers, conditions);
  requireNumber('frequency', hz, { above: 0, unit: 'hertz' });
  return absorptionAt(layers, hz, conditions);
}

/**
 * Impedance of the face of a layered absorber, pressure over velocity into it, Pa s/m, for a plane wave at an angle in deg
 * from the normal. A hard wall without layers has an infinite one. See `absorberAbsorption`.
 */
export function absorberSurfaceImpedance(
  layers: readonly AbsorberLayer[],
  hz: number,
  angleDeg: number,
  { air, backing }: Pick<AbsorberConditions, 'air' | 'backing'>,
): Complex {
  checkConditions(layers, { air, backing, incidence: { kind: 'plane', angleDeg } });
  requireNumber('frequency', hz, { above: 0, unit: 'hertz' });
  const { pressure, velocity } = faceState(prepareAbsorber(layers, backing, hz, air), cosineOf(angleDeg));
  if (velocity.re === 0 && velocity.im === 0) return complex(Number.POSITIVE_INFINITY);
  return divide(pressure, velocity);
}

function absorptionAt(layers: readonly AbsorberLayer[], hz: number, conditions: AbsorberConditions): number {
  const { air, backing, incidence } = conditions;
  const absorber = prepareAbsorber(layers, backing, hz, air);
  if (incidence.kind === 'plane') {
    const cosine = cosineOf(incidence.angleDeg);
    return share(faceState(absorber, cosine), air.impedance, complex(1 / cosine)) / cosine;
  }
  const radiation =
    incidence.kind === 'diffuse'
      ? (cosine: number) => complex(1 / cosine)
      : sampleRadiationTable(absorber.wavenumber, incidence.size);
  const { values, converged } = integrateAdaptive(
    (cosine, out) => {
      out[0] = unheard + 2 * share(faceState(absorber, cosine), air.impedance, radiation(cosine));
    },
    1,
    breaksOf(absorber),
    angularTolerance,
    angularEvaluationLimit,
  );
  expectConverged(converged, hz);
  // The quadrature may miss the bound of an infinite sample by its own tolerance.
  const found = Math.max(0, values[0]! - unheard);
  return incidence.kind === 'diffuse' ? Math.min(1, found) : found;
}

/** 4 Re(z)/|z + z_r|^2 by pressure and velocity, so that a hard face is no special case. */
function share({ pressure, velocity }: FaceState, airImpedance: number, radiation: Complex): number {
  const power = Math.max(0, pressure.re * velocity.re + pressure.im * velocity.im);
  const re = pressure.re + airImpedance * (radiation.re * velocity.re - radiation.im * velocity.im);
  const im = pressure.im + airImpedance * (radiation.re * velocity.im + radiation.im * velocity.re);
  return (4 * airImpedance * power) / (re * re + im * im);
}

function breaksOf(absorber: PreparedAbsorber): number[] {
  const places = absorber.coincidences().flatMap((cosine) => roundCoincidence.map((offset) => cosine + offset));
  return [...pieces, ...places.filter((place) => place > 0 && place < 1)].sort((a, b) => a - b);
}

function cosineOf(angleDeg: number): number {
  return Math.cos((angleDeg * Math.PI) / 180);
}

function checkConditions(layers: readonly AbsorberLayer[], { backing, incidence }: AbsorberConditions): void {
  checkAbsorber(layers);
  if (typeof backing === 'string') requireOneOf('backing', backing, ['rigid', 'open']);
  else {
    requireOneOf('kind of the backing', backing.kind, ['limp', 'wall']);
    if (backing.kind === 'wall') checkAbsorber(backing.layers);
    else requireNumber('surface mass of the backing', backing.surfaceMass, { atLeast: 0, unit: 'kg/m2' });
  }
  requireOneOf('kind of the incidence', incidence.kind, ['diffuse', 'diffuse-on-sample', 'plane']);
  if (incidence.kind === 'plane')
    requireNumber('angle of incidence', incidence.angleDeg, { atLeast: 0, below: 90, unit: 'degrees' });
  if (incidence.kind === 'diffuse-on-sample') {
    requireNumber('width of the sample', incidence.size.width, { above: 0, unit: 'metres' });
    requireNumber('height of the sample', incidence.size.height, { above: 0, unit: 'metres' });
  }
}
