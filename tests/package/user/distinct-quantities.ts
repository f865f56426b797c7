// Compiled against the installed package: each line under `@ts-expect-error` must be refused.
import {
  asInsertionLoss,
  asLevelDifference,
  asTransmissionLoss,
  type InsertionLoss,
  type LevelDifference,
  type TransmissionLoss,
} from '@boothwright/acoustics/quantities';

const numbers = [30, 40, 50];
const transmissionLoss: TransmissionLoss = asTransmissionLoss(numbers);
const levelDifference: LevelDifference = asLevelDifference(numbers);
const insertionLoss: InsertionLoss = asInsertionLoss(numbers);

export const plain: readonly (readonly number[])[] = [transmissionLoss, levelDifference, insertionLoss];

// @ts-expect-error A level difference is no transmission loss.
export const lossFromDifference: TransmissionLoss = levelDifference;
// @ts-expect-error An insertion loss is no transmission loss.
export const lossFromInsertion: TransmissionLoss = insertionLoss;
// @ts-expect-error A transmission loss is no level difference.
export const differenceFromLoss: LevelDifference = transmissionLoss;
// @ts-expect-error An insertion loss is no level difference.
export const differenceFromInsertion: LevelDifference = insertionLoss;
// @ts-expect-error A transmission loss is no insertion loss.
export const insertionFromLoss: InsertionLoss = transmissionLoss;
// @ts-expect-error Bare numbers do not say what they are.
export const lossFromNumbers: TransmissionLoss = numbers;
