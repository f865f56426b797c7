import type { Requirement, Session } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { governingBand, limitingPath, limitingSentence } from '../noise/governing.js';
import { statesOfSession } from '../noise/hour-states.js';
import { limitingOverall, limitingOverallSentence } from '../noise/limiting-overall.js';
import { ownSounds } from '../noise/own-sounds.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { judgeCriterion } from './room-tone-criterion.js';
import { marginWords, rangedWords } from './sentences.js';
import { unlessBandsUnknown } from './unless-bands-unknown.js';
import { judged, notAssessed, unlessMissed } from './verdict.js';

type RoomToneRequirement = Extract<Requirement, { kind: 'room-tone' }>;

/**
 * Noise inside against a limit in dBA, dB, NC or dBFS. Where sources have hours, the mix of sources that meets it least
 * decides: of those in the hours of the session, or of the whole day when the session does not say when it starts.
 */
export function judgeRoomTone(
  requirement: RoomToneRequirement,
  assessed: AssessedBooth,
  session?: Session,
): RequirementResult {
  const states =
    assessed.states.length === 0
      ? []
      : statesOfSession(assessed.hours, session).map((state) => assessed.states[state] as AssessedBooth);
  // A session at no stated hour can be held in hours that have a figure; one that starts in hours without is left open.
  const known = states.filter(({ result }) => result.noise.bySource.length > 0);
  const [first, ...others] = session?.starts === undefined && known.length > 0 ? known : states;
  if (first === undefined) return judgeMix(requirement, assessed);
  return others.reduce(
    (worst, state) => {
      const next = judgeMix(requirement, state);
      return isWorse(next, worst) ? next : worst;
    },
    judgeMix(requirement, first),
  );
}

const order = { missed: 0, 'not-assessed': 1, met: 2 } as const;

function isWorse(one: RequirementResult, other: RequirementResult): boolean {
  if (one.verdict !== other.verdict) return order[one.verdict] < order[other.verdict];
  return (one.margin ?? 0) < (other.margin ?? 0);
}

/** The noise of one mix of sources. */
function judgeMix(requirement: RoomToneRequirement, assessed: AssessedBooth): RequirementResult {
  const limit = requirement.limit.value.decibels;
  const unit = unitOf(requirement);
  const { booth, result } = assessed;
  const none = (explanation: string) => notAssessed({ requirement, booth: booth.name, limit, unit, explanation });
  const { noise } = result;
  if (noise.bySource.length === 0 && ownSounds(noise).length === 0) {
    return none(
      assessed.hours.states.length > 1
        ? `In these hours there is nothing to predict. ${ofOtherHours}`
        : 'The text names no airborne noise and no fan with a sound power, so there is nothing to predict.',
    );
  }
  const verdict = judgedBy(requirement, assessed, limit, unit, none);
  return withWhatIsUnknown(requirement, verdict, assessed);
}

function unitOf(requirement: RoomToneRequirement): string {
  switch (requirement.limit.value.weighting) {
    case 'A':
      return 'dBA';
    case 'C':
      return 'dBC';
    case 'NC':
      return 'NC';
    case 'FS':
      return 'dBFS';
    default:
      return 'dB';
  }
}

function judgedBy(
  requirement: RoomToneRequirement,
  assessed: AssessedBooth,
  limit: number,
  unit: string,
  none: (explanation: string) => RequirementResult,
): RequirementResult {
  const { weighting } = requirement.limit.value;
  if (weighting === 'NC') return judgeCriterion(requirement, assessed);
  if (weighting === 'FS') return judgeFullScale(requirement, assessed, limit, none);
  if (weighting === 'C') return none('Levels in dBC are not predicted; ask for dBA, dB or NC.');
  const kind = weighting === 'A' ? 'A' : 'Z';
  const { total } = assessed.result.noise;
  const value = kind === 'A' ? total.dBA : total.dBZ;
  if (value === null) return none('No band of the noise inside is known.');
  const limiting = kind === 'A' ? overAllBands(assessed) : inLoudestBand(assessed);
  return judged({
    requirement,
    booth: assessed.booth.name,
    value,
    limit,
    unit,
    sense: 'at-most',
    limitedBy: limiting.id,
    explanation: `Inside it is ${rangedWords(value, unit)} where at most ${decimals(limit, 0)} ${unit} is asked: ${marginWords(limit - value.value, 'dB')}.${limiting.sentence}`,
  });
}

interface Limited {
  readonly id: string | null;
  readonly sentence: string;
}

