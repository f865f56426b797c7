import type { DefaultEntry } from './default-entry.js';

/**
 * Every value that stands in for one the user did not give. Nothing else in the language assumes a number; each of
 * these is shown with its name and source wherever it is used.
 */
export const defaults = [
  {
    name: 'room-reverberation',
    value: 0.5,
    text: '0.5 s',
    evidence: 'common-practice',
    source:
      'a furnished room: 0.5 s is the reference reverberation time of dwellings in ISO 16283-1, quoted here from memory',
  },
  { name: 'air-temperature', value: 20, text: '20 degC', evidence: 'common-practice', source: 'a heated room' },
  {
    name: 'air-humidity',
    value: 0.5,
    text: '50 %',
    evidence: 'common-practice',
    source: 'middle of what heated rooms show over a year',
  },
  {
    name: 'poisson',
    value: 0.3,
    text: '0.3',
    evidence: 'common-practice',
    source: 'the estimate that C. Hopkins, Sound Insulation (2007), Table A2 marks for most boards',
  },
  {
    name: 'loss-factor',
    value: 0.03,
    text: '0.03',
    evidence: 'common-practice',
    source:
      'between the internal loss factors of boards near 0.01 and the 0.05 of fixed building panels in D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1',
  },
  {
    name: 'stud-lumber',
    value: 'softwood',
    text: 'softwood',
    evidence: 'common-practice',
    source: 'frames are mostly softwood; its figures are those of the catalogue',
  },
  {
    name: 'stud-density',
    value: 440,
    text: '440 kg/m3',
    evidence: 'published',
    source:
      'C. Hopkins, Sound Insulation (2007), Table A2, softwood timber, read in a transcription; used where the catalogue is not',
  },
  {
    name: 'screw-spacing',
    value: 0.3,
    text: '300 mm',
    evidence: 'common-practice',
    source: 'boards on light steel studs are screwed about every 300 mm',
  },
  {
    name: 'door-perimeter-gap',
    value: 0.0005,
    text: '0.5 mm',
    evidence: 'common-practice',
    source: 'a single compression seal that touches all round; effective clear width, to be replaced by a measured one',
  },
  {
    name: 'door-threshold-gap',
    value: 0.003,
    text: '3 mm',
    evidence: 'common-practice',
    source: 'a door without a threshold seal, hung to clear the floor',
  },
  {
    name: 'lining-cover',
    value: 1,
    text: '100 %',
    evidence: 'common-practice',
    source: 'a lining covers its face unless it is said otherwise',
  },
  {
    name: 'vent-bends',
    value: 0,
    text: '0',
    evidence: 'common-practice',
    source: 'a straight duct: the cautious reading',
  },
  {
    name: 'mic-distance',
    value: 0.15,
    text: '150 mm',
    evidence: 'common-practice',
    source: 'about a hand’s length from mouth to microphone',
  },
  {
    name: 'contents',
    value: 0,
    text: '0 kg',
    evidence: 'common-practice',
    source: 'nothing is assumed to stand inside',
  },
  { name: 'people', value: 1, text: '1', evidence: 'common-practice', source: 'one performer' },
  { name: 'body-mass', value: 80, text: '80 kg', evidence: 'common-practice', source: 'an adult with clothes' },
  {
    name: 'effort',
    value: 'normal',
    text: 'normal',
    evidence: 'common-practice',
    source: 'a voice at ordinary reading level',
  },
  {
    name: 'session-length',
    value: 3600,
    text: '60 min',
    evidence: 'common-practice',
    source: 'an hour with the door shut',
  },
  {
    name: 'session-heat',
    value: 0,
    text: '0 W',
    evidence: 'common-practice',
    source: 'no lamp or equipment is assumed inside',
  },
  {
    name: 'supply-air',
    value: 600,
    text: '600 ppm',
    evidence: 'common-practice',
    source: 'air of an occupied room rather than outdoor air',
  },
  {
    name: 'co2-rate',
    value: 20 / 3_600_000,
    text: '20 L/h',
    evidence: 'common-practice',
    source:
      'the default of EN 16798-1 for an awake adult, quoted second-hand; taken for ordinary speech, louder efforts count more',
  },
  {
    name: 'voice-level',
    value: -20,
    text: '-20 dBFS',
    evidence: 'common-practice',
    source: 'RMS level to which spoken recordings are often set',
  },
  {
    name: 'outdoor-air',
    value: 420,
    text: '420 ppm',
    evidence: 'common-practice',
    source: 'about what outdoor air has held in the middle of the 2020s',
  },
  { name: 'occupants', value: 0, text: '0', evidence: 'common-practice', source: 'nobody is assumed in the room' },
  {
    name: 'vent-opens-to',
    value: 'room',
    text: 'room',
    evidence: 'common-practice',
    source: 'a vent opens to the room around the booth unless it is said otherwise',
  },
  {
    name: 'duct-wall',
    value: 'smooth',
    text: 'smooth',
    evidence: 'common-practice',
    source: 'sheet metal or plastic pipe; a flexible hose has a few times its friction',
  },
  {
    name: 'fan-low-speed',
    value: 0.6,
    text: '60 %',
    evidence: 'common-practice',
    source: 'a low step of a speed control; to be replaced by what the control does',
  },
  {
    name: 'fan-speed',
    value: 'high',
    text: 'high',
    evidence: 'common-practice',
    source: 'the fan is taken as stated unless the session says otherwise',
  },
  {
    name: 'take-fan',
    value: 'on',
    text: 'on',
    evidence: 'common-practice',
    source: 'the fans run through takes as through rests unless it is said otherwise',
  },
  {
    name: 'mic-pattern',
    value: 'omni',
    text: 'omni',
    evidence: 'common-practice',
    source: 'the cautious reading: noise from every side counts in full',
  },
  {
    name: 'equipment-absorption',
    value: 0.05,
    text: '5 %',
    evidence: 'common-practice',
    source: 'a hard smooth surface',
  },
  {
    name: 'equipment-kind',
    value: 'other',
    text: 'other',
    evidence: 'common-practice',
    source: 'nothing is assumed of it',
  },
  { name: 'equipment-tilt', value: 0, text: '0 deg', evidence: 'common-practice', source: 'upright' },
  {
    name: 'maze-angle',
    value: 90,
    text: '90 deg',
    evidence: 'common-practice',
    source: 'boards set square to each other',
  },
  {
    name: 'grille-free-area',
    value: 0.7,
    text: '70 %',
    evidence: 'common-practice',
    source: 'bar grilles leave between a half and four fifths of their face open',
  },
  { name: 'passage-turn', value: 'none', text: 'none', evidence: 'common-practice', source: 'a straight passage' },
  {
    name: 'neighbour-reverberation',
    value: 0.5,
    text: '0.5 s',
    evidence: 'common-practice',
    source: 'a furnished room: the reference reverberation time of dwellings in ISO 16283-1, quoted here from memory',
  },
  {
    name: 'body-heat',
    value: 90,
    text: '90 W',
    evidence: 'published',
    source: 'dry heat of office work at 22 degC, an air-conditioning engineering text, Table 7.16, read second-hand',
  },
  {
    name: 'body-moisture',
    value: 50,
    text: '50 W',
    evidence: 'published',
    source:
      'the rest of the 140 W of office work at 22 degC, an air-conditioning engineering text, Table 7.16, read second-hand',
  },
  {
    name: 'posture',
    value: 'stands',
    text: 'stands',
    evidence: 'common-practice',
    source: 'the cautious reading for the height of the booth',
  },
  {
    name: 'saw-kerf',
    value: 0.003,
    text: '3 mm',
    evidence: 'common-practice',
    source: 'width of the cut of a hand-held circular saw',
  },
  {
    name: 'budget-reserve',
    value: 0,
    text: '0 %',
    evidence: 'common-practice',
    source: 'nothing is kept back unless it is said',
  },
] as const satisfies readonly DefaultEntry[];

export type DefaultName = (typeof defaults)[number]['name'];

const byName = new Map<string, DefaultEntry>(defaults.map((entry) => [entry.name, entry]));

export function defaultOf(name: DefaultName): DefaultEntry {
  return byName.get(name)!;
}
