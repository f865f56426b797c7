import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { type GapLosses, rimLossRate } from './air-gap-fluid.js';
import { lossByStuds } from './frame-connection.js';
import type { Field, Layer, LineConnection } from './layer.js';
import { type Leaf, leafAt } from './leaf.js';

/** Studs with the leaves they are fixed to. */
export type Stud = { readonly connection: LineConnection; readonly driving: Leaf; readonly driven: Leaf };

/** Errors: ArgumentError for a stud that cannot be or that is not fixed to two different leaves, the outer one first. */
export function studOf(connection: LineConnection, layers: readonly Layer[], air: Air): Stud {
  const { between, spacing, width, compliance } = connection;
  requireNumber('spacing of studs', spacing, { above: 0, unit: 'metres' });
  if (width !== undefined) requireNumber('width of studs', width, { atLeast: 0, atMost: spacing, unit: 'metres' });
  const { screwSpacing } = connection;
  if (screwSpacing !== undefined) requireNumber('spacing of screws', screwSpacing, { above: 0, unit: 'metres' });
  if (compliance !== undefined) requireNumber('compliance of studs', compliance, { atLeast: 0, unit: 'm2/N' });
  const driving = leafAt(layers, between[0], air);
  const driven = leafAt(layers, between[1], air);
  if (driven.first <= driving.last) {
    throw new ArgumentError(
      'place of the studs',
      `between layers ${between[0] + 1} and ${between[1] + 1}`,
      'layers of two different leaves, the outer one first',
    );
  }
  return { connection, driving, driven };
}

/** Studs divide the cavity between their leaves into bays, which have more rim for their area. */
export function lossesBetweenStuds(
  losses: GapLosses,
  studs: readonly Stud[],
  field: Field,
  rimAbsorption: number,
  air: Air,
): GapLosses {
  const rates = Array.from(losses.rimRates ?? []);
  const bays = Array.from(losses.bays ?? []);
  if (field.kind === 'limited') return losses;
  for (const { connection, driving, driven } of studs) {
    const height = Math.max(field.size.width, field.size.height);
    const rate = rimLossRate(rimAbsorption, connection.spacing, height, air);
    for (let i = driving.last + 1; i < driven.first; i++) {
      rates[i] = Math.max(rates[i] ?? 0, rate);
      bays[i] = { width: Math.min(connection.spacing, bays[i]?.width ?? connection.spacing), height };
    }
  }
  return { ...losses, rimRates: rates, bays };
}

/** Layers whose plates also lose the energy that the studs carry off. */
export function dampedByStuds(layers: readonly Layer[], studs: readonly Stud[], hz: number): readonly Layer[] {
  const damped = Array.from(layers);
  const add = (leaf: Leaf, loss: number) => {
    for (let i = leaf.first; i <= leaf.last; i++) {
      const layer = damped[i]!;
      if (layer.kind === 'plate') damped[i] = { ...layer, lossFactor: layer.lossFactor + loss };
    }
  };
  for (const { connection, driving, driven } of studs) {
    add(driving, lossByStuds(driving, driven, connection, hz));
    add(driven, lossByStuds(driven, driving, connection, hz));
  }
  return damped;
}
