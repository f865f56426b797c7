import type { Requirement } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { massShare } from '../uncertainty/model-uncertainty.js';
import { stated } from '../uncertainty/ranged.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

const massBasis = 'densities and workmanship, a tenth either way; docs/models/uncertainty.md';

function withMassRange(value: number) {
  return { value, low: value * (1 - massShare), high: value * (1 + massShare), basis: massBasis };
}

/** Mass of the empty booth. */
export function judgeMass(
  requirement: Extract<Requirement, { kind: 'mass' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value;
  const value = withMassRange(result.build.massKg);
  const heaviest = result.build.massByPart.reduce((best, part) => (part.kg > best.kg ? part : best), {
    part: '',
    kg: 0,
  });
  return judged({
    requirement,
    booth: booth.name,
    value,
    limit,
    unit: 'kg',
    sense: 'at-most',
    limitedBy: heaviest.part || null,
    explanation: `The empty booth weighs ${rangedWords(value, 'kg', 0)} where at most ${decimals(limit, 0)} kg is asked: ${marginWords(limit - value.value, 'kg', 0)}. The heaviest part is ${heaviest.part} with ${decimals(heaviest.kg, 0)} kg.`,
  });
}

/** Mean load on the floor under the booth with people and contents. */
export function judgeFloorLoad(
  requirement: Extract<Requirement, { kind: 'floor-load' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value / 1000;
  const { build } = result;
  const value = withMassRange(build.floorLoadPa / 1000);
  return judged({
    requirement,
    booth: booth.name,
    value,
    limit,
    unit: 'kPa',
    sense: 'at-most',
    explanation: `Booth, people and contents weigh ${decimals(build.loadedMassKg, 0)} kg on ${decimals(build.footprintM2, 2)} m2: ${rangedWords(value, 'kPa', 2)} where at most ${decimals(limit, 2)} kPa is asked, ${marginWords(limit - value.value, 'kPa', 2)}. This is a mean over the footprint and not a check of the floor: show it to a qualified person.`,
  });
}

/** Outside height as stated or added up. */
export function judgeHeight(
  requirement: Extract<Requirement, { kind: 'height' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value;
  const height = result.geometry.outsideM[2];
  const value = stated(
    height,
    booth.outside === undefined ? 'inside height plus roof and floor' : 'stated outside height',
  );
  return judged({
    requirement,
    booth: booth.name,
    value,
    limit,
    unit: 'm',
    sense: 'at-most',
    explanation: `The booth is ${decimals(height, 3)} m high outside where at most ${decimals(limit, 3)} m is asked: ${marginWords((limit - height) * 1000, 'mm', 0)}. Ducts and boxes on the roof are not counted.`,
  });
}

/** Panels are not laid out, so their weight cannot be known. */
export function judgePanelWeight(
  requirement: Extract<Requirement, { kind: 'panel-weight' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const heaviest = result.build.massByPart.reduce((best, part) => (part.kg > best.kg ? part : best), {
    part: '',
    kg: 0,
  });
  return notAssessed({
    requirement,
    booth: booth.name,
    limit: requirement.limit.value,
    unit: 'kg',
    explanation: `This version does not divide faces into panels, so no panel has a weight yet. The heaviest face, ${heaviest.part}, weighs ${decimals(heaviest.kg, 0)} kg in one piece.`,
  });
}
