import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';
import { everySettable, valuesOf } from './same-again.js';

const examples = join(import.meta.dirname, '../../../../shared/examples');
const named = ['tram-alcove/tram-alcove.booth', 'under-the-nursery/under-the-nursery.booth'] as const;

/** What the two examples leave out, so that every sub-fact of a line is written once. */
const rest = `use catalog
let gap = 6 mm ± 1 mm
material batt "reclaimed wool" { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 ± 25 %; price 11.20 EUR per m2 from memory "last year"; sheet 1.2 m x 0.6 m; source data-sheet "supplier" }
material pine { kind panel; density 500 kg/m3; modulus 11 GPa; modulus-across 0.6 GPa; shear-modulus 0.7 GPa; price 40 EUR per sheet; sheet 1.22 m x 2.44 m; absorption octave 125 Hz 0.1, 250 Hz 0.2 }
material stud { kind lumber; density 7850 kg/m3; gauge 0.6 mm; stud-stiffness 2 MPa; price 2 EUR per m; stock 3 m }
assembly shell { pine 18 mm; frame 35 mm x 75 mm every 600 mm of stud { fill batt gap }; channels 16 mm every 400 mm stiffness 90 N/mm; pine 18 mm }
site "room" {
  room 5 m x 4 m x 2.5 m; joists along width; outdoor-air 420 ppm; fresh-air 6 L/s; occupants 1; alarm 85 dBA
  floor timber limit 1.5 kPa
  noise tram "trams" 64 dBA like road-traffic { hours 05:30 to 24:00 }
  impact feet "feet above" { hours 7:00 to 9:00, 22:00 to 1:00 }
  appliance boiler "boiler" open-flued next-room
  passage hall "hall" { width 0.9 m; onto 0.9 m }
  neighbour flat "flat below" below { through shell; area 9 m2; volume 22 m3 }
}
booth box "the box" {
  outside 1.9 m x 1.7 m x 2.3 m; inside 1.6 m x 1.4 m x 2 m; walls shell; roof shell; floor shell
  stands at 0.1 m, 0.1 m
  door entry on front { size 700 mm x 1900 mm; leaf pine 40 mm; gap perimeter 0.3 mm; gap threshold 1 mm }
  vent in on left {
    duct 100 mm x 150 mm; run 1.2 m; lined batt 25 mm; bends 3
    fan supply 10 L/s sound-power octave 63 Hz 49 dB, 125 Hz 47 dB { curve 0 L/s 120 Pa, 20 L/s 80 Pa, 40 L/s 0 Pa; low 60 %; place in-wall }
    chamber 400 mm x 300 mm x 300 mm lined batt 25 mm
    maze 6 turns leg 250 mm channel 80 mm x 300 mm angle 60 deg lined batt 25 mm
    grille 250 mm x 150 mm free 60 %
  }
  vent out on right { duct 125 mm; run 1 m }
  slit joints on back { length 10 m; gap 0.1 mm; depth 100 mm }
  hole cable on back { diameter 20 mm; depth 100 mm }
  mic at 0.8 m, 0.5 m, 1.5 m { self-noise 8 dBA; pattern cardioid }
  equipment copy "copy holder" at 0.8 m, 0.3 m, 1.2 m { kind copy-stand; size 300 mm x 20 mm x 400 mm; tilt 30 deg; mass 3 kg; absorbs 20 % }
  panels { width 600 mm; split 1.2 m; fastened inside; roof slide }
  mounts 16 stiffness 200 N/mm
}
session { people 1; starts 23:30; length 90 min; take 12 min rest 5 min fan off; body-heat 90 W }
budget { item boards "boards" for pine 18 mm 9 at 40 EUR; item screws 3 at 4.50 EUR; kerf 3 mm; reserve 10 % }
`;

const texts = new Map<string, string>([
  ...named.map((name) => [name, readFileSync(join(examples, name), 'utf8')] as const),
  ['a text with every sub-fact', rest],
]);

describe.each([...texts])('in %s a variant that writes what the base says', (_, text) => {
  const changes = everySettable(text);
  const plain = text.replace(/^variant [\s\S]*$/m, '');

  it('finds what can be changed', () => {
    expect(changes.length).toBeGreaterThan(100);
    expect(checkText(text).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('changes nothing in the checked spec, and is told nothing, be it the whole line or the line without what it could do without', () => {
    const base = valuesOf(checkText(plain).spec);
    const before = checkText(plain).problems.length;
    const wrong = changes.flatMap(({ path, value }) => {
      const { spec, problems } = checkText(`${plain}\nvariant same {\n  ${path} = ${value}\n}\n`);
      const told = problems.slice(before).map(({ message }) => message);
      const same = JSON.stringify(valuesOf(spec.variants[0]!.spec)) === JSON.stringify(base);
      return same && told.length === 0
        ? []
        : [`${path} = ${value}${same ? '' : ': changes'}${told.map((m) => `: ${m}`).join('')}`];
    });
    expect(wrong).toEqual([]);
  }, 60_000);
});
