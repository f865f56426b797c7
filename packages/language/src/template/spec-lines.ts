import { boothLines } from './booth-lines.js';
import { separations, wallBuildUps } from './build-ups.js';
import type { Box, Measures } from './measures.js';
import { byDefault, fact, type Given, type SpecLine, started } from './spec-line.js';

/** The lines of a first spec, from top to bottom; the formatter lays them out. */
export function specLines(given: Given, measures: Measures): readonly SpecLine[] {
  const titles: Readonly<Record<string, string>> = {
    booth: '# A booth as it stands, described from what was measured.',
    wardrobe: '# A wardrobe as it stands, described from what was measured.',
  };
  return [
    { text: titles[given.answers.kind ?? ''] ?? '# A booth to be built, described from what was measured.' },
    { text: '# Where something is "not stated", write the line in its place as soon as you know.' },
    { text: '' },
    { text: 'use catalog  # the materials that ship with the language' },
    { text: '' },
    ...assemblyLines(given),
    ...siteLines(given, measures.room),
    { text: '' },
    ...boothLines(given, measures),
    { text: '' },
    ...sessionLines(given),
    { text: '' },
    ...requirementLines(given),
  ];
}

function assemblyLines(given: Given): readonly SpecLine[] {
  const { kind, walls, between, neighbour } = given.answers;
  const floor = kind === 'wardrobe' ? 'particle-board 18 mm' : 'rubber-mat 6 mm; softwood-plywood 18 mm';
  return [
    { text: 'assembly shell "walls and roof" {  # layers from outside to inside' },
    ...layerLines(given, 'walls', walls, kind === 'wardrobe' ? 'one-board' : 'timber-frame'),
    { text: '}' },
    { text: '' },
    { text: 'assembly deck "floor" {' },
    { text: `# not asked for: a floor to start from\n${floor}` },
    { text: '}' },
    { text: '' },
    ...(neighbour !== undefined && neighbour !== 'none' && between !== undefined
      ? [
          { text: 'assembly separation "between the room and the neighbour" {', of: 'between' },
          { text: separations[between]?.layers.join('\n') ?? between, of: 'between' },
          { text: '}', of: 'between' },
          { text: '' },
        ]
      : []),
  ];
}

function layerLines(given: Given, name: string, answer: string | undefined, start: string): readonly SpecLine[] {
  const layers = wallBuildUps[answer ?? start]?.layers.join('\n');
  if (answer !== undefined) return [{ text: layers ?? answer, of: name }];
  return [fact(given, name, String, 'a build-up to start from'), { text: layers ?? '' }];
}

function siteLines(given: Given, room: Box | undefined): readonly SpecLine[] {
  const { answers } = given;
  const { title, floor } = answers;
  return [
    title === undefined ? { text: 'site {' } : { text: `site "${title}" {`, of: 'title' },
    fact(given, 'room', (room) => `room ${room}`, 'whether everything fits the room is not checked'),
    { text: `# reverberation: not asked for; ${byDefault('room-reverberation')}` },
    fact(given, 'doorway', (size) => `doorway ${size}`, 'whether panels pass is not checked'),
    floor !== undefined && answers['floor-limit'] !== undefined
      ? { text: `floor ${floor} limit ${answers['floor-limit']}`, of: 'floor-limit' }
      : fact(given, 'floor', (kind) => `floor ${kind}`, 'what carries the booth is not known'),
    ...noiseLines(given),
    ...neighbourLines(given, room),
    ...flameLines(given),
    { text: '}' },
  ];
}

function noiseLines(given: Given): readonly SpecLine[] {
  const { answers } = given;
  const shape = answers['noise-kind'] ?? 'road-traffic';
  const hours = answers['noise-hours'];
  const block = hours === undefined ? '' : ` { hours ${hours} }`;
  const noise = started(given, 'noise', (level) => `noise outside ${level} like ${shape}`, '50 dBA');
  const lines: SpecLine[] = [];
  if (answers['noise-kind'] === undefined)
    lines.push(fact(given, 'noise-kind', String, 'the shape of road traffic stands in'));
  if (hours === undefined) {
    lines.push(fact(given, 'noise-hours', String, 'the noise is taken to be there at any hour'), noise);
  } else {
    const at = noise.text.indexOf('  #');
    const text = at < 0 ? noise.text + block : noise.text.slice(0, at) + block + noise.text.slice(at);
    lines.push({ text, of: 'noise-hours' });
  }
  if (answers.footsteps === 'yes') lines.push({ text: 'impact footsteps "through the building"', of: 'footsteps' });
  if (answers.footsteps === undefined)
    lines.push(fact(given, 'footsteps', String, 'an `impact` line names what comes through the building'));
  return lines;
}

