import {
  complianceInSeries,
  guidedFlangeCompliance,
  type Layer,
  type LineConnection,
  type PanelSize,
  type SeparateFrame,
} from '@boothwright/acoustics';
import { materialsOf } from './materials.js';
import { figureOf, type OpenData } from './open-data.js';

/** How the report groups the curves. */
export type ConstructionType =
  | 'single leaf'
  | 'stud wall'
  | 'joist floor'
  | 'independent leaves'
  | 'double pane'
  | 'lined leaf'
  | 'door';

/** What a measured curve was measured on, and what of it the source does not print. */
export interface Construction {
  /** Row of shared/open-data/transmission-loss.json. */
  readonly id: string;
  readonly type: ConstructionType;
  readonly layers: readonly Layer[];
  readonly connections: readonly LineConnection[];
  readonly separateFrames: readonly SeparateFrame[];
  readonly size: PanelSize;
  /** In words, without a full stop: what was assumed beside the size of the opening and the materials. */
  readonly assumed: readonly string[];
}

/** Usual openings of laboratories and buildings, m (common practice); no source prints the size of a sample. */
export const openings = {
  wall: { width: 4, height: 2.5 },
  pane: { width: 1.25, height: 1.5 },
  door: { width: 0.9, height: 2 },
} as const;

/** Studs as they are usually built (common practice): centre to centre and width in m. */
export const timberStuds = { spacing: 0.4, width: 0.04 } as const;
export const staggeredStuds = { spacing: 0.6 } as const;
/** m: half of a 35 mm flange, sheet, screws. */
export const steelStuds = { spacing: 0.6, width: 0.05, halfFlange: 0.0175, sheet: 0.0005, screwSpacing: 0.3 } as const;

type Rest = Partial<Pick<Construction, 'connections' | 'separateFrames' | 'assumed'>>;

