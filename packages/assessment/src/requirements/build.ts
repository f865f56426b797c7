import type { Requirement } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { heaviestOf } from '../build/build-result.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
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

/** The heaviest piece that has to be carried: a panel, or the leaf of a door. */
export function judgePanelWeight(
  requirement: Extract<Requirement, { kind: 'panel-weight' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const { panels, panelsWhy, massByPart } = result.build;
  const limit = requirement.limit.value;
  const base = { requirement, booth: booth.name, limit, unit: 'kg' };
  const worst = heaviestOf(panels);
  if (panelsWhy !== null || worst === undefined) {
    const why = panelsWhy ?? 'no face has a build-up';
    return notAssessed({
      ...base,
      explanation: `No panel has a weight: ${why}. Write \`panels { width 600 mm }\` into the booth.`,
    });
  }
  const pieces = [
    { name: `panel ${worst.number}, ${worst.name}`, kg: worst.massKg, missing: panels.flatMap((p) => p.massMissing) },
    ...booth.doors.map((door) => ({
      name: `the leaf of ${door.name}`,
      kg: massByPart.find(({ part }) => part === `door ${door.name}`)?.kg ?? 0,
      missing: [],
    })),
  ];
  const heaviest = pieces.reduce((best, piece) => (piece.kg > best.kg ? piece : best));
  const missing = [...new Set(pieces.flatMap((piece) => piece.missing))];
  if (missing.length > 0 && heaviest.kg <= limit) {
    const explanation = `The heaviest piece, ${heaviest.name}, weighs ${decimals(heaviest.kg, 1)} kg and what ${joined(missing)} weighs besides: the text gives no density.`;
    return notAssessed({ ...base, explanation });
  }
  const value = withMassRange(heaviest.kg);
  const over = panels.filter(({ massKg }) => massKg > limit);
  const several =
    over.length > 1
      ? ` ${over.length} of ${panels.length} panels are over it: ${joined(over.map((p) => String(p.number)))}.`
      : '';
  const apart =
    heaviest.name.startsWith('panel') && worst.heaviestLeafKg !== null
      ? ` Clear air parts its leaves: were they carried one by one, the heavier weighs ${decimals(worst.heaviestLeafKg, 1)} kg.`
      : '';
  return judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: heaviest.name,
    explanation: `The heaviest piece, ${heaviest.name}, weighs ${rangedWords(value, 'kg', 1)} where at most ${decimals(limit, 1)} kg is asked: ${marginWords(limit - heaviest.kg, 'kg', 1)}.${several}${apart} Linings are fixed later and not in it, latches and hinges neither.`,
  });
}
