import { checkSpec } from '@boothwright/language';
import { expect, it } from 'vitest';
import { createAssessor } from '../src/index.js';

const text = `
material board { kind panel; density 650 kg/m3; modulus 3 GPa }
material fibre { kind porous; density 45 kg/m3; resistivity 14 kPa.s/m2 }
material fabric { kind cloth; surface-mass 0.3 kg/m2; flow-resistance 150 Pa.s/m }
material stud { kind lumber; density 450 kg/m3 }
assembly shell {
  board 18 mm
  frame 45 mm x 70 mm every 600 mm of stud { fill fibre 70 mm }
  board 12 mm
}
site "room" {
  room 4.2 m x 2.8 m x 2.3 m
  reverberation 0.6 s
  noise street octave 63 Hz 60 dB, 125 Hz 56 dB, 250 Hz 52 dB, 500 Hz 47 dB, 1 kHz 42 dB, 2 kHz 37 dB, 4 kHz 30 dB
}
booth box {
  inside 1.30 m x 1.50 m x 1.84 m
  walls shell
  roof shell
  floor shell
  lining on walls { fibre 50 mm; fabric }
  door entry on front {
    size 700 mm x 1700 mm
    leaf shell
    gap threshold 1 mm
  }
  vent in on left { duct 100 mm x 150 mm; run 1.5 m; lined fibre 25 mm; fan 12 L/s sound-power octave 125 Hz 40 dB, 500 Hz 35 dB }
  mic at 0.6 m, 0.7 m, 1.2 m { distance 150 mm; self-noise 6 dBA; high-pass 80 Hz }
}
session { people 1; effort loud; length 60 min; supply-air 600 ppm }
require room-tone <= NC 15
require room-tone <= -60 dBFS
require reverberation <= 0.3 s at 1 kHz
require voice-outside <= 40 dBA
require co2 <= 1000 ppm
require floor-load <= 1.5 kPa
`;

const { assess } = createAssessor();

/** Whatever the language makes of a text must be assessed without an exception and without a number that is none. */
function expectFinite(changed: string, what: string) {
  const { spec } = checkSpec('test.booth', {
    read: (path) => (path === 'test.booth' ? { kind: 'text', text: changed } : { kind: 'missing' }),
  });
  const look = (node: unknown, path: string): void => {
    if (typeof node === 'number' && !Number.isFinite(node)) throw new Error(`${path} is no number after ${what}`);
    if (typeof node === 'object' && node !== null) {
      for (const [key, value] of Object.entries(node)) look(value, `${path}.${key}`);
    }
  };
  look(assess(spec), 'result');
}

it('assess(spec) survives the loss of any line', () => {
  const lines = text.split('\n');
  lines.forEach((line, index) => {
    expect(() => expectFinite(lines.toSpliced(index, 1).join('\n'), `dropping "${line}"`)).not.toThrow();
  });
});

it('assess(spec) survives any quantity turned to nothing, next to nothing or a thousand million', () => {
  for (const match of text.matchAll(/(?<![\w.-])\d+(\.\d+)?(?= (mm|m|kg|s|Pa|dB|dBA|L|kPa|GPa|x|min|ppm))/g)) {
    for (const value of ['0', '0.000001', '1000000000']) {
      const changed = text.slice(0, match.index) + value + text.slice(match.index + match[0].length);
      expect(() => expectFinite(changed, `${value} for ${match[0]} at ${match.index}`)).not.toThrow();
    }
  }
}, 120_000);
