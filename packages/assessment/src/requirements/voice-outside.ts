import type { Requirement, Site } from '@boothwright/language';
import { nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { strongestPath } from '../booth/strongest-path.js';
import { governingBand } from '../noise/governing.js';
import { limitingOverall, limitingOverallSentence } from '../noise/limiting-overall.js';
import type { BoothResult, RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/** The talker as heard in the room around the booth. */
export function judgeVoiceOutside(
  requirement: Extract<Requirement, { kind: 'voice-outside' }>,
  assessed: AssessedBooth,
  site: Site | undefined,
): RequirementResult {
  const { booth, result } = assessed;
  const limit = requirement.limit.value.decibels;
  const { weighting } = requirement.limit.value;
  const unit = weighting === 'A' ? 'dBA' : 'dB';
  const base = { requirement, booth: booth.name, limit, unit };
  const voice = result.voiceOutside;
  if (voice === null) {
    const missing = [
      ...(site?.room === undefined ? ['the size of the room around the booth (`room` in `site`)'] : []),
      // There is air to speak of whenever there is a session.
      ...(result.air === null ? ['a `session`'] : []),
    ];
    return notAssessed({ ...base, explanation: `The level outside needs ${joined(missing)}.` });
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
  return judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: limiting.id,
    explanation: `A ${voice.effort} voice is heard outside (${voice.where}) at ${rangedWords(value, unit)} where at most ${decimals(limit, 0)} ${unit} is asked: ${marginWords(limit - value.value, 'dB')}.${limiting.sentence} The bands below 160 Hz are not known.`,
  });
}

type Voice = NonNullable<BoothResult['voiceOutside']>;

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
