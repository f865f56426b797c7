import { describe, expect, it } from 'vitest';
import { boothNamed, fromText } from './air-text.js';

// 590 kg/m3 as the catalogue has it.
const outer = { material: 'osb', thickness: 0.018, mass: 0.018 * 590 };

describe('boxes in air paths as parts', () => {
  it('are cut so that the inside is what the text says: the boards fill the outside less the inside', () => {
    const { build } = boothNamed(fromText('chamber 400 mm x 300 mm x 250 mm of osb 18 mm'));
    const rows = build.parts.filter(({ owner }) => owner === 'box of intake');
    expect(rows.map(({ use, count, mark }) => [use, count, mark])).toEqual([
      ['cover', 2, 'B1a'],
      ['side', 2, 'B1b'],
      ['end', 2, 'B1c'],
    ]);
    const t = 0.018;
    const shell = (0.4 + 2 * t) * (0.3 + 2 * t) * (0.25 + 2 * t) - 0.4 * 0.3 * 0.25;
    const boards = rows.reduce((sum, row) => sum + row.count * row.widthM * row.lengthM, 0) * t;
    expect(boards).toBeCloseTo(shell, 12);
    // The hole for the duct of 125 mm goes out of either end.
    expect(rows[2]?.cutOutM2).toBeCloseTo((Math.PI / 4) * 0.125 ** 2, 12);
  });

  it('lie on the sheets with everything else, and are in the mass and the list of what to buy', () => {
    const without = boothNamed(fromText('bends 1')).build;
    const { build } = boothNamed(fromText('chamber 400 mm x 300 mm x 250 mm of osb 18 mm'));
    const placed = build.sheetLayouts.flatMap(({ sheets }) => sheets.flatMap(({ parts }) => parts));
    expect(placed.filter(({ mark }) => mark.startsWith('B1'))).toHaveLength(6);
    const t = 0.018;
    const shell = (0.4 + 2 * t) * (0.3 + 2 * t) * (0.25 + 2 * t) - 0.4 * 0.3 * 0.25;
    const kg = (shell - 2 * (Math.PI / 4) * 0.125 ** 2 * t) * (outer.mass / outer.thickness);
    expect(build.massByPart.find(({ part }) => part === 'air paths')?.kg).toBeCloseTo(kg, 9);
    expect(build.massKg - without.massKg).toBeCloseTo(kg, 9);
    const net = (of: typeof build) => of.shopping.stock.find(({ name }) => name === 'osb 18 mm')?.net ?? 0;
    expect(net(build) - net(without)).toBeCloseTo(kg / outer.mass, 9);
  });

  it('take the outermost board of their face where the text says none, and say so', () => {
    const result = fromText('chamber 400 mm x 300 mm x 250 mm');
    const rows = boothNamed(result).build.parts.filter(({ owner }) => owner === 'box of intake');
    expect(new Set(rows.map(({ stock }) => stock))).toEqual(new Set(['osb 18 mm']));
    expect(result.defaults.find(({ name }) => name === 'air-box-board')?.value).toBe('osb 18 mm');
    const said = fromText('chamber 400 mm x 300 mm x 250 mm of osb 12 mm');
    expect(said.defaults.some(({ name }) => name === 'air-box-board')).toBe(false);
  });

  it('are named as missing where no board is known', () => {
    const { build } = boothNamed(fromText('chamber 400 mm x 300 mm x 250 mm', { wall: 'mineral-wool-40 50 mm' }));
    expect(build.parts.some(({ owner }) => owner === 'box of intake')).toBe(false);
    expect(build.shopping.leavesOut.join(' ')).toContain('The box of intake is not in it');
    expect(build.structure.notCounted).toContain('the box of intake, whose board is not given');
  });

  it('count their lining by area: six faces of a box without two holes, a maze along its way', () => {
    const lined = boothNamed(fromText('chamber 400 mm x 300 mm x 250 mm lined duct-liner 25 mm')).build;
    const faces = 2 * (0.4 * 0.3 + 0.3 * 0.25 + 0.4 * 0.25) - 2 * (Math.PI / 4) * 0.125 ** 2;
    expect(lined.shopping.stock.find(({ material }) => material === 'duct-liner')?.net).toBeCloseTo(faces, 9);
    const maze = boothNamed(fromText('maze 4 turns leg 250 mm channel 80 mm x 300 mm lined duct-liner 25 mm')).build;
    expect(maze.shopping.stock.find(({ material }) => material === 'duct-liner')?.net).toBeCloseTo(0.76 * 5 * 0.25, 9);
  });

  it('count the boards of a maze by area, as a lower bound', () => {
    const { build } = boothNamed(fromText('maze 4 turns leg 250 mm channel 80 mm x 300 mm of osb 12 mm'));
    const row = build.shopping.stock.find(({ name }) => name === 'osb 12 mm');
    // Five legs: covers 2 x 5 x 0.25 x 0.08, walls 6 x 0.25 x 0.30, ends 2 x 0.08 x 0.30.
    expect(row?.net).toBeCloseTo(0.2 + 0.45 + 0.048, 9);
    expect(row).toMatchObject({ atLeast: true });
  });
});

describe('fittings', () => {
  it('are ducts by the metre, and grilles, fans, door hardware and what stands inside by the piece', () => {
    const { fittings } = boothNamed(
      fromText('grille 250 mm x 150 mm; wall flexible; fan supply 10 L/s', {
        more: 'equipment copy "copy holder" at 0.5 m, 0.5 m, 1 m { kind copy-stand; mass 3 kg; hangs }',
      }),
    ).build;
    expect(
      fittings.map(({ what, name, owner, quantity, unit, massKg }) => [what, name, owner, quantity, unit, massKg]),
    ).toEqual([
      ['duct', 'flexible duct 125 mm', 'intake', 1.2, 'm', null],
      ['grille', 'grille 250 x 150 mm', 'intake', 1, 'piece', null],
      ['fan', 'fan of 10 L/s', 'intake', 1, 'piece', null],
      ['duct', 'duct 100 x 150 mm', 'exhaust', 0.8, 'm', null],
      ['door hardware', 'hinges, handle and closer', 'entry', 1, 'piece', null],
      ['equipment', 'copy holder', 'copy', 1, 'piece', 3],
      // Two seams between the three panels of each of six faces, four corners, four walls to the roof.
      ['latch', 'latches', 'box', 2 * (6 * 2 + 4 + 4), 'piece', null],
    ]);
  });

  it('have latches only in a booth that comes apart: two to each seam between panels, walls and roof', () => {
    const { fittings, sealing, panels } = boothNamed(fromText('bends 1')).build;
    const seams = sealing.seams.filter(({ place, kind }) => kind === 'compression gasket' && !place.includes('floor'));
    const deck = sealing.seams.find(({ place }) => place === 'between the panels of the floor')?.pieces ?? 0;
    const pieces = seams.reduce((sum, { pieces: own }) => sum + own, 0) + deck;
    expect(panels.length).toBeGreaterThan(6);
    expect(fittings.find(({ what }) => what === 'latch')).toMatchObject({ quantity: 2 * pieces, atLeast: true });
    expect(boothNamed(fromText('bends 1', { panels: '' })).build.fittings.some(({ what }) => what === 'latch')).toBe(
      false,
    );
  });
});
