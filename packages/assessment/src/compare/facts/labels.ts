/** Words and unit of a property of the checked spec. */
export interface Label {
  readonly words: string;
  /** SI, as the spec holds it. */
  readonly unit?: string;
}

/** By `block.property` first, then by property alone; what is not listed is told by its own name. */
const labels: Readonly<Record<string, Label>> = {
  width: { words: 'width', unit: 'm' },
  depth: { words: 'depth', unit: 'm' },
  height: { words: 'height', unit: 'm' },
  thickness: { words: '', unit: 'm' },
  diameter: { words: 'diameter', unit: 'm' },
  spacing: { words: 'every', unit: 'm' },
  screws: { words: 'screws every', unit: 'm' },
  offset: { words: 'offset', unit: 'm' },
  sill: { words: 'sill', unit: 'm' },
  perimeterGap: { words: 'gap perimeter', unit: 'm' },
  thresholdGap: { words: 'gap threshold', unit: 'm' },
  run: { words: 'run', unit: 'm' },
  leg: { words: 'leg', unit: 'm' },
  gap: { words: 'gap', unit: 'm' },
  length: { words: 'length', unit: 'm' },
  stockLength: { words: 'length in stock', unit: 'm' },
  gauge: { words: 'gauge', unit: 'm' },
  x: { words: 'from the left', unit: 'm' },
  y: { words: 'from the front', unit: 'm' },
  z: { words: 'above the floor', unit: 'm' },
  distance: { words: 'distance', unit: 'm' },
  split: { words: 'split', unit: 'm' },
  kerf: { words: 'kerf', unit: 'm' },
  stature: { words: 'stature', unit: 'm' },
  headroom: { words: 'headroom', unit: 'm' },
  onto: { words: 'onto', unit: 'm' },
  area: { words: 'area', unit: 'm2' },
  volume: { words: 'volume', unit: 'm3' },
  density: { words: 'density', unit: 'kg/m3' },
  surfaceMass: { words: 'mass per area', unit: 'kg/m2' },
  modulus: { words: 'modulus', unit: 'Pa' },
  modulusAcross: { words: 'modulus across', unit: 'Pa' },
  shearModulus: { words: 'shear modulus', unit: 'Pa' },
  lossFactor: { words: 'loss factor' },
  resistivity: { words: 'resistivity', unit: 'Pa.s/m2' },
  flowResistance: { words: 'flow resistance', unit: 'Pa.s/m' },
  studStiffness: { words: 'stud stiffness', unit: 'N/m2' },
  stiffness: { words: 'stiffness', unit: 'N/m' },
  reverberation: { words: 'reverberation', unit: 's' },
  limit: { words: 'limit' },
  'floor.limit': { words: 'limit', unit: 'Pa' },
  temperature: { words: 'temperature', unit: 'degC' },
  coldSurface: { words: 'cold surface', unit: 'degC' },
  outdoorAir: { words: 'outdoor air', unit: 'ppm' },
  supplyAir: { words: 'supply air', unit: 'ppm' },
  freshAir: { words: 'fresh air', unit: 'm3/s' },
  flow: { words: 'flow', unit: 'm3/s' },
  pressure: { words: 'pressure', unit: 'Pa' },
  lowSpeed: { words: 'low speed' },
  contents: { words: 'contents', unit: 'kg' },
  mass: { words: 'mass', unit: 'kg' },
  bodyMass: { words: 'body mass', unit: 'kg' },
  heat: { words: 'heat', unit: 'W' },
  bodyHeat: { words: 'body heat', unit: 'W' },
  bodyMoisture: { words: 'body moisture', unit: 'W' },
  'session.length': { words: 'length', unit: 's' },
  take: { words: 'take', unit: 's' },
  rest: { words: 'rest', unit: 's' },
  starts: { words: 'starts', unit: 'clock' },
  co2Rate: { words: 'CO2 rate', unit: 'm3/s' },
  tilt: { words: 'tilt', unit: 'deg' },
  angle: { words: 'angle', unit: 'deg' },
  highPass: { words: 'high-pass', unit: 'Hz' },
  soundPower: { words: 'sound power', unit: 'dB' },
  levels: { words: '', unit: 'dB' },
  insertionLoss: { words: 'insertion loss', unit: 'dB' },
  loss: { words: 'transmission loss', unit: 'dB' },
  duct: { words: 'duct' },
  kind: { words: 'kind' },
};

/** Words that declare the entries of a list, where they are not its name without the last letter. */
const entries: Readonly<Record<string, string>> = {
  sources: 'noise',
  items: 'item',
  equipment: 'equipment',
  booths: 'booth',
  linings: 'lining',
  measured: 'measured',
  readings: 'reading',
};

export function labelOf(parent: string, property: string): Label {
  return labels[`${parent}.${property}`] ?? labels[property] ?? { words: spaced(property) };
}

/** `noise` for `sources`, `door` for `doors`. */
export function entryWord(list: string): string {
  return entries[list] ?? list.replace(/s$/, '');
}

/** `fanSpeed` as `fan speed`. */
function spaced(property: string): string {
  return property.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
