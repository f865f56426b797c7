import type { Requirement } from '@boothwright/language';
import { nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { strongestPath } from '../booth/strongest-path.js';
import { governingBand } from '../noise/governing.js';
import { limitingOverall, limitingOverallSentence } from '../noise/limiting-overall.js';
import type { ByBand, LevelTotals, RequirementResult } from '../result/result-document.js';
import type { VoiceEffort } from '../result/voice-result.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/** The talker as heard in the room around the booth, or at a neighbour. */
export function judgeVoiceOutside(
  requirement: Extract<Requirement, { kind: 'voice-outside' }>,
  assessed: AssessedBooth,
): RequirementResult {
  const { booth, result } = assessed;
  const { where } = requirement;
  const limit = requirement.limit.value.decibels;
  const { weighting } = requirement.limit.value;
  const unit = weighting === 'A' ? 'dBA' : 'dB';
  const base = { requirement, booth: booth.name, limit, unit };
  const place = result.voiceAt.find((each) => each.place === (where ?? null));
  if (where !== undefined && place === undefined) {
    return notAssessed({ ...base, explanation: `No \`neighbour\` of the site is named ${where}.` });
  }
  const voice = place?.session ?? null;
  if (place === undefined || voice === null) {
    const missing = [
      ...(place?.missing ?? ['the size of the room around the booth (`room` in `site`)']),
      // There is air to speak of whenever there is a session.
      ...(result.air === null ? ['a `session`'] : []),
    ];
    return notAssessed({ ...base, explanation: `The level ${placeWords(where)} needs ${joined(missing)}.` });
  }
  if (weighting !== 'A' && weighting !== 'Z' && weighting !== 'none') {
    return notAssessed({
      ...base,
      explanation: 'The voice outside is predicted in dBA and in dB; ask for one of them.',
    });
  }
  const value = weighting === 'A' ? voice.dBA : voice.dBZ;
  if (value === null) return notAssessed({ ...base, explanation: 'No band of the voice is known.' });
  const limiting = weighting === 'A' ? overAllBands(assessed, voice) : inLoudestBand(assessed, voice);
  const known = knownOctavesSentence(voice.byBand);
  const contact = where === undefined ? '' : ' A rigid contact with the building would carry the voice past all this.';
  return judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: limiting.id,
    explanation: `A ${effortWords(voice.effort)} is heard ${placeWords(where, place.title)} at ${rangedWords(value, unit)} where at most ${decimals(limit, 0)} ${unit} is asked: ${marginWords(limit - value.value, 'dB')}.${limiting.sentence} ${known}${contact}`,
  });
}

function placeWords(where: string | undefined, title?: string): string {
  if (where === undefined) return title === undefined ? 'outside' : `outside (${title})`;
  return title === undefined || title === where ? `in ${where}` : `in ${where} (${title})`;
}

function effortWords(effort: VoiceEffort): string {
  return effort === 'full-shout' ? 'full shout' : `${effort} voice`;
}

function knownOctavesSentence(levels: ByBand): string {
  const first = levels.findIndex((level) => level !== null);
  return `The bands below ${hertz(nominalHz[Math.max(first, 0)] as number)} are not known.`;
}

type Voice = LevelTotals;

interface Limited {
  readonly id: string | null;
  readonly sentence: string;
}

function overAllBands({ booth, result, isolation }: AssessedBooth, voice: Voice): Limited {
  const limiting = limitingOverall(booth, result.paths, [
    { source: 'the voice', levels: voice.byBand, shares: isolation.shares },
  ]);
  return { id: limiting?.id ?? null, sentence: limitingOverallSentence(limiting, 'outside') };
}

function inLoudestBand({ booth, result, isolation }: AssessedBooth, voice: Voice): Limited {
  const band = governingBand(voice.byBand, 'Z');
  if (band === null) return { id: null, sentence: '' };
  const strongest = strongestPath(
    booth,
    result.paths,
    isolation.shares.map((share) => share[band] ?? 0),
  );
  if (strongest === null) return { id: null, sentence: '' };
  return {
    id: strongest.id,
    sentence: ` The third octave that counts most is ${hertz(nominalHz[band] as number)}, where ${decimals(100 * strongest.weight, 0)} % leaves through ${strongest.words}.`,
  };
}
