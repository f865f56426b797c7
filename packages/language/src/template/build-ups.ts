/** A build-up that an answer can name instead of listing its layers. */
export interface BuildUp {
  readonly says: string;
  readonly layers: readonly string[];
}

/** What walls and roofs are often made of, from outside to inside. */
export const wallBuildUps: Readonly<Record<string, BuildUp>> = {
  'timber-frame': {
    says: 'boards on both sides of a timber frame with wool in it',
    layers: [
      'softwood-plywood 12 mm',
      'frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }',
      'gypsum-board 12.5 mm',
    ],
  },
  'two-frames': {
    says: 'heavy boards, a framed cavity with wool and clear air, two boards inside',
    layers: [
      'osb 18 mm',
      'gypsum-board 12.5 mm',
      'frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }',
      'air 50 mm',
      'gypsum-board 12.5 mm',
      'gypsum-board 12.5 mm',
    ],
  },
  'steel-frame': {
    says: 'gypsum board on both sides of light steel studs with wool between',
    layers: [
      'gypsum-board 12.5 mm',
      'frame 50 mm x 50 mm every 600 mm of steel-stud { fill mineral-wool-40 50 mm }',
      'gypsum-board 12.5 mm',
    ],
  },
  'one-board': {
    says: 'one board and nothing else, as in a wardrobe',
    layers: ['particle-board 18 mm'],
  },
};

/** What stands between the room and a neighbour. */
export const separations: Readonly<Record<string, BuildUp>> = {
  'timber-floor': {
    says: 'a timber floor with a plastered ceiling',
    layers: [
      'particle-board 22 mm',
      'frame 45 mm x 195 mm every 400 mm { fill mineral-wool-40 100 mm }',
      'gypsum-board 12.5 mm',
    ],
  },
  partition: {
    says: 'a light partition of gypsum board on studs',
    layers: [
      'gypsum-board 12.5 mm',
      'frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }',
      'gypsum-board 12.5 mm',
    ],
  },
};

/** Linings inside, from the wall towards the room. */
export const linings: Readonly<Record<string, BuildUp>> = {
  'wool-50': {
    says: '50 mm of dense mineral wool behind cloth',
    layers: ['mineral-wool-60 50 mm', 'open-weave-cloth'],
  },
  'wool-100': {
    says: '100 mm of dense mineral wool behind cloth',
    layers: ['mineral-wool-60 100 mm', 'open-weave-cloth'],
  },
};
