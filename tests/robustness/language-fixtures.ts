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
  impact feet "steps"
  appliance boiler open-flued
}

booth box "the box" {
  outside 1.6 m x 1.8 m x 2.3 m
  inside 1.1 m x 1.3 m x 2.0 m
  walls shell; roof shell; floor shell; front shell
  lining on left, walls cover 80 % { batt 50 mm; air 3 mm; net }
  door entry on front { size 660 mm x 1900 mm; offset 50 mm; leaf shell; gap perimeter 0.1 mm; gap threshold 0.3 mm; swing outward; lock none }
  window view on left { size 400 mm x 500 mm; pane acrylic 18 mm }
  vent in on left { duct 100 mm x 150 mm; run 1.2 m; lined glass-wool 25 mm; bends 3; fan 35 cfm sound-power octave 63 Hz 40 dB }
  vent out on right { duct 125 mm; run 1 m; insertion-loss octave 63 Hz 5 dB }
  slit joints on back { length 20 m; gap 0.05 mm; depth 90 mm }
  hole cable on back { diameter 20 mm; depth 95 mm }
  mic at 0.6 m, 0.5 m, 1.5 m { self-noise 8 dBA; distance 150 mm; high-pass 80 Hz }
  contents 40 kg
}

session { people 1; body 80 kg; effort normal; length 90 min; heat 25 W; supply-air 600 ppm; co2-rate 20 L/h; voice -20 dBFS }
budget {
  item ply "plywood" 7 at 38.00 EUR
  reserve 10 %
}

require room-tone <= NC 15; require room-tone <= -60 dBFS
require reverberation <= 0.30 s at 125 Hz
require reverberation within 0.08 s .. 0.20 s from 160 Hz to 4 kHz
require isolation >= 32 dB against tram
require voice-outside <= 35 dBA
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
  assembly shell { osb 9 mm }
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
