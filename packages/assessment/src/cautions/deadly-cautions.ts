import type { Caution } from '../result/result-document.js';

/**
 * Cautions of the hazards that end lives in a small closed room: bad air, a way out that is shut, an alarm that nobody
 * hears, fire. They stand before all other cautions.
 */
const deadly: ReadonlySet<string> = new Set([
  'combustion-appliance',
  'no-fan',
  'stale-air',
  'fan-off',
  'no-door',
  'door-opens-inward',
  'door-lock',
  'alarm-not-heard',
  'fire-class-not-stated',
]);

export function isDeadly({ id }: Pick<Caution, 'id'>): boolean {
  return deadly.has(id);
}
