import type { InsertionLoss } from '../quantities/insertion-loss.js';
import type { LevelDifference } from '../quantities/level-difference.js';

/**
 * Refuses, when compiled, values known to be a level difference or an insertion loss where a transmission loss is rated.
 * Plain numbers and transmission loss pass.
 */
export type PlainOrTransmissionLoss<Values> = Values extends LevelDifference | InsertionLoss ? never : unknown;
