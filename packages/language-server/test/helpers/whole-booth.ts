import { smallBooth } from './small-booth.js';

/** A booth of which everything is told that can be told. Everything in it is invented. */
export const wholeBooth = smallBooth
  .replace(
    /site \{[\s\S]*?\n\}\n/,
    `site {
  room 4 m x 3.5 m x 2.45 m
  doorway 0.76 m x 1.98 m
  lift 1.00 m x 1.20 m x 2.10 m
  passage stair "the stair" { width 0.80 m; headroom 1.95 m; turn quarter }
  obstacle beam "beam of the ceiling" at 0 m, 0 m, 2.05 m { size 4 m x 1 m x 0.40 m }
  floor timber limit 1.5 kPa
  joists along width
  cold-surface 10 degC
  alarm 85 dBA
  noise street "street at noon" octave 63 Hz 58 dB, 125 Hz 52 dB, 250 Hz 46 dB, 500 Hz 42 dB, 1 kHz 38 dB, 2 kHz 33 dB, 4 kHz 27 dB { hours 06:00 to 22:00 }
  noise hum "hum of the house" octave 63 Hz 40 dB, 125 Hz 36 dB, 250 Hz 30 dB, 500 Hz 26 dB, 1 kHz 22 dB, 2 kHz 18 dB, 4 kHz 14 dB
  impact steps "steps above"
  appliance stove "stove next door" open-flued next-room
  neighbour flat "flat below" below {
    loss octave 63 Hz 25 dB, 125 Hz 30 dB, 250 Hz 36 dB, 500 Hz 42 dB, 1 kHz 46 dB, 2 kHz 50 dB, 4 kHz 52 dB
    area 12 m2
    volume 30 m3
  }
}
`,
  )
  .replace(
    '  mic at 0.7 m, 0.6 m, 1.5 m\n',
    `  vent outlet on right {
    duct 125 mm
    run 1.0 m
    bends 1
    chamber 400 mm x 300 mm x 300 mm
    grille 250 mm x 150 mm
    opens-to room
  }
  stands at 0.60 m, 0.50 m
  lining on left, right, roof { batt 50 mm }
  mouth at 0.75 m, 0.80 m, 1.5 m
  mic at 0.75 m, 0.60 m, 1.5 m { self-noise 8 dBA; high-pass 80 Hz; pattern cardioid; distance 200 mm }
  equipment stand "music stand" at 0.75 m, 0.30 m, 1.4 m { kind copy-stand; size 0.5 m x 0.02 m x 0.4 m; mass 3 kg; heat 20 W; sound-power octave 125 Hz 20 dB, 250 Hz 20 dB, 500 Hz 20 dB, 1 kHz 20 dB, 2 kHz 20 dB, 4 kHz 20 dB }
  panels { width 600 mm; fastened outside; roof lift }
  mounts 16 stiffness 200 N/mm
  contents 25 kg
`,
  )
  .replace(
    'session { people 1; length 90 min }\n',
    `session {
  people 1
  length 90 min
  effort raised
  starts 10:00
  heat 25 W
  supply-air 600 ppm
}

budget {
  item plywood "plywood sheet" for softwood-plywood 12 mm 2 at 40.00 EUR
  item studs "studs" for softwood 60 at 5.00 EUR
  item screws "screws and glue" 1 at 70.00 EUR
  reserve 10 %
}
`,
  )
  .replace(
    'require stc of wall >= 20\n',
    `require stc of wall >= 20
require room-tone <= NC 15
require reverberation <= 0.30 s at 125 Hz
require decay-ratio <= 2 at 125 Hz
require voice-outside <= 30 dBA in flat
require co2 <= 1000 ppm
require temperature-rise <= 4 K
require panel-weight <= 30 kg
require floor-load <= 1.5 kPa
require height <= 2.40 m
require cost <= 400 EUR
`,
  );
