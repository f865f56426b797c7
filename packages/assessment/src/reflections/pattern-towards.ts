import type { MicrophonePattern } from '@boothwright/acoustics';
import { dot, lengthOf, minus, type Vector } from './vectors.js';

/** Sensitivity of a microphone that looks at the mouth to sound from a point, dB re its axis; minus infinity in a null. */
export function patternTowards(pattern: MicrophonePattern, microphone: Vector, mouth: Vector, from: Vector): number {
  const axis = minus(mouth, microphone);
  const arrival = minus(from, microphone);
  const cosine = dot(axis, arrival) / (lengthOf(axis) * lengthOf(arrival));
  return 20 * Math.log10(Math.abs(pattern.pressure + pattern.gradient * cosine));
}
