/** A direction to look from, degrees: `yaw` turns about the upright axis (0 looks at the front), `pitch` looks down. */
export interface View {
  readonly yaw: number;
  readonly pitch: number;
}

export type Vector = readonly [number, number, number];

export interface Projection {
  /** Seen from far away: m to the right and upwards on the picture. */
  readonly flat: (point: Vector) => readonly [number, number];
  /** How much a direction points towards the eye, -1..1. */
  readonly towards: Vector;
}

/** Parallel projection: axes of the booth, x to the right, y to the back, z up. */
export function projection({ yaw, pitch }: View): Projection {
  const turn = (yaw * Math.PI) / 180;
  const down = (pitch * Math.PI) / 180;
  const [ct, st, cd, sd] = [Math.cos(turn), Math.sin(turn), Math.cos(down), Math.sin(down)];
  return {
    // A positive yaw walks to the right around the booth, so that its right side comes into view.
    flat: ([x, y, z]) => [x * ct + y * st, z * cd + (y * ct - x * st) * sd],
    towards: [st * cd, -ct * cd, sd],
  };
}
