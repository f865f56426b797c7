import { type Air, type Layer, stackAbsorption } from '@boothwright/acoustics';
import type { AssemblyLayer } from '@boothwright/language';
import { perBand } from '../bands/grid.js';
import { valuesOnGridHeld } from '../bands/quantity-table.js';
import type { Memo } from '../memo/memo.js';
import { keyText, oncePer, oncePerPair } from '../memo/once-per.js';
import { constructionOf } from './construction.js';

/**
 * Diffuse absorption of the inner face of a build-up, 0..1, in third-octave bands. Open backing, so that sound that
 * passes through counts as absorbed. A covering, or a porous layer without a flow resistivity, brings its own table;
 * bands outside the table take the nearest stated one. A face without layers is an opening and absorbs everything.
 */
export function insideAbsorption(assembly: readonly AssemblyLayer[], air: Air, memo: Memo): readonly number[] {
  const stated = statedAbsorption(assembly);
  if (stated !== undefined) return stated;
  const { layers } = constructionOf(assembly);
  if (layers.length === 0) return perBand(() => 1);
  return memo.of(keyOf(layers, air), () => stackAbsorption(layers, { air, backing: 'open' }));
}

const keyOf = oncePerPair((layers: readonly Layer[], air: Air) => `absorption ${keyText(layers)} ${keyText(air)}`);

/** The table of a face that is known only by one, or undefined. */
export const statedAbsorption = oncePer((assembly: readonly AssemblyLayer[]): readonly number[] | undefined => {
  const innermost = assembly.findLast((layer) => layer.kind !== 'material' || layer.thickness?.value !== 0);
  if (innermost?.kind !== 'material' || innermost.material.absorption === undefined) return undefined;
  const { kind, resistivity, absorption } = innermost.material;
  if (kind !== 'covering' && !(kind === 'porous' && resistivity === undefined)) return undefined;
  return valuesOnGridHeld(absorption.value)?.map((value) => Math.min(Math.max(value, 0), 1));
});
