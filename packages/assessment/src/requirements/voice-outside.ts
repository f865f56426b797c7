import type { Requirement } from '@boothwright/language';
import { nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { strongestPath } from '../booth/strongest-path.js';
import { governingBand } from '../noise/governing.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/** The talker as heard in the room around the booth. */
export function judgeVoiceOutside(
  requirement: Extract<Requirement, { kind: 'voice-outside' }>,
  { booth, result, isolation }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value.decibels;
  const { weighting } = requirement.limit.value;
  const unit = weighting === 'A' ? 'dBA' : 'dB';
  const base = { requirement, booth: booth.name, limit, unit };
  const voice = result.voiceOutside;
  if (voice === null) {
    return notAssessed({
      ...base,
      explanation: 'The level outside needs the size of the room around the booth (`room` in `site`) and a `session`.',
    });
  }
  if (weighting !== 'A' && weighting !== 'Z' && weighting !== 'none') {
    return notAssessed({
      ...base,
      explanation: 'The voice outside is predicted in dBA and in dB; ask for one of them.',
    });
  }
  const value = weighting === 'A' ? voice.dBA : voice.dBZ;
  if (value === null) return notAssessed({ ...base, explanation: 'No band of the voice is known.' });
  const band = governingBand(voice.byBand, weighting === 'A' ? 'A' : 'Z');
  const strongest =
    band === null
      ? null
      : strongestPath(
          booth,
          result.paths,
          isolation.shares.map((share) => share[band] ?? 0),
        );
  const through =
    band === null || strongest === null
      ? ''
      : ` The band that counts most is ${hertz(nominalHz[band] as number)}, where ${decimals(100 * strongest.weight, 0)} % leaves through ${strongest.words}.`;
  return judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: strongest?.id ?? null,
    explanation: `A ${voice.effort} voice is heard outside (${voice.where}) at ${rangedWords(value, unit)} where at most ${decimals(limit, 0)} ${unit} is asked: ${marginWords(limit - value.value, 'dB')}.${through} The bands below 160 Hz are not known.`,
  });
}
