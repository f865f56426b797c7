import { createAssessor } from '@boothwright/assessment';
import { type BoothSpec, checkSpec } from '@boothwright/language';

/**
 * A booth of some forty panels, each of several parts, with door, window, two vents, equipment, session, list and requirements; `thickness` of the
 * boards in mm is new in every round, as a keystroke makes it. All values are invented.
 */
function specText(thickness: number, micDepth = 0.9): string {
  return `use catalog
material liner "duct liner" { kind porous; density 48 kg/m3; resistivity 20 kPa.s/m2; source "invented" }
assembly shell { softwood-plywood ${thickness.toFixed(3)} mm; frame 45 mm x 70 mm every 300 mm { fill mineral-wool-40 70 mm }; gypsum-board 12.5 mm }
assembly deck { air 12 mm; softwood-plywood 18 mm; softwood-plywood 12 mm }
site "room" {
  room 4.2 m x 3.6 m x 2.6 m; reverberation 0.5 s; doorway 0.76 m x 1.98 m; lift 1.00 m x 1.20 m x 2.10 m; floor timber limit 1.5 kPa
  passage stair { width 0.90 m; headroom 2.00 m; turn quarter }
  noise street 62 dBA like road-traffic
  noise machine octave 63 Hz 55 dB, 125 Hz 52 dB, 250 Hz 48 dB, 500 Hz 45 dB, 1 kHz 42 dB, 2 kHz 38 dB, 4 kHz 33 dB
  impact steps
}
booth studio {
  inside 2.10 m x 1.80 m x 2.00 m
  stands at 0.6 m, 0.6 m
  walls shell; roof shell; floor deck
  lining on walls cover 90 % { mineral-wool-60 75 mm; open-weave-cloth }
  lining on roof { mineral-wool-60 50 mm; open-weave-cloth }
  door entry on front { size 660 mm x 1900 mm; offset 300 mm; leaf shell; gap perimeter 0.1 mm; gap threshold 0.3 mm; swing outward; lock none }
  window view on back { size 400 mm x 500 mm; offset 300 mm; pane acrylic 18 mm }
  vent intake on left { duct 125 mm; run 1.2 m; lined liner 25 mm; bends 2; fan supply 10 L/s sound-power octave 63 Hz 48 dB, 125 Hz 46 dB, 250 Hz 42 dB, 500 Hz 38 dB, 1 kHz 34 dB, 2 kHz 28 dB, 4 kHz 22 dB }
  vent exhaust on right { duct 125 mm; run 1.2 m; lined liner 25 mm; bends 2 }
  slit joints on back { length 20 m; gap 0.2 mm; depth 94.5 mm }
  mouth at 1.0 m, 1.1 m, 1.5 m
  mic at 1.0 m, ${micDepth.toFixed(3)} m, 1.5 m { self-noise 8 dBA; distance 200 mm; high-pass 80 Hz; pattern cardioid }
  equipment screen at 1.0 m, 0.4 m, 1.3 m { kind screen; size 0.55 m x 0.05 m x 0.33 m; heat 20 W }
  equipment copy at 1.3 m, 0.5 m, 1.3 m { kind copy-stand; size 0.4 m x 0.02 m x 0.3 m; tilt 30 deg }
  panels { width 300 mm; fastened outside; roof lift }
  contents 25 kg
}
session { people 1; effort normal; length 120 min; supply-air 600 ppm }
budget { item board for softwood-plywood 12 mm 12 at 38 EUR; item rest 1 at 900 EUR; reserve 10 % }
require room-tone <= NC 15
require room-tone <= -60 dBFS
require reverberation <= 0.30 s at 125 Hz
require voice-outside <= 35 dBA
require co2 <= 1000 ppm
require temperature-rise <= 4 K
require panel-weight <= 32 kg
require cost <= 1900 EUR
`;
}

function checked(text: string): BoothSpec {
  const file = 'bench.booth';
  const { spec, problems } = checkSpec(file, {
    read: (path: string) => (path === file ? { kind: 'text', text } : { kind: 'missing' }),
  } as Parameters<typeof checkSpec>[1]);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('; '));
  return spec;
}

/** Checked specs, each with a thickness not seen before. */
export function specs(count: number): readonly BoothSpec[] {
  return Array.from({ length: count }, (_, index) => checked(specText(12 + index * 0.013)));
}

/** Checked specs with the same walls, in which the microphone stands elsewhere. */
export function sameWalls(count: number): readonly BoothSpec[] {
  return Array.from({ length: count }, (_, index) => checked(specText(12, 0.8 + index * 0.003)));
}

/** The same without what is not a wall. */
export function wallsOnly(spec: BoothSpec): BoothSpec {
  return { ...spec, booths: [], requirements: [], budget: undefined };
}

/** How many panels the booth has, and how many pieces its parts list counts. */
export function sizeOf(spec: BoothSpec): { readonly panels: number; readonly pieces: number } {
  const { booths } = createAssessor().assess(spec);
  const build = Object.values(booths)[0]!.build;
  return { panels: build.panels.length, pieces: build.parts.reduce((sum, { count }) => sum + count, 0) };
}

/** ms for each spec, with a memory that forgets between them. */
export function coldMemory(list: readonly BoothSpec[]): number[] {
  return list.map((spec) => timed(() => createAssessor().assess(spec)));
}

/** ms for each spec, with one memory for all, as an editor has. */
export function keptMemory(list: readonly BoothSpec[]): number[] {
  const assessor = createAssessor();
  return list.map((spec) => timed(() => assessor.assess(spec)));
}

function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}