function overAllBands({ booth, result }: AssessedBooth): Limited {
  const sounds = result.noise.bySource.map(({ name, inside, shares }) => ({
    source: name,
    levels: inside.byBand,
    shares,
  }));
  const limiting = limitingOverall(booth, result.paths, sounds, ownSounds(result.noise));
  return { id: limiting?.id ?? null, sentence: limitingOverallSentence(limiting, 'inside') };
}

function inLoudestBand(assessed: AssessedBooth): Limited {
  const band = governingBand(assessed.result.noise.total.byBand, 'Z');
  const limiting = band === null ? null : limitingPath(assessed, band);
  return { id: limiting?.id ?? null, sentence: limitingSentence(limiting) };
}

function judgeFullScale(
  requirement: RoomToneRequirement,
  assessed: AssessedBooth,
  limit: number,
  none: (explanation: string) => RequirementResult,
): RequirementResult {
  const { booth, result } = assessed;
  if (booth.microphone === undefined)
    return none('The booth has no `mic` line, so the distance of the voice is not known.');
  const tone = result.noise.roomTone;
  if (tone === null) {
    return none(
      'There is no `session` block, or no band of the noise or of the voice is known, so the recording cannot be calibrated.',
    );
  }
  const band = governingBand(tone.roomByBand, 'Z');
  const limiting = band === null ? null : limitingPath(assessed, band);
  const own = tone.shares.microphone > 0.5;
  return judged({
    requirement,
    booth: booth.name,
    value: tone.dBFS,
    limit,
    unit: 'dBFS',
    sense: 'at-most',
    limitedBy: own ? 'microphone' : (limiting?.id ?? null),
    explanation: `Room tone reads ${rangedWords(tone.dBFS, 'dBFS RMS')} unweighted, as the limit is meant, where at most ${decimals(limit, 0)} dBFS is asked: ${marginWords(limit - tone.dBFS.value, 'dB')}. The voice at the capsule is ${decimals(tone.voiceAtCapsuleDbZ, 1)} dB and the noise ${decimals(tone.noiseAtCapsuleDbZ, 1)} dB, both unweighted.${own ? ' Most of the noise is the microphone itself.' : limitingSentence(limiting)}`,
  });
}

const ofOtherHours =
  'The text names no airborne noise from outside in these hours, which is not silence: read the level then and write it as another `noise` with `hours`.';

/** No figure for the sound outside is not silence outside. */
function nothingOutside({ hours }: AssessedBooth): string {
  return hours.states.length > 1
    ? `The verdict is open. ${ofOtherHours}`
    : 'But the text names no airborne noise from outside, which is not silence: the verdict is open. Read the level and write it as `noise` in the `site`.';
}

/** What could spoil a met verdict: hours without a figure, fans and bands that are not known, and footfall, which is only mentioned. */
function withWhatIsUnknown(
  requirement: RoomToneRequirement,
  verdict: RequirementResult,
  assessed: AssessedBooth,
): RequirementResult {
  const { result, unknownFans, unknownMachines } = assessed;
  let checked = result.noise.bySource.length > 0 ? verdict : unlessMissed(verdict, nothingOutside(assessed));
  const unknown = [...unknownFans.map((vent) => `the fan of ${vent}`), ...unknownMachines];
  if (unknown.length > 0) {
    const [names, several] = [joined(unknown), unknown.length > 1];
    const words =
      verdict.verdict === 'missed'
        ? `${names.charAt(0).toUpperCase()}${names.slice(1)} ${several ? 'come' : 'comes'} on top: no sound power is given.`
        : `But ${names} ${several ? 'have' : 'has'} no sound power in the text, so the noise is unknown and the verdict is open.`;
    checked =
      verdict.verdict === 'missed'
        ? { ...verdict, explanation: `${verdict.explanation} ${words}` }
        : unlessMissed(checked, words);
  }
  checked = unlessBandsUnknown(checked, assessed.unknownOctaves, {
    aWeighted: requirement.limit.value.weighting === 'A',
    who: 'Not every source is',
    bound: 'a lower',
  });
  const felt = result.noise.notPredicted.filter(({ kind }) => kind === 'structure' || kind === 'vibration');
  if (felt.length > 0 && checked.verdict === 'met') {
    const names = joined(felt.map((source) => source.name));
    checked = {
      ...checked,
      explanation: `${checked.explanation} This holds for airborne sound only: ${names} arrives through the structure and is not predicted.`,
    };
  }
  return checked;
}