/** The construction of every curve that is compared. Sources print masses of leaves in places; those are taken. */
export function constructionsOf(data: OpenData): readonly Construction[] {
  const { plate, grained, dampedSteel, fibre } = materialsOf(data);
  const limp = (surfaceMass: number): Layer => ({ kind: 'limp-sheet', surfaceMass });
  const air = (millimetres: number): Layer => ({ kind: 'air-gap', thickness: millimetres / 1000 });
  const gypsum = (millimetres: number, mass?: number) => plate('gypsum-board', millimetres, mass);
  const glass = (millimetres: number, mass?: number) => plate('glass', millimetres, mass);
  const steel = (millimetres: number, mass?: number) => plate('steel-sheet', millimetres, mass);
  const plywood = (millimetres: number, mass?: number) => plate('softwood-plywood', millimetres, mass);
  const flange = guidedFlangeCompliance(
    steelStuds.halfFlange,
    steelStuds.sheet,
    figureOf(data.catalogue, 'steel-sheet', 'modulus'),
    figureOf(data.catalogue, 'steel-sheet', 'poisson'),
  );
  const steelStud = (outer: number, inner: number): LineConnection => ({
    between: [outer, inner],
    spacing: steelStuds.spacing,
    width: steelStuds.width,
    compliance: complianceInSeries(flange, flange),
    screwSpacing: steelStuds.screwSpacing,
  });
  const timber = (outer: number, inner: number): LineConnection => ({ between: [outer, inner], ...timberStuds });
  const staggered = (outer: number, inner: number): SeparateFrame => ({ between: [outer, inner], ...staggeredStuds });
  const of =
    (type: ConstructionType, size: PanelSize) =>
    (id: string, layers: readonly Layer[], rest: Rest = {}): Construction => ({
      id,
      type,
      layers,
      size,
      connections: rest.connections ?? [],
      separateFrames: rest.separateFrames ?? [],
      assumed: rest.assumed ?? [],
    });
  const single = of('single leaf', openings.wall);
  const pane = of('single leaf', openings.pane);
  const studWall = of('stud wall', openings.wall);
  const independent = of('independent leaves', openings.wall);
  const doublePane = of('double pane', openings.pane);
  const lined = of('lined leaf', openings.wall);
  const door = of('door', openings.door);
  return [
    single('bies-lead-1.5', [limp(17)]),
    single('bies-alu-0.9', [plate('aluminium-sheet', 0.9, 2.5)], { assumed: ['its stiffeners are left out'] }),
    single('bies-steel-6', [steel(6, 50)]),
    single('bies-steel-0.55', [steel(0.55, 6)], { assumed: ['the printed mass holds, not thickness times density'] }),
    single('bies-steel-0.9', [steel(0.9, 7)]),
    single('bies-steel-1.6', [steel(1.6, 13)]),
    single('bies-fibreboard-12', [plate('soft-fibreboard', 12, 4)], { assumed: ['its frame is left out'] }),
    single('bies-gypsum-9', [gypsum(9, 7)], { assumed: ['its frame is left out'] }),
    single('bies-ply-6-frame', [plywood(6, 3.5)], { assumed: ['its frame is left out'] }),
    single('bies-ply-12-frame', [plywood(12, 7)], { assumed: ['its frame is left out'] }),
    single('bies-hardwood-50', [grained('oak-board', 50, 25)], {
      assumed: ['modulus of oak, grain in one direction'],
    }),
    single('bies-ply-6', [plywood(6, 3.5)]),
    single('bies-mlv-3', [limp(7.3)]),
    single('bies-brick-125', [plate('brick', 125, 240)], { assumed: ['the plaster counts as brick'] }),
    single('bies-concrete-100', [plate('concrete', 100, 230)]),
    single('ros-brick-100', [plate('brick', 100)]),
    single('bies-tg-boards-21', [grained('softwood-board', 21, 13)], { assumed: ['joints as stiff as the boards'] }),
    pane('bies-glass-4', [glass(4, 10)]),
    pane('bies-glass-6', [glass(6, 15)]),
    pane('bies-glass-9', [glass(9, 22.5)]),
    pane('bies-glass-25', [glass(25, 62.5)]),
    pane('bies-lamglass-13', [plate('laminated-glass', 13, 32)], { assumed: ['one plate with the loss of its film'] }),
    pane('ros-glass-3', [glass(3.2)]),
    pane('ufc-glass-3.2', [glass(3.2, 7.3)]),
    pane('ufc-glass-12.7', [glass(12.7, 31.7)]),
    studWall('bies-stud100-softboard', [plate('soft-fibreboard', 12, 4), air(100), plate('soft-fibreboard', 12, 4)], {
      connections: [timber(0, 2)],
      assumed: ['spacing of studs', 'boards of 4 kg/m2, as printed for that board alone'],
    }),
    studWall('bies-stud45-empty', [gypsum(15, 13), air(45), gypsum(15, 13)], {
      connections: [steelStud(0, 2)],
      assumed: ['leaves and steel studs (the source does not print them)', 'spacing, section and screws of studs'],
    }),
    studWall('bies-stud86-gf', [gypsum(15.5, 13), fibre('glass-wool', 86), gypsum(15.5, 13)], {
      connections: [steelStud(0, 2)],
      assumed: ['leaves and steel studs (the source does not print them)', 'spacing, section and screws of studs'],
    }),
    studWall('ros-wood-gyp13', [gypsum(12.7), air(89), gypsum(12.7)], {
      connections: [timber(0, 2)],
      assumed: ['studs 89 mm deep, their spacing'],
    }),
    studWall('ros-wood-2x-gyp13', [gypsum(12.7), gypsum(12.7), air(89), gypsum(12.7), gypsum(12.7)], {
      connections: [timber(1, 3)],
      assumed: ['studs 89 mm deep, their spacing', 'the two boards move as one without slip'],
    }),
    studWall('ros-stag-gyp13', [gypsum(12.7), air(140), gypsum(12.7)], {
      separateFrames: [staggered(0, 2)],
      assumed: ['plates 140 mm wide, spacing of studs', 'plates at the rim carry nothing'],
    }),
    studWall('ros-metal-gyp13', [gypsum(12.7), air(92), gypsum(12.7)], {
      connections: [steelStud(0, 2)],
      assumed: ['studs 92 mm deep, their spacing, section and screws'],
    }),
    of('joist floor', openings.wall)('ros-wood-floor', [plywood(12.7), air(240), gypsum(12.7)], {
      connections: [timber(0, 2)],
      assumed: ['joists 240 mm deep, their spacing'],
    }),
    independent('bies-gyp16-200-gyp16', [gypsum(16), air(200), gypsum(16)], {
      separateFrames: [staggered(0, 2)],
      assumed: ['frames of their own, spacing of studs'],
    }),
    independent('bies-gyp16-200-gyp16-abs88-stag', [gypsum(16), fibre('mineral-wool-40', 88), air(112), gypsum(16)], {
      separateFrames: [staggered(0, 3)],
      assumed: ['spacing of studs', 'absorber as mineral wool of 40 kg/m3'],
    }),
    doublePane('bies-glass2.4-7-2.4', [glass(2.44), air(7), glass(2.44)]),
    doublePane('bies-glass6-100-6', [glass(6), air(100), glass(6)], { assumed: ['frames carry nothing'] }),
    doublePane('bies-glass6-188-6', [glass(6), air(188), glass(6)], { assumed: ['frames carry nothing'] }),
    doublePane('bies-glass6-55-6', [glass(6), air(55), glass(6)], { assumed: ['frames carry nothing'] }),
    doublePane('bies-glass6-100-8', [glass(6), air(100), glass(8)], { assumed: ['frames carry nothing'] }),
    doublePane('ros-glass3-50-3', [glass(3.2), air(50), glass(3.2)], { assumed: ['frames carry nothing'] }),
    lined('bies-steel-damped-gf100', [dampedSteel(1.6, 22), fibre('glass-wool', 100)], {
      assumed: ['22 kg/m2 for sheet and damping layer, what the printed total leaves', 'grade of the glass wool'],
    }),
    lined('bies-steel5-gf100', [steel(5), fibre('glass-wool', 100)], {
      assumed: ['its perforated cover is left out', 'grade of the glass wool'],
    }),
    door('bies-door-hardwood-54', [grained('oak-board', 54, 20)], {
      assumed: ['shut tight: seals are not stated', 'modulus of oak'],
    }),
    door('bies-door-laminate-flush', [plate('solid-core', 44, 20)], {
      assumed: ['shut tight: seals are not stated', 'a solid core of that mass'],
    }),
  ];
}

