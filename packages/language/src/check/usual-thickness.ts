import type { Material } from '../model/booth-spec.js';
import type { Usual } from './usual.js';

/** m; wool and foam on a wall or in it. Common practice, no source. */
const THICKEST_POROUS = 0.3;
/** m; the thickest board or sheet that is handled as one: door cores and worktops. Common practice, no source. */
const THICKEST_BOARD = 0.06;
/** kg/m3; lighter boards insulate and come thicker. Common practice, no source. */
const LIGHTEST_RIGID_BOARD = 300;
/** kg/m3; between them lie brick, block, plaster and concrete. Glass and metals are heavier. Common practice, no source. */
const MASONRY = { from: 1400, to: 2450 };
/** Masonry that is as light as a board, by its name in the catalogue. */
const LIGHT_MASONRY: ReadonlySet<string> = new Set(['aerated-concrete', 'plaster']);

const ANY: Usual = { min: 0, max: 0.5, text: 'layers are thinner than 500 mm' };
const POROUS: Usual = { min: 0, max: THICKEST_POROUS, text: 'wool, foam and felt are thinner than 300 mm' };
const BOARD: Usual = {
  min: 0,
  max: THICKEST_BOARD,
  text: 'boards and sheets are thinner than 60 mm; only masonry, solid timber and light insulating boards are not',
};

/** How thick a layer of a material usually is; a slip of the unit lies outside. */
export function usualThickness(material: Material): Usual {
  if (material.kind === 'porous') return POROUS;
  return material.kind === 'panel' && !comesThick(material) ? BOARD : ANY;
}

function comesThick({ density, modulusAcross, fromCatalogue, name }: Material): boolean {
  // Only sawn wood has a stiffness across the grain that is known apart.
  if (modulusAcross) return true;
  if (fromCatalogue && LIGHT_MASONRY.has(name)) return true;
  // Without a density nothing says that it is a board.
  if (!density) return true;
  return density.value < LIGHTEST_RIGID_BOARD || (density.value >= MASONRY.from && density.value <= MASONRY.to);
}
