import type { Budget, BudgetItem, Effort, Session } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { factsOf, nameOf, readBlock, titleOf } from './block-reader.js';
import { type CheckContext, complain, fallback, headerOf, wholeOf } from './context.js';
import { factChoice, factNumber, factNumberOr, numberIn, readPrice } from './read-value.js';

export function readSession(ctx: CheckContext, statement: Statement): Session {
  const reader = readBlock(ctx, statement, 'session');
  const voice = factNumber(reader, 'voice', {
    dimension: 'level',
    noun: 'the level of the recorded voice',
    weightings: ['FS'],
    max: 0,
    usual: { min: -40, max: -6, text: 'voices are set between -40 and -6 dBFS RMS' },
  });
  const voiceDefault = voice
    ? undefined
    : fallback<number>(ctx, 'voice-level', 'session: voice', 'level', headerOf(statement));
  return {
    range: wholeOf(statement),
    people: factNumberOr(reader, 'people', 'people', {
      dimension: 'count',
      noun: 'the number of people',
      min: 1,
      whole: true,
      usual: { min: 1, max: 8, text: 'a booth holds 1 to 8 people' },
    }),
    bodyMass: factNumberOr(reader, 'body', 'body-mass', {
      dimension: 'mass',
      noun: 'a body mass',
      aboveZero: true,
      usual: { min: 20, max: 250, text: 'people have 20 to 250 kg' },
    }),
    effort:
      factChoice<Effort>(reader, 'effort') ??
      fallback<Effort>(ctx, 'effort', 'session: effort', 'text', headerOf(statement)),
    length: factNumberOr(reader, 'length', 'session-length', {
      dimension: 'time',
      noun: 'the length of a session',
      aboveZero: true,
      usual: { min: 30, max: 86_400, text: 'sessions last between half a minute and a day' },
    }),
    heat: factNumberOr(reader, 'heat', 'session-heat', {
      dimension: 'power',
      noun: 'the heat of equipment',
      min: 0,
      usual: { min: 0, max: 3000, text: 'equipment in a booth gives less than 3 kW' },
    }),
    supplyAir: factNumberOr(reader, 'supply-air', 'supply-air', {
      dimension: 'concentration',
      noun: 'the carbon dioxide of the supply air',
      min: 0,
      usual: { min: 350, max: 5000, text: 'outdoor air has about 420 ppm, occupied rooms up to some thousand' },
    }),
    co2Rate: factNumberOr(reader, 'co2-rate', 'co2-rate', {
      dimension: 'flow',
      noun: 'the carbon dioxide breathed out',
      aboveZero: true,
      usual: { min: 5 / 3_600_000, max: 120 / 3_600_000, text: 'people breathe out 5 to 120 L/h' },
    }),
    voiceLevel: voice
      ? { ...voice.sourced, value: voice.level! }
      : { ...voiceDefault!, value: { decibels: voiceDefault!.value, weighting: 'FS' } },
    fanSpeed: fallback<'high'>(ctx, 'fan-speed', 'session: fan', 'text', headerOf(statement)),
    starts: undefined,
    cycle: undefined,
    bodyHeat: fallback<number>(ctx, 'body-heat', 'session: body-heat', 'power', headerOf(statement)),
    bodyMoisture: fallback<number>(ctx, 'body-moisture', 'session: body-moisture', 'power', headerOf(statement)),
    stature: undefined,
    posture: fallback<'stands'>(ctx, 'posture', 'session: posture', 'text', headerOf(statement)),
  };
}

export function readBudget(ctx: CheckContext, statement: Statement): Budget {
  const reader = readBlock(ctx, statement, 'budget');
  const items: BudgetItem[] = [];
  const byName = new Map<string, BudgetItem>();
  for (const line of factsOf(reader, 'item')) {
    const named = nameOf(line);
    if (!named) continue;
    const label = `item ${named.name}`;
    const twin = byName.get(named.name);
    if (twin)
      complain(ctx, 'name-twice', named.nameRange, `an item called \`${named.name}\` is already there`, {
        related: [{ range: twin.nameRange, message: 'the first stands here' }],
      });
    const quantity = numberIn(ctx, line, 'quantity', {
      dimension: 'count',
      noun: 'a quantity',
      label,
      fact: 'item',
      min: 0,
    });
    const price = readPrice(ctx, line, 'price', `${label}: price`);
    if (twin || !quantity || !price) continue;
    const first = items[0];
    if (first && first.price.value.currency !== price.value.currency) {
      complain(
        ctx,
        'currencies-mixed',
        price.range,
        `this price is in ${price.value.currency}, the first one in ${first.price.value.currency}; they cannot be added`,
        { related: [{ range: first.price.range, message: `this one is in ${first.price.value.currency}` }] },
      );
      continue;
    }
    const item: BudgetItem = {
      ...named,
      ...titleOf(line),
      range: wholeOf(line),
      covers: undefined,
      quantity: quantity.sourced,
      price,
    };
    items.push(item);
    byName.set(item.name, item);
  }
  return {
    range: wholeOf(statement),
    items,
    kerf: fallback<number>(ctx, 'saw-kerf', 'budget: kerf', 'length', headerOf(statement)),
    reserve: factNumberOr(reader, 'reserve', 'budget-reserve', {
      dimension: 'share',
      noun: 'a reserve',
      min: 0,
      max: 1,
    }),
  };
}
