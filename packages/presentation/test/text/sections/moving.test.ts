import type { BoothResult, MovingResult } from '@boothwright/assessment';
import { describe, expect, test } from 'vitest';
import { movingSection } from '../../../src/text/sections/moving.js';
import { alcove } from '../../fixtures/sample-booth.js';

const range = { file: 'test.booth', from: 0, to: 5 };
const style = { colour: false, width: 80, detail: 'short' } as const;
const moving: MovingResult = {
  ways: [],
  cards: [],
  roof: null,
  sides: [
    { side: 'front', toWallM: 1.5, freeM: 1.5, obstacle: null, reachable: true },
    { side: 'back', toWallM: 0.05, freeM: 0.05, obstacle: null, reachable: false },
    { side: 'left', toWallM: 0.9, freeM: 0.4, obstacle: 'radiator', reachable: false },
    { side: 'right', toWallM: 0.6, freeM: 0.6, obstacle: null, reachable: true },
  ],
  obstacles: [],
  doors: [],
  assembly: {
    possible: true,
    steps: [
      { step: 1, what: 'floor: lay it', panels: [4, 5, 6], fastenedFrom: null, why: 'the walls stand around it' },
      { step: 2, what: 'lining, from inside', panels: [], fastenedFrom: 'inside', why: 'joints are covered then' },
    ],
    blockedBy: [],
    assumes: [],
  },
  problems: [
    { id: 'booth-hits-obstacle', subject: 'pipe', text: 'pipe is in the way: 20 mm missing', fix: 'move it', range },
  ],
  asks: ['`swing` of door entry'],
  leavesOut: ['Panels are rigid boxes.'],
};
const section = (changes: Partial<MovingResult> = {}, detail: 'short' | 'full' = 'short') =>
  movingSection({ ...alcove, moving: { ...moving, ...changes } } as BoothResult, '', { ...style, detail });

describe('movingSection(booth)', () => {
  test('is not there without a result', () => {
    expect(movingSection({ ...alcove, moving: null }, '', style)).toBeUndefined();
  });

  test('puts what does not go first, each with what to do', () => {
    const lines = section()?.split('\n') ?? [];
    expect(lines[1]).toBe('  ! pipe is in the way: 20 mm missing');
    expect(lines[2]).toBe('    → move it');
  });

  test('says how much room there is around, and where it is too little to work', () => {
    expect(section()).toContain('around it: front 1.50 m, back 50 mm, left 400 mm to radiator, right 600 mm');
    expect(section()?.replace(/\s+/g, ' ')).toContain('back and left too tight to work from outside');
  });

  test('numbers the steps; the reasons stand in the full report', () => {
    expect(section()).toContain('  1. floor: lay it\n  2. lining');
    const cards = [
      {
        panel: 4,
        name: 'floor 1',
        face: 'floor',
        widthM: 0.5,
        heightM: 1.2,
        thicknessM: 0.03,
        massKg: 9,
        massKnown: true,
        people: 1,
        props: false,
        ways: [],
        raised: null,
      },
    ];
    expect(section({ cards })).toContain('  1. floor: lay it (panels 4–6)');
    expect(section({}, 'full')).toContain('1. floor: lay it: the walls stand around it');
    expect(section({}, 'full')).toContain('not in it: Panels are rigid boxes.');
  });

  test('asks for what is missing', () => {
    expect(section()).toContain('not known: `swing` of door entry');
  });

  test('stays within the width', () => {
    for (const line of section()?.split('\n') ?? []) expect(line.length).toBeLessThanOrEqual(80);
  });
});
