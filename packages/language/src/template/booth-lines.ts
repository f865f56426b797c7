import { linings } from './build-ups.js';
import { type Box, type Measures, metres } from './measures.js';
import { byDefault, fact, type Given, type SpecLine, started } from './spec-line.js';

export function boothLines(given: Given, { outside, inside }: Measures): readonly SpecLine[] {
  return [
    { text: 'booth cabin {' },
    started(given, 'space', (size) => `outside ${size}`, outside),
    { text: 'walls shell' },
    { text: 'roof shell' },
    { text: 'floor deck' },
    { text: '# stands: not asked for; where it stands in the room is not checked' },
    { text: '' },
    ...liningLines(given),
    ...doorLines(given, inside),
    ...airLines(given),
    ...(given.answers.carry !== undefined
      ? [{ text: 'panels { width 600 mm }  # not asked for: a width to start from', of: 'carry' }]
      : []),
    ...placeLines(given, inside),
    { text: `# contents: not asked for; ${byDefault('contents')}` },
    { text: '}' },
  ];
}

function liningLines(given: Given): readonly SpecLine[] {
  const { lining } = given.answers;
  if (lining === undefined) return [fact(given, 'lining', String, 'the inside is taken to be bare')];
  if (lining === 'none') return [{ text: '# lining: none' }];
  const layers = linings[lining]?.layers.join('; ') ?? lining;
  return [{ text: `lining on walls, roof { ${layers} }`, of: 'lining' }];
}

function doorLines(given: Given, inside: Box | undefined): readonly SpecLine[] {
  const { answers } = given;
  const width = metres(Math.min(0.66, (inside?.width ?? 1) * 0.9));
  const height = metres(Math.min(1.9, (inside?.height ?? 2) * 0.95));
  const leaf = answers.leaf ?? 'same';
  const lines: SpecLine[] = [
    { text: 'door entry on front {', of: 'door' },
    started(given, 'door', (size) => `size ${size}`, `${width} x ${height}`),
    { text: `leaf ${leaf === 'same' ? 'shell' : leaf}`, of: 'leaf' },
  ];
  if (answers.leaf === undefined) lines.push(fact(given, 'leaf', String, 'it is taken to be made like the walls'));
  lines.push(gap(given, 'gap-around', 'perimeter'), gap(given, 'gap-below', 'threshold'));
  lines.push({ text: '# swing and lock: not asked for; say which way it opens and what keeps it shut' }, { text: '}' });
  return lines;
}

/** A wardrobe has no seals, so the gap of a sealed door would be the wrong thing to assume of it. */
function gap(given: Given, name: 'gap-around' | 'gap-below', where: 'perimeter' | 'threshold'): SpecLine {
  const line = (width: string) => `gap ${where} ${width}`;
  if (given.answers.kind === 'wardrobe') return started(given, name, line, '2 mm');
  return fact(given, name, line, byDefault(where === 'perimeter' ? 'door-perimeter-gap' : 'door-threshold-gap'));
}

function airLines(given: Given): readonly SpecLine[] {
  const { air } = given.answers;
  if (air === undefined) return [fact(given, 'air', String, 'no way for air is taken to be there')];
  if (air === 'none') return [{ text: '# air: no way for it' }];
  const duct = 'duct 125 mm; run 1.2 m; lined glass-wool 25 mm; bends 2';
  const note = '# not asked for: ducts to start from';
  const exhaust = { text: `vent exhaust on right { ${duct} }`, of: 'air' };
  if (air === 'openings') return [{ text: note }, { text: `vent intake on left { ${duct} }`, of: 'air' }, exhaust];
  return [
    { text: note },
    { text: 'vent intake on left {', of: 'air' },
    { text: duct.replaceAll('; ', '\n'), of: 'air' },
    started(given, 'fan-flow', (flow) => `fan supply ${flow}`, '10 L/s'),
    { text: '# sound power of the fan: not asked for; its noise is not predicted without it' },
    { text: '}', of: 'air' },
    exhaust,
  ];
}

/** The microphone a little before the middle and the mouth behind it, at the height of a head where there is room. */
function placeLines(given: Given, inside: Box | undefined): readonly SpecLine[] {
  if (inside === undefined) return [];
  const { answers } = given;
  const head = answers.posture === 'sits' ? 1.2 : 1.55;
  const x = metres(inside.width / 2);
  const z = metres(Math.min(head, inside.height * 0.75));
  const noise = answers['mic-noise'];
  const start = '# not asked for: a place to start from';
  const mic = `mic at ${x}, ${metres(inside.depth * 0.4)}, ${z}`;
  return [
    noise === undefined
      ? fact(given, 'mic-noise', String, 'the self-noise of the microphone is left out of what is heard')
      : { text: '' },
    noise === undefined
      ? { text: `${mic}  ${start}`, of: 'mic-place' }
      : { text: `${mic} { self-noise ${noise} }  ${start}`, of: 'mic-noise' },
    { text: `mouth at ${x}, ${metres(inside.depth * 0.6)}, ${z}  ${start}`, of: 'mouth-place' },
  ];
}
