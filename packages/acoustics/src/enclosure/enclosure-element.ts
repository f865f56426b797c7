import type { Layer, PanelSize } from '../layered/layer.js';
import type { Edges } from '../panels/first-panel-resonance.js';

/** A part of the skin of an enclosure: a wall of layers or an opening. */
export type EnclosureElement =
  | {
      readonly kind: 'wall';
      /** Outside to inside. */
      readonly layers: readonly Layer[];
      /** m2 */
      readonly area: number;
      /** m; with it the leaves are as stiff as panels of this size, without it they are limp masses. */
      readonly size?: PanelSize;
      /** `defaultPanelEdges` when absent. */
      readonly edges?: Edges;
    }
  /**
   * Round holes: `area` in m2 of all of them together, `count` of them (one when absent), `depth` through the wall in m.
   * `attenuation`, dB, is what a lining or a silencer takes off the flow that the pressure outside drives; 0 when absent.
   */
  | {
      readonly kind: 'leak';
      readonly area: number;
      readonly depth: number;
      readonly count?: number;
      readonly attenuation?: number;
    }
  /** A slit: `length`, clear width `gap` and `depth` through the wall, m; in the middle of a wall when `position` is absent. */
  | {
      readonly kind: 'slit';
      readonly length: number;
      readonly gap: number;
      readonly depth: number;
      readonly position?: 'mid' | 'edge';
    };

/** `full`: the flows add with their phases. `none`: those of opposite phase add by their squares. */
export type Cancellation = 'full' | 'none';

/** Screwed and sealed panels are held between hinged and clamped; the geometric mean of the two resonances. */
export const defaultPanelEdges: Edges = 'between';
