import type { Vent } from '../../model/booth-spec.js';
import type { Statement } from '../../syntax/tree.js';
import { type BlockReader, factOf, factsOf, readBlock } from '../block-reader.js';
import { type CheckContext, fallback, headerOf, warn } from '../context.js';
import type { OpeningBase } from '../read-openings.js';
import { factChoice, factNumber, factNumberOr, type NumberRule, numberIn, readBands } from '../read-value.js';
import { checkAirWay } from './check-air-way.js';
import { readChamber } from './read-chamber.js';
import { readFan } from './read-fan.js';
import { readGrille } from './read-grille.js';
import { readMaze } from './read-maze.js';
import { readPorousLining } from './read-porous-lining.js';

type OpensTo = Vent['opensTo']['value'];
type DuctWall = Vent['wall']['value'];

export function readVent(ctx: CheckContext, statement: Statement, base: OpeningBase): Vent | undefined {
  const reader = readBlock(ctx, statement, `vent ${base.name}`);
  const duct = readDuct(reader);
  const run = factNumber(reader, 'run', {
    dimension: 'length',
    noun: 'the run of a duct',
    aboveZero: true,
    max: 1000,
    maxText: 'no duct of a booth is so long',
    usual: { min: 0.02, max: 30, text: 'ducts run between 20 mm and 30 m' },
  });
  const lined = factOf(reader, 'lined');
  const lining = lined && readPorousLining(ctx, lined, `${reader.label}: lined`, 'a duct');
  const bends = factNumberOr(reader, 'bends', 'vent-bends', {
    dimension: 'count',
    noun: 'the number of bends',
    min: 0,
    whole: true,
    usual: { min: 0, max: 12, text: 'ducts have up to a dozen bends' },
  });
  const loss = factOf(reader, 'insertion-loss');
  const insertionLoss =
    loss &&
    readBands(ctx, loss, 'value', {
      dimension: 'level',
      noun: 'an insertion loss',
      label: `${reader.label}: insertion-loss`,
      fact: 'insertion-loss',
      weightings: ['none'],
      usual: { min: -10, max: 80, text: 'air paths lose -10 to 80 dB' },
    });
  const fan = readFan(reader);
  const chambers = factsOf(reader, 'chamber').flatMap((line, i) => readChamber(ctx, line, reader.label, i) ?? []);
  const maze = readMaze(reader);
  const grille = readGrille(reader);
  const opensTo =
    factChoice<OpensTo>(reader, 'opens-to') ??
    fallback<OpensTo>(ctx, 'vent-opens-to', `${reader.label}: opens-to`, 'text', headerOf(statement));
  if (opensTo.value === 'appliance-room' && !hasAppliance(ctx))
    warn(
      ctx,
      'appliance-missing',
      opensTo.range,
      `${reader.label} opens to the room of an appliance, and the site has none`,
      {
        hint: 'add `appliance NAME open-flued next-room` to `site`, or say that it opens to another room',
      },
    );
  const wall =
    factChoice<DuctWall>(reader, 'wall') ??
    fallback<DuctWall>(ctx, 'duct-wall', `${reader.label}: wall`, 'text', headerOf(statement));
  if (!duct || !run) return undefined;
  const vent: Vent = {
    ...base,
    duct,
    run: run.sourced,
    lining,
    bends,
    insertionLoss,
    fan,
    chambers,
    maze,
    grille,
    opensTo,
    wall,
  };
  checkAirWay(ctx, vent);
  return vent;
}

function hasAppliance({ program }: CheckContext): boolean {
  return program.statements.some(
    ({ fact, block }) =>
      fact?.keyword === 'site' &&
      (!block || block.statements.some((line) => !line.fact || line.fact.keyword === 'appliance')),
  );
}

function readDuct(reader: BlockReader): Vent['duct'] | undefined {
  const statement = factOf(reader, 'duct');
  if (!statement) return undefined;
  const rule: NumberRule = {
    dimension: 'length',
    noun: 'the size of a duct',
    label: `${reader.label}: duct`,
    fact: 'duct',
    aboveZero: true,
    usual: { min: 0.01, max: 1, text: 'ducts are 10 mm to 1 m wide' },
  };
  if (statement.slots.has('diameter')) {
    const diameter = numberIn(reader.ctx, statement, 'diameter', rule);
    return diameter && { kind: 'round', diameter: diameter.sourced };
  }
  const width = numberIn(reader.ctx, statement, 'width', rule);
  const height = numberIn(reader.ctx, statement, 'height', rule);
  return width && height && { kind: 'rectangular', width: width.sourced, height: height.sourced };
}
