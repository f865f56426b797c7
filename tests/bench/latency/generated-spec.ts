/** A text to measure on, and where its user types. */
export interface Document {
  readonly text: string;
  /** The number that is typed over. */
  readonly edited: { readonly line: number; readonly from: number; readonly to: number };
  readonly hover: { readonly line: number; readonly character: number };
  readonly completion: { readonly line: number; readonly character: number };
  /** First and last line of what the edited number belongs to. */
  readonly lines: { readonly first: number; readonly last: number };
}

/** How many assemblies and booths a spec of a thousand lines has. */
export const perThousandLines = { assemblies: 40, booths: 3 };

/**
 * A spec of a whole number of thousands of lines with 40 assemblies that all differ and 3 booths in each thousand. All
 * values are invented. The booth in the middle has walls of the assembly that is edited.
 */
export function generatedSpec(thousands: number): Document {
  const total = thousands * 1000;
  const assemblyCount = thousands * perThousandLines.assemblies;
  const boothCount = thousands * perThousandLines.booths;
  const lines = ['# A generated spec; every value in it is invented.', 'use catalog', ''];
  lines.push(...site());
  const middle = Math.floor(assemblyCount / 2 / 4) * 4;
  let first = 0;
  for (let index = 0; index < assemblyCount; index++) {
    if (index === middle) first = lines.length;
    lines.push(...material(index), ...assembly(index), '');
  }
  const perBooth = Math.floor(assemblyCount / boothCount);
  const middleBooth = Math.floor(boothCount / 2);
  for (let index = 0; index < boothCount; index++) {
    lines.push(...booth(index, index === middleBooth ? middle : index * perBooth), '');
  }
  lines.push(...endings(boothCount));
  if (lines.length > total) throw new Error(`the spec has ${lines.length} lines, more than ${total}`);
  // What is left is filled with named values, as a long spec has them.
  for (let index = 0; lines.length < total; index++) lines.push(`let distance-${index} = ${100 + index} mm`);

  const header = lines.findIndex((line, index) => index >= first && line.startsWith(`assembly build-up-${middle} `));
  const layer = header + 1;
  const text = lines[layer]!;
  const number = /\d+\.\d+/.exec(text)!;
  return {
    text: `${lines.join('\n')}\n`,
    edited: { line: layer, from: number.index, to: number.index + number[0].length },
    hover: { line: header, character: 'assembly bui'.length },
    completion: { line: layer, character: 4 },
    lines: { first: header, last: header + 8 },
  };
}

function site(): string[] {
  return [
    'site "room" {',
    '  room 4.2 m x 3.6 m x 2.6 m',
    '  reverberation 0.5 s',
    '  doorway 0.76 m x 1.98 m',
    '  floor timber limit 1.5 kPa',
    '  noise street 62 dBA like road-traffic',
    '  noise machine octave 63 Hz 55 dB, 125 Hz 52 dB, 250 Hz 48 dB, 500 Hz 45 dB, 1 kHz 42 dB, 2 kHz 38 dB, 4 kHz 33 dB',
    '  impact steps',
    '}',
    '',
  ];
}

function material(index: number): string[] {
  return [
    `material felt-${index} "felt of batch ${index}" {`,
    '  kind        porous',
    `  density     ${40 + (index % 40)} kg/m3`,
    `  resistivity ${(10 + index * 0.25).toFixed(2)} kPa.s/m2`,
    '  source      "invented"',
    '}',
    '',
  ];
}

/** Four kinds of build-up take turns; thicknesses make each differ from all others. */
function assembly(index: number): string[] {
  const board = (9 + (index % 24) * 0.75 + index * 0.001).toFixed(3);
  const felt = `felt-${index}`;
  const header = `assembly build-up-${index} "build-up ${index}" {`;
  const plywood = `  softwood-plywood ${board} mm`;
  const framed = ['  frame 45 mm x 70 mm every 300 mm {', `    fill ${felt} ${60 + (index % 10)} mm`, '  }'];
  const kinds = [
    [header, plywood, ...framed, '  gypsum-board 12.5 mm', '}'],
    [header, plywood, ...framed, '  gypsum-board 12.5 mm', '  gypsum-board 9.5 mm', '}'],
    [header, plywood, `  ${felt} ${20 + (index % 30)} mm`, '  gypsum-board 12.5 mm', '}'],
    [header, plywood, '  gypsum-board 9.5 mm', `  ${felt} ${25 + (index % 30)} mm`, '  open-weave-cloth', '}'],
  ];
  return kinds[index % kinds.length]!;
}

function booth(index: number, assembly: number): string[] {
  const wall = `build-up-${assembly}`;
  return [
    `booth booth-${index} "booth ${index}" {`,
    `  inside 2.10 m x ${(1.8 + (index % 20) * 0.01).toFixed(2)} m x 2.00 m`,
    '  stands at 0.6 m, 0.6 m',
    `  walls ${wall}`,
    `  roof build-up-${assembly + 1}`,
    `  floor build-up-${assembly + 2}`,
    '  lining on walls cover 90 % { mineral-wool-60 75 mm; open-weave-cloth }',
    '  lining on roof { mineral-wool-60 50 mm; open-weave-cloth }',
    '  door entry on front {',
    '    size 660 mm x 1900 mm',
    '    offset 300 mm',
    `    leaf ${wall}`,
    '    gap perimeter 0.1 mm',
    '    gap threshold 0.3 mm',
    '    swing outward',
    '    lock none',
    '  }',
    '  window view on back {',
    '    size 400 mm x 500 mm',
    '    offset 300 mm',
    '    pane acrylic 18 mm',
    '  }',
    ...vent('intake on left', index, [
      'fan supply 10 L/s sound-power octave 63 Hz 48 dB, 125 Hz 46 dB, 250 Hz 42 dB, 500 Hz 38 dB, 1 kHz 34 dB, 2 kHz 28 dB, 4 kHz 22 dB',
    ]),
    ...vent('exhaust on right', index, []),
    '  mouth at 1.0 m, 1.1 m, 1.5 m',
    '  mic at 1.0 m, 0.9 m, 1.5 m {',
    '    self-noise 8 dBA',
    '    distance 200 mm',
    '    high-pass 80 Hz',
    '    pattern cardioid',
    '  }',
    '  equipment screen at 1.0 m, 0.4 m, 1.3 m {',
    '    kind screen',
    '    size 0.55 m x 0.05 m x 0.33 m',
    '    heat 20 W',
    '  }',
    '  panels {',
    '    width 300 mm',
    '    fastened outside',
    '    roof lift',
    '  }',
    '  contents 25 kg',
    '}',
  ];
}

function vent(where: string, index: number, more: readonly string[]): string[] {
  return [
    `  vent ${where} {`,
    '    duct 125 mm',
    `    run ${(1.2 + (index % 10) * 0.1).toFixed(1)} m`,
    `    lined felt-${index} 25 mm`,
    '    bends 2',
    ...more.map((line) => `    ${line}`),
    '  }',
  ];
}

function endings(boothCount: number): string[] {
  const lines = ['session {', '  people 1', '  effort normal', '  length 120 min', '  supply-air 600 ppm', '}', ''];
  for (let index = 0; index < boothCount; index++) {
    lines.push(
      `require room-tone <= NC ${15 + (index % 10)} for booth-${index}`,
      `require reverberation <= 0.30 s at 125 Hz for booth-${index}`,
    );
  }
  return lines;
}
