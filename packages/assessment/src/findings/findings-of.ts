import type { JudgedContext } from '../assessment-context.js';
import type { Finding } from '../result/result-document.js';
import { cavityResonanceInBand } from './cavity-resonance-in-band.js';
import { dbaPassesDbfsFails } from './dba-passes-dbfs-fails.js';
import { leakCapsWall } from './leak-caps-wall.js';
import { noFreshAir } from './no-fresh-air.js';
import { ratingHidesLowFrequency } from './rating-hides-low-frequency.js';
import { thirdLeaf } from './third-leaf.js';

/** All findings, in the order of the text and then by id. */
export function findingsOf(context: JudgedContext): Finding[] {
  const findings = [
    ...cavityResonanceInBand(context),
    ...dbaPassesDbfsFails(context),
    ...leakCapsWall(context),
    ...noFreshAir(context),
    ...ratingHidesLowFrequency(context),
    ...thirdLeaf(context),
  ];
  return findings.sort((a, b) => a.range.from - b.range.from || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
