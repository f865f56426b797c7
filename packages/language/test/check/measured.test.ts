import { describe, expect, it } from 'vitest';
import { checkText, problemIds } from '../check-text.js';

const base = `use catalog
assembly wall { gypsum-board 12.5 mm; air 50 mm; gypsum-board 12.5 mm }
site "room" { room 5 m x 4 m x 2.5 m; noise tram 60 dBA like road-traffic; neighbour nursery above { through wall } }
booth box { inside 1.2 m x 1.2 m x 2 m; walls wall; roof wall; floor wall; door entry on front { size 700 mm x 1900 mm; leaf wall } }
`;
const measured = (lines: string, more = ''): string => `${base}${more}measured first {\n  ${lines}\n}\n`;

describe('a measured block', () => {
  it('keeps where, when, with what, and every reading', () => {
    const { spec, problems } = checkText(
      measured(`date "2026-05-14"
  instrument "class 2 meter"
  fan low
  room-tone 22 dBA
  isolation against tram third 100 Hz 24 dB ± 2 dB, 125 Hz 27 dB
  voice-outside 31 dBA in nursery
  reverberation octave 125 Hz 0.31 s, 250 Hz 240 ms
  co2 1150 ppm
  temperature-rise 3 K
  mass 385 kg
  recording "./takes/night.WAV" full-scale 110 dB`),
    );
    expect(problems).toEqual([]);
    const [one] = spec.measured!;
    expect(one).toMatchObject({ name: 'first', booth: 'box', date: { value: '2026-05-14' }, fan: { value: 'low' } });
    expect(one!.readings.map(({ kind }) => kind)).toEqual([
      'room-tone',
      'isolation',
      'voice-outside',
      'reverberation',
      'co2',
      'temperature-rise',
      'mass',
    ]);
    expect(one!.readings[1]).toMatchObject({
      against: 'tram',
      levels: {
        form: 'bands',
        bands: { value: { grid: 'third', values: [{ hz: 100, value: 24, tolerance: 2 }, {}] } },
      },
    });
    expect(one!.readings[3]).toMatchObject({
      times: { bands: { value: { values: [{ value: 0.31 }, { value: 0.24 }] } } },
    });
    expect(one!.recordings).toMatchObject([{ path: 'takes/night.WAV', fullScale: { value: { decibels: 110 } } }]);
  });

  it('changes no prediction: an error in it leaves every verdict', () => {
    const { spec, problems } = checkText(measured('room-tone 22 kg'));
    expect(problems.map(({ id }) => id)).toEqual(['unit-of-wrong-dimension']);
    expect(spec.unread).toEqual([]);
  });

  it('says which booth it is about where there are several', () => {
    const two = 'booth other { inside 1 m x 1 m x 2 m; walls wall; roof wall; floor wall }\n';
    expect(problemIds(measured('room-tone 22 dBA', two))).toEqual(['fact-missing']);
    expect(checkText(measured('booth other; room-tone 22 dBA', two)).spec.measured![0]!.booth).toBe('other');
  });

  it.each([
    ['booth boxx; room-tone 22 dBA', 'unknown-name'],
    ['isolation against train 30 dB', 'unknown-name'],
    ['voice-outside 30 dBA in nurserie', 'unknown-name'],
    ['date "14.5.2026"; mass 300 kg', 'no-such-date'],
    ['date "2026-02-30"; mass 300 kg', 'no-such-date'],
    ['date "2026-02-01"', 'measured-nothing'],
    ['room-tone 22 dBA; room-tone 23 dBA', 'fact-twice'],
    ['recording "../../night.wav"', 'path-refused'],
    ['recording "/tmp/night.wav"', 'path-refused'],
    ['recording "https://host/night.wav"', 'path-refused'],
    ['recording "night.mp3"', 'recording-kind'],
    ['reverberation 3 m', 'unit-of-wrong-dimension'],
    ['room-tone octave 60 Hz 30 dB', 'no-such-band'],
  ])('tells what is wrong in `%s`', (lines, id) => {
    expect(problemIds(measured(lines))).toEqual([id]);
  });

  it('refers to booth, noise and neighbour, so that they are renamed in it', () => {
    const { symbols } = checkText(measured('booth box; isolation against tram 30 dB; voice-outside 30 dBA in nursery'));
    const used = symbols.symbols.filter(({ references }) => references.length > 0).map(({ name }) => name);
    expect(used).toEqual(expect.arrayContaining(['box', 'tram', 'nursery']));
  });
});
