/**
 * What can be assessed, in SI units. Outside of these bounds the formulas do not hold or the computation does not end in
 * a moment; a spec with errors can bring any number. They are wide: nothing that somebody builds comes near them.
 */
export const bounds = {
  assemblies: { min: 0, max: 300 },
  booths: { min: 0, max: 20 },
  layers: { min: 0, max: 60 },
  layerThickness: { min: 0, max: 2 },
  surfaceMass: { min: 0, max: 5_000 },
  density: { min: 0.1, max: 30_000 },
  modulus: { min: 1e3, max: 1e13 },
  poisson: { min: 0, max: 0.49 },
  lossFactor: { min: 0, max: 1 },
  resistivity: { min: 1, max: 1e8 },
  flowResistance: { min: 0.1, max: 1e7 },
  gauge: { min: 1e-5, max: 0.05 },
  studWidth: { min: 1e-3, max: 1 },
  studSpacing: { min: 0.02, max: 20 },
  insideLength: { min: 0.2, max: 30 },
  openingLength: { min: 1e-3, max: 30 },
  gap: { min: 0, max: 0.5 },
  length: { min: 0, max: 1_000 },
  ductLength: { min: 0.01, max: 3 },
  bends: { min: 0, max: 100 },
  share: { min: 0, max: 1 },
  roomLength: { min: 0.5, max: 200 },
  reverberation: { min: 0.01, max: 60 },
  temperature: { min: -30, max: 60 },
  people: { min: 0, max: 100 },
  mass: { min: 0, max: 1e5 },
  seconds: { min: 1, max: 7 * 86_400 },
  flow: { min: 1e-6, max: 10 },
  ppm: { min: 0, max: 1e6 },
  level: { min: -150, max: 250 },
  micDistance: { min: 0.005, max: 30 },
  frequency: { min: 1, max: 20_000 },
  speedShare: { min: 0.05, max: 1 },
  place: { min: -100, max: 100 },
  mounts: { min: 1, max: 10_000 },
  stiffness: { min: 1, max: 1e12 },
  area: { min: 1e-3, max: 1e5 },
  volume: { min: 0.01, max: 1e6 },
  distance: { min: 0.01, max: 1e5 },
} as const;

type BoundName = keyof typeof bounds;

/** Why a figure is out of bounds, in words; null when it is within. */
export function outOfBounds(what: string, value: number, bound: BoundName, unit = ''): string | null {
  const { min, max } = bounds[bound];
  if (value >= min && value <= max) return null;
  const shown = Number.isFinite(value) ? `${Number(value.toPrecision(4))} ${unit}`.trim() : 'no number';
  return `${what} is ${shown}, and only ${min} to ${max} ${unit}`.trim().concat(' can be assessed');
}

/** The first reason of several checks. */
export function firstReason(...reasons: readonly (string | null)[]): string | null {
  return reasons.find((reason) => reason !== null) ?? null;
}
