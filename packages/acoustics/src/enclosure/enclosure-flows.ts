import type { Complex } from '../math/complex.js';
import type { Cancellation, EnclosureElement } from './enclosure-element.js';
import type { TwoPort } from './enclosure-parts.js';

/** What the pressure outside drives into a small enclosure, and what loads it, summed over parts of its skin. */
export interface EnclosureFlows {
  /** Sum S/B, m3/s per Pa */
  drivenRe: number;
  drivenIm: number;
  /** The parts of it in step with the pressure, against it, a quarter turn before and a quarter turn behind. */
  readonly parts: [number, number, number, number];
  /** j omega compliance + Sum S A/B */
  loadingRe: number;
  loadingIm: number;
  /** Nothing is in the way of one part: the pressure outside is the pressure inside. */
  open: boolean;
}

export function createFlows(hz: number, compliance: number): EnclosureFlows {
  return {
    drivenRe: 0,
    drivenIm: 0,
    parts: [0, 0, 0, 0],
    loadingRe: 0,
    loadingIm: 2 * Math.PI * hz * compliance,
    open: false,
  };
}

/** Adds a part of the skin of this area, m2, driven by `drive` times the pressure outside. */
export function addFlow(flows: EnclosureFlows, area: number, drive: number, { a, b }: TwoPort): void {
  const size = squared(b);
  if (size === 0) {
    flows.open = true;
    return;
  }
  const { parts } = flows;
  const flowRe = (area * drive * b.re) / size;
  const flowIm = (-area * drive * b.im) / size;
  flows.drivenRe += flowRe;
  flows.drivenIm += flowIm;
  parts[flowRe > 0 ? 0 : 1] += flowRe;
  parts[flowIm > 0 ? 2 : 3] += flowIm;
  flows.loadingRe += (area * (a.re * b.re + a.im * b.im)) / size;
  flows.loadingIm += (area * (a.im * b.re - a.re * b.im)) / size;
}

/** Level outside minus level inside, dB. */
export function levelDifferenceOf(flows: EnclosureFlows, cancellation: Cancellation): number {
  if (flows.open) return 0;
  const { drivenRe, drivenIm, parts, loadingRe, loadingIm } = flows;
  const inFlow =
    cancellation === 'full'
      ? drivenRe * drivenRe + drivenIm * drivenIm
      : parts.reduce((sum, part) => sum + part * part, 0);
  return 10 * Math.log10((loadingRe * loadingRe + loadingIm * loadingIm) / inFlow);
}

/** Pressure that drives one part over that which drives a plain wall. */
export function driveOf(element: EnclosureElement): number {
  if (element.kind === 'leak') return 10 ** (-(element.attenuation ?? 0) / 20);
  return element.kind === 'slit' && element.position === 'edge' ? Math.SQRT2 : 1;
}

function squared({ re, im }: Complex): number {
  return re * re + im * im;
}
