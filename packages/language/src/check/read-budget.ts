import type { Budget, BudgetItem } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { fittingsMeant, isFittingWord } from '../vocabulary/fitting-words.js';
import { factsOf, nameOf, readBlock, titleOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, hearing, wholeOf } from './context.js';
import { materialNamed } from './names.js';
import { factNumberOr, numberIn, readPrice } from './read-value.js';

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
        `this price is in ${price.value.currency}, the first one in ${first.price.value.currency}; they cannot be added, so \`${named.name}\` is left out of the sum`,
        {
          hint: `write the price in ${first.price.value.currency}`,
          related: [{ range: first.price.range, message: `this one is in ${first.price.value.currency}` }],
        },
      );
      continue;
    }
    const item: BudgetItem = {
      ...named,
      ...titleOf(line),
      range: wholeOf(line),
      ...readFor(ctx, line, label),
      quantity: quantity.sourced,
      price,
    };
    items.push(item);
    byName.set(item.name, item);
  }
  return {
    range: wholeOf(statement),
    items,
    kerf: factNumberOr(reader, 'kerf', 'saw-kerf', {
      dimension: 'length',
      noun: 'the cut of a saw',
      min: 0,
      max: 0.05,
      maxText: 'it must be smaller than 50 mm',
      usual: { min: 0, max: 0.01, text: 'saws take up to 10 mm' },
    }),
    reserve: factNumberOr(reader, 'reserve', 'budget-reserve', {
      dimension: 'share',
      noun: 'a reserve',
      min: 0,
      max: 1,
    }),
  };
}

/** What an item buys: a material, or a seal or fitting where no material has that name; nothing when nothing is said. */
function readFor(ctx: CheckContext, line: Statement, label: string): Pick<BudgetItem, 'covers' | 'fitting'> {
  const name = wordIn(line, 'material');
  const isFitting = name && !ctx.program.materials.has(name.word) && isFittingWord(name.word);
  const known = name && (ctx.program.materials.has(name.word) || ctx.broken.has(name.word));
  const meant = name && !known && !isFitting ? fittingsMeant(name.word) : [];
  if (name && meant.length > 0)
    complain(ctx, 'unknown-name', name.range, `no material and no fitting is called \`${name.word}\``, {
      hint: `write ${meant.map((word) => `\`for ${word}\``).join(' or ')}`,
    });
  const material =
    name && !isFitting && meant.length === 0 ? materialNamed(hearing(ctx, line), name.word, name.range) : undefined;
  const thickness = numberIn(ctx, line, 'thickness', {
    dimension: 'length',
    noun: 'a thickness',
    label: `${label}: thickness`,
    fact: 'item',
    aboveZero: true,
    usual: { min: 0.00002, max: 0.5, text: 'layers have 0.02 to 500 mm' },
  })?.sourced;
  if (!name || !isFittingWord(name.word) || !isFitting) return { covers: material && { material, thickness } };
  if (thickness && name.word !== 'duct')
    complain(ctx, 'fitting-with-size', thickness.range, `only a duct has a size here, no ${name.word}`, {
      hint: `write \`for ${name.word}\``,
    });
  return { covers: undefined, fitting: { word: name.word, diameter: thickness } };
}
