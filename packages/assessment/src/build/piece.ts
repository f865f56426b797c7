import type { Material } from '@boothwright/language';
import type { PieceUse } from '../result/parts-result.js';

/** A piece as it is cut: a sheet or a stick. Lengths in m; `lengthM` goes upwards in a wall. */
export interface Piece {
  readonly use: PieceUse;
  readonly material: Material;
  /** `sheet` is cut out of boards, `stick` off lengths, `soft` out of fibre, cloth and mats. */
  readonly form: 'sheet' | 'stick' | 'soft';
  readonly widthM: number;
  readonly lengthM: number;
  /** Undefined for what is known by its mass per area alone; the depth of a stick, across the wall. */
  readonly thicknessM: number | undefined;
  /** kg of one; null when the material has no density. */
  readonly massKg: number | null;
  /** m2 cut out of it for a door or window */
  readonly cutOutM2: number;
  /** Which layer of its build-up, from outside. */
  readonly layer: number;
}