/** Rows of the table that are not compared, each with the reason. */
export const leftOut: Readonly<Record<string, string>> = {
  'bies-woodwool-25': 'air goes through it: its flow resistivity is not known',
  'bies-woodwool-50-plastered': 'stiffness of wood-wool and plaster is not known',
  'bies-hardboard-straw-hardboard': 'stiffness of the straw core is not known',
  'bies-door-hollow-cracks': 'hollow core of unknown make; what passes is ruled by cracks of unknown width',
  'bies-door-acoustic-steel': 'thickness of the sheets is not printed',
  'bies-door-metal-100': 'thickness of the damped skins is not printed',
  'bies-door-2x-steel-180': 'its printed mass asks for more layers than are named',
  'ros-office-partition': 'construction is not printed',
  'ros-door-hollow-45': 'hollow core of unknown make',
  'ros-door-hollow-metal-45': 'thickness of the sheets is not printed',
  'cabin-b': 'a whole cabin of unknown construction, another quantity',
  'cabin-c': 'a whole cabin of unknown construction, another quantity',
  'encl-ply': 'insertion loss of a whole enclosure of unknown thickness',
  'encl-person-plain': 'noise reduction of a whole enclosure, construction is not printed',
  'encl-person-insul': 'noise reduction of a whole enclosure, construction is not printed',
};
