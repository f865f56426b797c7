import { editDistance } from './edit-distance.js';

/** The nearest of the known names when it is near enough to be what was meant. */
export function didYouMean(name: string, known: Iterable<string>): string | undefined {
  const wanted = name.toLowerCase();
  const allowed = Math.max(1, Math.floor(wanted.length / 3));
  let best: string | undefined;
  let bestDistance = allowed + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - wanted.length) >= bestDistance) continue;
    const distance = editDistance(wanted, candidate.toLowerCase(), bestDistance);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}
