import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

const text = (lines: string, more = ''): string =>
  `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1.2 m x 1.4 m x 2 m\n  walls shell; roof shell; floor shell\n  ${lines}\n}\n${more}`;

describe('what stands in a booth', () => {
  it('is read with its place, size, mount and figures in SI', () => {
    const { spec, problems } = checkText(
      text(
        'equipment copy "copy holder" at 0.6 m, 0.2 m, 1.3 m {\n kind copy-stand; size 320 mm x 10 mm x 460 mm; tilt 30 deg; stands\n mass 3 kg; heat 20 W; sound-power octave 250 Hz 24 dB, 125 Hz 20 dB; absorbs 80 %\n}',
      ),
    );
    expect(problems).toEqual([]);
    const [copy] = spec.booths[0]!.equipment;
    expect(copy).toMatchObject({
      name: 'copy',
      title: 'copy holder',
      kind: { value: 'copy-stand' },
      position: { x: { value: 0.6 }, y: { value: 0.2 }, z: { value: 1.3 } },
      size: { width: { value: 0.32 }, depth: { value: 0.01 }, height: { value: 0.46 } },
      tilt: { value: 30 },
      mount: { value: 'stands' },
      mass: { value: 3 },
      heat: { value: 20 },
      absorption: { value: 0.8 },
      soundPower: {
        value: {
          grid: 'octave',
          values: [
            { hz: 125, value: 20 },
            { hz: 250, value: 24 },
          ],
        },
      },
    });
  });

  it('has named defaults for what is not said', () => {
    const { spec, problems } = checkText(text('equipment lamp at 0.6 m, 0.2 m, 1.9 m'));
    expect(problems).toEqual([]);
    const [lamp] = spec.booths[0]!.equipment;
    expect(lamp).toMatchObject({
      kind: { value: 'other', origin: { kind: 'default', name: 'equipment-kind' } },
      tilt: { value: 0, origin: { name: 'equipment-tilt' } },
      absorption: { value: 0.05, origin: { name: 'equipment-absorption' } },
    });
    expect([lamp?.size, lamp?.mount, lamp?.mass, lamp?.heat, lamp?.soundPower]).toEqual(Array(5).fill(undefined));
  });

  it('goes with mouth, panels, mounts and the place in the room', () => {
    const { spec, problems } = checkText(
      text(
        'mouth at 0.6 m, 0.7 m, 1.5 m\n panels { width 600 mm; split 1.20 m; fastened inside; roof slide }\n mounts 16 stiffness 200 N/mm\n stands at 0.05 m, 0.10 m\n mic at 0.6 m, 0.5 m, 1.5 m { pattern figure-eight }',
        'site { room 4 m x 3 m x 2.4 m }\n',
      ),
    );
    expect(problems).toEqual([]);
    expect(spec.booths[0]).toMatchObject({
      mouth: { x: { value: 0.6 }, y: { value: 0.7 }, z: { value: 1.5 } },
      panels: { width: { value: 0.6 }, split: { value: 1.2 }, fastened: { value: 'inside' }, roof: { value: 'slide' } },
      mounts: { count: { value: 16 }, stiffness: { value: 200_000 } },
      standsAt: { x: { value: 0.05 }, y: { value: 0.1 } },
      microphone: { pattern: { value: 'figure-eight' } },
    });
  });
});
