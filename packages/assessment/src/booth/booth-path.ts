import type { EnclosureElement } from '@boothwright/acoustics';
import type { PathResult } from '../result/result-document.js';

/** One way in for sound, in the terms of both models of the inside. */
export interface BoothPath {
  readonly result: PathResult;
  /** dB per band */
  readonly halfWidth: readonly number[];
  /** The same path for the bands below the first mode. */
  readonly elements: readonly EnclosureElement[];
  /** dB per band that a lining, bends or a stated insertion loss take off the flow through the openings among them. */
  readonly attenuation?: readonly number[];
  /** True for openings that air can pass. */
  readonly leak: boolean;
}
