import { format, parse } from '@boothwright/language';
import { expect, it } from 'vitest';

const messy = `booth box {
    stands at 0.05 m,0.10 m
  panels {width 600 mm;roof slide}
      mounts   16 stiffness 200 N/mm
  equipment copy "copy holder"   at 0.6 m,0.2 m, 1.3 m {
  kind copy-stand
  tilt   30 deg # leans back
  stands
  }
  vent in on left {
  duct 125 mm
  chamber 400 mm  x 300 mm x 300 mm lined glass-wool 25 mm
  maze 6 turns  leg 250 mm channel 80 mm x 300 mm angle 90 deg
  fan supply   10 L/s  {
  curve 0 L/s 120 Pa,20 L/s 80 Pa ,  40 L/s 0 Pa
  low 60%
  }
  }
}
`;

it('lays out what stands inside and air paths, changes nothing the second time and no meaning', () => {
  const once = format(messy);
  expect(once).toContain('curve 0 L/s 120 Pa, 20 L/s 80 Pa, 40 L/s 0 Pa');
  expect(once).toContain('  equipment copy "copy holder" at 0.6 m, 0.2 m, 1.3 m {\n');
  expect(once).toContain('panels { width 600 mm; roof slide }');
  expect(format(once)).toBe(once);
  expect(parse(once, 'a.booth').problems).toEqual([]);
  const words = (text: string): readonly string[] =>
    parse(text, 'a.booth')
      .tokens.filter(({ kind }) => kind !== 'newline')
      .map(({ text: word }) => word);
  expect(words(once)).toEqual(words(messy));
});
