import type { Assembly } from '@boothwright/language';
import { assemblyMass } from '../assembly/surface-mass.js';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/** Panes whose material is called glass, in windows and doors. */
export function glazing({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth }) => [
    ...booth.windows.filter((window) => isGlass(window.pane)).map((window) => glass(window.name, window.pane, window)),
    ...booth.doors.filter((door) => isGlass(door.leaf)).map((door) => glass(door.name, door.leaf, door)),
  ]);
}

function isGlass(pane: Assembly): boolean {
  return pane.layers.some(
    (layer) =>
      layer.kind === 'material' && /glass|glazing/.test(layer.material.name) && layer.material.kind === 'panel',
  );
}

function glass(
  name: string,
  pane: Assembly,
  opening: {
    readonly nameRange: Parameters<typeof caution>[1];
    readonly size: { width: { value: number }; height: { value: number } };
  },
): Caution {
  const kg = opening.size.width.value * opening.size.height.value * assemblyMass(pane.layers);
  return caution('glazing', opening.nameRange, {
    hazard: `The glass of ${name} can break where people move`,
    number: `${decimals(kg, 1)} kg of pane`,
    why: 'Glass in or beside a door, or low down, counts as a hazardous place in many codes (summaries of IRC R308: within 24 in of a door and below 60 in). Ordinary glass breaks into blades.',
    ask: 'Ask a glazier for toughened or laminated glass and for your local rule, and plan how the weight is held.',
  });
}
