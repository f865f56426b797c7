import type { AssemblyLayer } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { joined } from '../text/joined.js';
import { note } from './note-for.js';

/** Boards are cut and joints sanded. */
export function cuttingDust({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth }) => {
    const boards = new Set<string>();
    const look = (layers: readonly AssemblyLayer[]) => {
      for (const layer of layers) {
        if (layer.kind === 'material' && layer.material.kind === 'panel') boards.add(layer.material.name);
      }
    };
    for (const built of Object.values(booth.faces)) if (built !== undefined) look(built.assembly.layers);
    if (boards.size === 0) return [];
    return [
      note('cutting-dust', booth.nameRange, {
        hazard: `Dust of cutting and sanding (${joined([...boards])})`,
        why: 'Sanding joint compound exposed workers to up to ten times the permitted dust (NIOSH 99-113, 1999); dust of wood and fibreboard makes airways sensitive. In an old house there may be asbestos or lead in what is cut or drilled.',
        ask: 'Cut outdoors or with extraction, sand wet, wear a mask and eye cover; have an old house looked at by a specialist first.',
      }),
    ];
  });
}
