import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogueText } from '@boothwright/language';

export interface Fixture {
  readonly name: string;
  readonly text: string;
}

/** A spec with every block and fact in it, so that no rule of the grammar escapes. */
const everything = `use catalog
use "./parts.booth" # not there in these tests

let gap = 6 mm ± 1 mm
let twice = (gap + 3/4 in) * 2 - 1 mm

material batt "wool" {
  kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 ± 25 % from data-sheet "supplier"
  absorption third 100 Hz 0.2, 125 Hz 0.3
  price 7.50 EUR per m2; fire-class "E"; source memory "none"
}
material net { kind cloth; surface-mass 0.2 kg/m2; flow-resistance 20 Pa.s/m; thickness 1 mm }

material pine { kind panel; density 500 kg/m3; modulus 11 GPa; modulus-across 0.6 GPa; shear-modulus 0.7 GPa; poisson 0.3; loss-factor 0.05; sheet 1.22 m x 2.44 m }
material stud { kind lumber; density 7850 kg/m3; gauge 0.6 mm; stud-stiffness 2 MPa; stock 3 m }
assembly light {
  pine 18 mm; channels 16 mm every 400 mm stiffness 90 N/mm
  frame 35 mm x 75 mm every 600 mm of steel-stud { screws 300 mm }
  clips 30 mm every 600 mm stiffness 80 N/mm; pine 18 mm
}
assembly shell "wall" { # outside to inside
  softwood-plywood 12 mm
  frame 2x4 every 16 in of softwood { fill batt 70 mm }
  frame 45 mm × twice every 600 mm
  air gap
  limp-sheet 4.9 kg/m2
  gypsum-board 2-1/2 in
}

site "room" {
  room 3.6 m x 3.1 m x 2.45 m; reverberation 0.5 s
  doorway 2 ft 6 in x 6 ft 6 in; lift 1 m x 1.2 m x 2.1 m
  floor timber limit 1.5 kPa; temperature 20 degC; humidity 50 %
  noise tram octave 63 Hz 58 dB, 1 kHz 38 dB
  noise hum third 50 Hz 50 dB
  noise cars "cars" 64 dBA ± 2 dB like road-traffic
  impact feet "steps" { hours 06:00 to 22:00, 23:00 to 02:00 }
  appliance boiler open-flued next-room
  joists along width; cold-surface 8 degC; outdoor-air 420 ppm; fresh-air 6 L/s; occupants 1; alarm 85 dBA
  passage stair "stair" { width 0.80 m; headroom 1.90 m; turn quarter; onto 0.90 m }
  obstacle pipe at 0 m, 0 m, 1.98 m { size 3.60 m x 0.08 m x 0.10 m }
  neighbour nursery "nursery" above { loss octave 63 Hz 25 dB; area 11 m2; volume 27 m3; reverberation 0.5 s }
  neighbour garden outdoors { through shell; distance 5 m }
}

booth box "the box" {
  outside 1.6 m x 1.8 m x 2.3 m
  inside 1.1 m x 1.3 m x 2.0 m
  walls shell; roof shell; floor shell; front shell; back shell; left shell; right shell
  lining on left, walls cover 80 % { batt 50 mm; air 3 mm; net }
  door entry on front { size 660 mm x 1900 mm; offset 50 mm; leaf shell; gap perimeter 0.1 mm; gap threshold 0.3 mm; swing outward; lock none }
  window view on left { size 400 mm x 500 mm; sill 1.2 m; pane acrylic 18 mm }
  vent in on left { duct 100 mm x 150 mm; run 1.2 m; lined glass-wool 25 mm; bends 3; fan 35 cfm sound-power octave 63 Hz 40 dB }
  vent out on right { duct 125 mm; run 1 m; insertion-loss octave 63 Hz 5 dB }
  vent quiet on back { duct 125 mm; run 1 m; fan exhaust 10 L/s { curve 0 L/s 120 Pa, 40 L/s 0 Pa; low 60 %; place in-wall }
    chamber 400 mm x 300 mm x 300 mm of osb 18 mm lined batt 25 mm; maze 6 turns leg 250 mm channel 80 mm x 300 mm angle 60 deg lined batt 25 mm
    grille 250 mm x 150 mm free 60 %; opens-to next-room; wall flexible }
  stands at 0.05 m, 0.05 m; mouth at 0.6 m, 0.6 m, 1.5 m
  equipment copy "copy holder" at 0.6 m, 0.3 m, 1.2 m { kind copy-stand; size 300 mm x 20 mm x 400 mm; tilt 30 deg; hangs; mass 3 kg; heat 20 W; sound-power octave 1 kHz 20 dB; absorbs 80 % }
  panels { width 600 mm; split 1.20 m; fastened outside; roof lift }; mounts 16 stiffness 200 N/mm
  slit joints on back { length 20 m; gap 0.05 mm; depth 90 mm }
  hole cable on back { diameter 20 mm; depth 95 mm }
  mic at 0.6 m, 0.5 m, 1.5 m { self-noise 8 dBA; distance 150 mm; high-pass 80 Hz; pattern cardioid }
  contents 40 kg
}

session { people 1; body 80 kg; effort normal; length 90 min; heat 25 W; supply-air 600 ppm; co2-rate 20 L/h; voice -20 dBFS; fan low; starts 13:00; take 12 min rest 5 min fan off; body-heat 90 W; body-moisture 50 W; stature 1.74 m; posture sits }
budget {
  item ply "plywood" for softwood-plywood 12 mm 7 at 38.00 EUR
  reserve 10 %; kerf 3 mm
}

require room-tone <= NC 15; require room-tone <= -60 dBFS
require reverberation <= 0.30 s at 125 Hz
require reverberation within 0.08 s .. 0.20 s from 160 Hz to 4 kHz
require isolation >= 32 dB against tram
require voice-outside <= 35 dBA in nursery
require decay-ratio <= 2 at 125 Hz; require temperature-rise <= 4 K
require stc of shell >= 40
require rw of shell >= 40
require co2 <= 1000 ppm
require mass <= 400 kg
require floor-load <= 1.5 kPa
require panel-weight <= 32 kg
require height <= 2.25 m
require cost <= 1900 EUR

variant other "other" {
  gap = 50 mm
  box.entry.gap.threshold = 0.3 mm
  box.inside.width = 1.12 m
  batt.density = 40 kg/m3
  session.people = 2
  site.cars = 60 dBA like pink
  box.quiet.fan = 12 L/s; site.feet.hours = 22:00 to 6:00; budget.ply = 8 at 38.00 EUR
  assembly shell { osb 9 mm }
}
measured first-night "door seal not yet adjusted" {
  booth box; date "2026-05-14"; instrument "class 2 meter, checked at 94 dB"; fan off
  room-tone octave 63 Hz 34 dB, 125 Hz 28 dB
  isolation against tram 29 dB
  voice-outside 31 dBA; reverberation octave 125 Hz 0.3 s; co2 1150 ppm; temperature-rise 3 K; mass 385 kg
  recording "tone.wav" full-scale 94 dB
}
`;

const examples = join(import.meta.dirname, '../../shared/examples');

function specsBelow(folder: string): readonly Fixture[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.booth'))
    .sort()
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
}

/** Complete specs: the shipped examples, and one that uses every word of the language. */
export const fixtures: readonly Fixture[] = [{ name: 'everything', text: everything }, ...specsBelow(examples)];

/** The catalogue is long and plain; one deletion per word of it is enough. */
export const catalogueFixture: Fixture = { name: 'catalogue', text: catalogueText };
