import type { Microphone, PolarPattern } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { readBlock } from './block-reader.js';
import { type CheckContext, fallback, headerOf, wholeOf } from './context.js';
import { readPlace } from './read-place.js';
import { factChoice, factNumber, factNumberOr } from './read-value.js';

export function readMicrophone(ctx: CheckContext, statement: Statement): Microphone | undefined {
  const reader = readBlock(ctx, statement, 'mic');
  const place = readPlace(ctx, statement, 'the place of the microphone', 'mic');
  const selfNoise = factNumber(reader, 'self-noise', {
    dimension: 'level',
    noun: 'the self-noise of a microphone',
    weightings: ['A'],
    usual: { min: -5, max: 40, text: 'microphones have 3 to 40 dBA' },
  });
  const distance = factNumberOr(reader, 'distance', 'mic-distance', {
    dimension: 'length',
    noun: 'the distance to the mouth',
    aboveZero: true,
    usual: { min: 0.01, max: 2, text: 'voices are recorded from 10 mm to 2 m' },
  });
  const highPass = factNumber(reader, 'high-pass', {
    dimension: 'frequency',
    noun: 'a high-pass filter',
    aboveZero: true,
    usual: { min: 10, max: 400, text: 'voice filters lie between 10 and 400 Hz' },
  });
  const pattern =
    factChoice<PolarPattern>(reader, 'pattern') ??
    fallback<PolarPattern>(ctx, 'mic-pattern', 'mic: pattern', 'text', headerOf(statement));
  if (!place) return undefined;
  return {
    range: wholeOf(statement),
    position: { x: place.x, y: place.y, z: place.z },
    selfNoise: selfNoise && { ...selfNoise.sourced, value: selfNoise.level! },
    distance,
    pattern,
    highPass: highPass?.sourced,
  };
}
