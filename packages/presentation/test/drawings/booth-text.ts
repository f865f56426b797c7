import { type BoothSpec, checkSpec } from '@boothwright/language';

export const buildUps = `
use catalog
assembly shell "wall" {
  softwood-plywood 12 mm
  frame 45 mm x 70 mm every 300 mm { fill mineral-wool-40 50 mm }
  gypsum-board 12.5 mm
}
assembly deck "floor" { rubber-mat 16 mm; osb 18 mm }
assembly mixed "one of each" {
  osb 18 mm
  limp-sheet 4.9 kg/m2
  air 40 mm
  mineral-wool-60 50 mm
  gypsum-board 12.5 mm
}
`;

export const wholeBooth = `${buildUps}
site "study" {
  room 3.60 m x 3.10 m x 2.45 m
  obstacle chimney at 1.70 m, 2.70 m, 0 m { size 1.20 m x 0.40 m x 2.45 m }
  obstacle pipe at 0 m, 0 m, 2.2 m { size 3.6 m x 0.1 m x 0.1 m }
  joists along width
}
booth cell "the cell" {
  inside 1.15 m x 1.35 m x 2.00 m
  stands at 0.15 m, 1.20 m
  walls shell
  roof shell
  floor deck
  lining on left, right, back { mineral-wool-60 50 mm }
  door entry on front { size 660 mm x 1900 mm; offset 250 mm; leaf mixed; swing outward }
  window view on left { size 500 mm x 400 mm; sill 1100 mm; pane mixed }
  vent intake on left { duct 125 mm; run 1.2 m; bends 2; fan supply 10 L/s }
  vent outlet on right { duct 200 mm x 100 mm; run 1.0 m; bends 1 }
  hole cable on back { diameter 20 mm; depth 94.5 mm }
  slit joints on back { length 14 m; gap 0.1 mm; depth 94.5 mm }
  mic at 0.575 m, 0.75 m, 1.62 m { self-noise 8 dBA }
  mouth at 0.575 m, 0.95 m, 1.62 m
  equipment copy "copy holder" at 0.575 m, 0.40 m, 1.35 m { kind copy-stand; size 0.35 m x 0.02 m x 0.28 m }
}
`;

export function specOf(text: string): BoothSpec {
  const { spec } = checkSpec('drawn.booth', {
    read: (path) => (path === 'drawn.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
  return spec;
}
