/** A corner of the booth's own box and its sides, m: x to the right, y to the back, z up, from the outside left front corner on the ground. */
export interface BoxInBooth {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
  readonly widthM: number;
  readonly depthM: number;
  readonly heightM: number;
}

/** A door or window that is cut out of a panel, from the panel's lower left corner as seen from outside. */
export interface PanelOpening {
  readonly kind: 'door' | 'window';
  readonly name: string;
  readonly offsetM: number;
  readonly baseM: number;
  readonly widthM: number;
  readonly heightM: number;
}

/** One piece in which the booth is carried and put up, without the lining that is fixed later and without door leaf and pane. */
export interface PanelResult {
  readonly number: number;
  /** `front 2`, `left 1 upper`, `back inner 1`. */
  readonly name: string;
  readonly face: 'front' | 'back' | 'left' | 'right' | 'roof' | 'floor';
  /** Walls on two frames with clear air between them come as an outer and an inner shell. */
  readonly leaf: 'whole' | 'outer' | 'inner';
  /** Along the face; for roof and floor along their longer side. */
  readonly widthM: number;
  /** Upwards; for roof and floor along their shorter side, which the panel spans. */
  readonly heightM: number;
  readonly thicknessM: number;
  /** Sheets, frame and fill; a part whose material has no density is not in it, see `massMissing`. */
  readonly massKg: number;
  /** Materials without a density. */
  readonly massMissing: readonly string[];
  readonly openings: readonly PanelOpening[];
  /** From the left edge of the outer face as seen from outside; for roof and floor from the front or left edge. */
  readonly offsetM: number;
  /** Height of its lower edge above the floor of the building. */
  readonly baseM: number;
  readonly box: BoxInBooth;
  /** Centre of gravity when it stands on its lower edge: above that edge, and from its outer surface. */
  readonly centreOfGravityM: { readonly height: number; readonly fromOutside: number };
  /** How far it can lean, standing alone, before it falls; null for roof and floor. */
  readonly tipAngleDegrees: number | null;
  /** Mass of the heaviest of its leaves that clear air separates, where it has any: what one lift would be if they came apart. */
  readonly heaviestLeafKg: number | null;
}
