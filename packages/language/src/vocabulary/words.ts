export const FACES = ['front', 'back', 'left', 'right', 'roof', 'floor'] as const;
export const WALLS = ['front', 'back', 'left', 'right'] as const;

/** What a source clause may call its evidence, and what the checked spec calls it. */
export const EVIDENCE_WORDS = {
  published: 'published',
  measured: 'measured',
  'data-sheet': 'data-sheet',
  practice: 'common-practice',
  memory: 'from-memory',
  derived: 'derived',
} as const;

export const MATERIAL_KINDS = ['panel', 'limp', 'porous', 'cloth', 'covering', 'lumber'] as const;
export const EFFORTS = ['casual', 'normal', 'raised', 'loud', 'shout'] as const;
export const POLAR_PATTERNS = ['omni', 'cardioid', 'supercardioid', 'hypercardioid', 'figure-eight'] as const;
export const EQUIPMENT_KINDS = [
  'screen',
  'copy-stand',
  'desk',
  'shelf',
  'lamp',
  'computer',
  'loudspeaker',
  'other',
] as const;
export const APPLIANCE_PLACES = ['same-room', 'next-room', 'elsewhere'] as const;
export const NEIGHBOUR_SIDES = ['above', 'below', 'beside', 'outdoors'] as const;
export const PASSAGE_TURNS = ['none', 'quarter', 'half'] as const;
export const NOISE_SHAPES = ['road-traffic', 'living-noise', 'speech', 'pink'] as const;
export const PRICE_UNITS = ['m2', 'm', 'm3', 'kg', 'sheet', 'piece'] as const;

/** Nominal lumber and its true size in metres, width along the wall by depth across it. */
export const NOMINAL_LUMBER: Readonly<Record<string, { readonly width: number; readonly depth: number }>> = {
  '2x2': { width: 0.038, depth: 0.038 },
  '2x3': { width: 0.038, depth: 0.064 },
  '2x4': { width: 0.038, depth: 0.089 },
  '2x6': { width: 0.038, depth: 0.14 },
};
