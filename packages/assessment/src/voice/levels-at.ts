import { perBand } from '../bands/grid.js';
import type { ByBand } from '../result/result-document.js';
import type { VoiceEffort } from '../result/voice-result.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { voiceLevelHalfWidth } from '../uncertainty/model-uncertainty.js';
import { effortSpectrum } from './voice-efforts.js';
import type { VoiceTransfer } from './voice-transfer.js';

/** Levels of a voice at a place, dB by band, with the half-width that holds the talker too. */
export function levelsAt(effort: VoiceEffort, { loss, halfWidth }: VoiceTransfer) {
  const speech = effortSpectrum(effort);
  const byBand: ByBand = perBand((band) => {
    const level = speech[band] ?? null;
    const taken = loss[band] ?? null;
    return level === null || taken === null ? null : level - taken;
  });
  return { byBand, halfWidth: halfWidth.map((width) => combinedHalfWidth(width, voiceLevelHalfWidth)) };
}
