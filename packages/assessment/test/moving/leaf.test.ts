import { expect, it } from 'vitest';
import { onlyBooth } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

it('the leaf of a door weighs on its way what it weighs in the booth, its own sticks among it', () => {
  const { build, moving } = onlyBooth(
    specOf(`use catalog
assembly shell { softwood-plywood 12 mm; frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }; gypsum-board 12.5 mm }
site "room" { room 4 m x 3.6 m x 2.5 m }
booth small {
  inside 1.2 m x 1.4 m x 2.0 m
  walls shell; roof shell; floor shell
  door entry on front { size 660 mm x 1900 mm; leaf shell }
  panels { width 600 mm }
}`),
  );
  const carried = moving?.cards.find(({ name }) => name === 'leaf of door entry');
  const standing = build.massByPart.find(({ part }) => part === 'door entry');
  expect(carried?.massKg).toBe(standing?.kg);
  // Sheets alone: 12 mm of plywood and 12.5 mm of gypsum board; four sticks of 45 x 70 mm come on top.
  expect(standing?.kg).toBeGreaterThan(0.66 * 1.9 * (0.012 * 450 + 0.0125 * 600) + 5 * 0.045 * 0.07 * 350);
});
