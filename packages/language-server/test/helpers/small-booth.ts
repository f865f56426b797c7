/** A whole spec in few lines, for tests that need results. Everything in it is invented. */
export const smallBooth = `use catalog

let gap = 60 mm

material batt "wool batt" {
  kind porous
  density 38 kg/m3
  resistivity 9 kPa.s/m2
  source "invented test data"
}

assembly wall "outer wall" {
  gypsum-board 12.5 mm
  frame 45 mm x 70 mm every 600 mm {
    fill batt 70 mm
  }
  softwood-plywood 12 mm
}

assembly deck {
  softwood-plywood 18 mm
  air gap
}

site {
  room 4 m x 3.5 m x 2.45 m
  noise street "street at noon" octave 63 Hz 58 dB, 125 Hz 52 dB, 250 Hz 46 dB, 500 Hz 42 dB, 1 kHz 38 dB, 2 kHz 33 dB, 4 kHz 27 dB
  impact steps "steps above"
}

booth study {
  inside 1.50 m x 1.20 m x 2.00 m
  walls wall
  roof wall
  floor deck
  door entry on front {
    size 660 mm x 1900 mm
    leaf wall
    gap perimeter 0.3 mm
  }
  vent intake on left { duct 125 mm; run 1.2 m; bends 2; fan 10 L/s }
  mic at 0.7 m, 0.6 m, 1.5 m
}

session { people 1; length 90 min }

require room-tone <= 8 dBA
require voice-outside <= 70 dBA
require stc of wall >= 20

variant wide { gap = 120 mm }
`;

/** The small booth with a mark put behind the first occurrence of a text. */
export function cursorAfter(part: string, spec: string = smallBooth): string {
  const at = spec.indexOf(part);
  if (at < 0) throw new Error(`\`${part}\` does not stand in the spec`);
  return `${spec.slice(0, at + part.length)}<|>${spec.slice(at + part.length)}`;
}
