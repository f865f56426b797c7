import type { Requirement } from '@boothwright/language';
import { nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { pathWords } from '../booth/path-words.js';
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
      ? undefined
      : result.paths
          .map((path, index) => ({ path, share: isolation.shares[index]?.[band] ?? 0 }))
          .reduce((best, entry) => (entry.share > best.share ? entry : best));
  const through =
    band === null || strongest === undefined
      ? ''
      : ` Most of it leaves at ${hertz(nominalHz[band] as number)} through ${pathWords(strongest.path)}.`;
  return judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: strongest?.path.id ?? null,
    explanation: `A ${voice.effort} voice is heard outside (${voice.where}) at ${rangedWords(value, unit)} where at most ${decimals(limit, 0)} ${unit} is asked: ${marginWords(limit - value.value, 'dB')}.${through} The bands below 160 Hz are not known.`,
  });
}