function neighbourLines(given: Given, room: Box | undefined): readonly SpecLine[] {
  const { neighbour, between } = given.answers;
  if (neighbour === undefined)
    return [fact(given, 'neighbour', String, 'what others hear of the voice is not worked out')];
  if (neighbour === 'none') return [];
  return [
    { text: `neighbour next-door "who must not hear the voice" ${neighbour} {`, of: 'neighbour' },
    between === undefined
      ? fact(given, 'between', String, 'the voice there is not assessed')
      : { text: 'through separation', of: 'between' },
    { text: `# reverberation: not asked for; ${byDefault('neighbour-reverberation')}` },
    ...roomNextDoor(neighbour, room),
    { text: '}', of: 'neighbour' },
  ];
}

/** Most rooms lie beside and above rooms of about their own size; a tape measure says better. */
function roomNextDoor(where: string, room: Box | undefined): readonly SpecLine[] {
  if (room === undefined) return [{ text: '# area and volume: not known without `room`; the voice there needs both' }];
  const { width, depth, height } = room;
  const area = where === 'beside' ? depth * height : width * depth;
  const note = '# not asked for: as large as this room, to start from';
  return [
    { text: `area ${Math.max(0.1, area).toFixed(1)} m2  ${note}`, of: 'room' },
    { text: `volume ${Math.max(0.1, width * depth * height).toFixed(1)} m3  ${note}`, of: 'room' },
  ];
}

function flameLines(given: Given): readonly SpecLine[] {
  const { flame } = given.answers;
  const where = given.answers['flame-place'];
  if (flame === 'none') return [];
  if (flame === undefined)
    return [fact(given, 'flame', String, 'look whether a boiler or a stove burns nearby and say so by `appliance`')];
  return [
    where === undefined
      ? { text: `appliance burner ${flame}`, of: 'flame' }
      : { text: `appliance burner ${flame} ${where}`, of: 'flame-place' },
  ];
}

function sessionLines(given: Given): readonly SpecLine[] {
  const { answers } = given;
  return [
    { text: 'session {' },
    fact(given, 'people', (count) => `people ${count}`, byDefault('people')),
    fact(given, 'voice', (effort) => `effort ${effort}`, byDefault('effort')),
    fact(given, 'length', (time) => `length ${time}`, byDefault('session-length')),
    fact(given, 'starts', (time) => `starts ${time}`, 'noises with hours are all taken to fall into the session'),
    fact(given, 'stature', (height) => `stature ${height}`, 'whether the performer fits is not checked'),
    ...(answers.posture === undefined
      ? [fact(given, 'posture', String, byDefault('posture'))]
      : [{ text: `posture ${answers.posture}`, of: 'posture' }]),
    { text: '}' },
  ];
}

function requirementLines(given: Given): readonly SpecLine[] {
  const { answers } = given;
  const toNeighbour = answers['neighbour-limit'];
  const floorLimit = answers['floor-limit'];
  return [
    { text: '# What it must achieve; each line says whether it does.' },
    started(given, 'room-tone', (level) => `require room-tone <= ${level}`, '20 dBA'),
    { text: 'require co2 <= 1000 ppm  # not asked for: a value to start from' },
    ...(toNeighbour !== undefined
      ? [{ text: `require voice-outside <= ${toNeighbour} in next-door`, of: 'neighbour-limit' }]
      : []),
    ...(floorLimit !== undefined ? [{ text: `require floor-load <= ${floorLimit}`, of: 'floor-limit' }] : []),
    fact(given, 'carry', (mass) => `require panel-weight <= ${mass}`, 'no panel is held against what people can carry'),
    fact(given, 'budget', (money) => `require cost <= ${money}`, 'nothing is held against a budget'),
    ...(answers.budget !== undefined
      ? [
          { text: '', of: 'budget' },
          { text: 'budget {', of: 'budget' },
          {
            text: `# One line for each thing to buy, such as: item boards "12 mm plywood" 7 at 38.00 ${/[A-Z]{3}/.exec(answers.budget)?.[0] ?? 'EUR'}`,
            of: 'budget',
          },
          { text: `# reserve: not asked for; ${byDefault('budget-reserve')}`, of: 'budget' },
          { text: '}', of: 'budget' },
        ]
      : []),
  ];
}
