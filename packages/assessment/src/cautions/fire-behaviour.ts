import type { AssemblyLayer, Material } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { joined } from '../text/joined.js';
import { caution } from './caution-for.js';

/** Soft materials inside or in the ducts whose reaction to fire the text does not give. */
export function fireBehaviour({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth }) => {
    const soft = new Map<string, Material>();
    const look = (layers: readonly AssemblyLayer[]) => {
      for (const layer of layers) {
        if (layer.kind === 'material' && isSoft(layer.material)) soft.set(layer.material.name, layer.material);
      }
    };
    for (const lining of booth.linings) look(lining.layers);
    for (const vent of booth.vents) if (vent.lining !== undefined) look([vent.lining]);
    for (const built of Object.values(booth.faces)) {
      const innermost = built?.assembly.layers.at(-1);
      if (innermost !== undefined) look([innermost]);
    }
    const unstated = [...soft.values()]
      .filter((material) => material.fireClass === undefined)
      .map((entry) => entry.name);
    if (unstated.length === 0) return [];
    return [
      caution('fire-class-not-stated', booth.linings[0]?.range ?? booth.nameRange, {
        hazard: `How ${joined(unstated)} burns is not stated`,
        number: `${unstated.length} of ${soft.size} soft materials inside without a fire class`,
        why: 'Foam and fabric can burn fast, drip and give off toxic smoke, and a booth fills with smoke in moments. Mineral fibre itself is usually non-combustible, but its facing, fabric and glue are not. A class belongs to a product as mounted.',
        ask: 'Take the reaction-to-fire class from the data sheet of every soft material and ask your local fire officer; keep lamps away from fibre and fabric.',
      }),
    ];
  });
}

function isSoft(material: Material): boolean {
  return material.kind === 'porous' || material.kind === 'cloth' || material.kind === 'covering';
}
