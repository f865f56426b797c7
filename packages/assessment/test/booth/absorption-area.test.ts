import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { insideAbsorption } from '../../src/assembly/absorption.js';
import { absorptionAreaOf } from '../../src/booth/absorption-area.js';
import { createMemo } from '../../src/memo/memo.js';
import { booth, deck, shell } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const memo = createMemo();

it('absorptionAreaOf(booth, people) adds area times absorption of every face and of the door', () => {
  const bare = booth(shell, { linings: [] });
  const area = absorptionAreaOf(bare, 0, air, memo);
  const wall = insideAbsorption(shell.layers, air, memo)[10] as number;
  const floor = insideAbsorption(deck.layers, air, memo)[10] as number;
  // Four walls, the roof, the door leaf, less the floor; seals are counted as no area here.
  const walls = 2 * 1.15 * 2 + 2 * 1.35 * 2 + 1.15 * 1.35;
  expect(area.surfaces[10]).toBeCloseTo(walls * wall + 1.15 * 1.35 * floor, 6);
});

it('absorptionAreaOf(booth, people) counts 0.4 m2 per person in the 500 Hz octave', () => {
  const empty = absorptionAreaOf(booth(), 0, air, memo).surfaces[10] as number;
  const two = absorptionAreaOf(booth(), 2, air, memo).surfaces[10] as number;
  expect(two - empty).toBeCloseTo(0.8, 9);
});

it('absorptionAreaOf(booth, people) adds 4 m V for the air', () => {
  const area = absorptionAreaOf(booth(), 1, air, memo);
  const difference = (area.total[20] as number) - (area.surfaces[20] as number);
  expect(difference).toBeCloseTo(4 * ((area.airAttenuation[20] as number) / (10 * Math.LOG10E)) * 3.105, 9);
});

it('absorptionAreaOf(booth, people) takes a floor that is not described as a hard one', () => {
  const faces = { ...booth().faces, floor: undefined };
  const open = absorptionAreaOf(booth(shell, { faces, linings: [] }), 0, air, memo).surfaces[10] as number;
  const withDeck = absorptionAreaOf(booth(shell, { linings: [] }), 0, air, memo).surfaces[10] as number;
  const floor = insideAbsorption(deck.layers, air, memo)[10] as number;
  expect(open - withDeck).toBeCloseTo(1.15 * 1.35 * (0.02 - floor), 9);
});
