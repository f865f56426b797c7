import { airProperties } from '@boothwright/acoustics';
import type { Booth, Session, Site } from '@boothwright/language';
import { airResult } from '../../src/air/air-result.js';
import { createMemo } from '../../src/memo/memo.js';

export const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

/** The air of a booth at 20 degC and 50 %, without a memory of other tests. */
export function resultOf(booth: Booth, session: Session | undefined, volume: number, site?: Site) {
  return airResult(booth, session, site, volume, air, createMemo());
}
