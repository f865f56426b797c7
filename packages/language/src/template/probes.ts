/** A small text around an answer, that has an error exactly when the answer cannot stand there. */
export interface Probe {
  readonly text: (answer: string) => string;
  readonly isSize?: boolean;
}

const inSite = (line: (answer: string) => string): Probe => ({ text: (answer) => `site {\n${line(answer)}\n}` });
const inSession = (word: string): Probe => ({ text: (answer) => `session {\n${word} ${answer}\n}` });
const outside = (line: (answer: string) => string): Probe => ({ text: (answer) => `use catalog\n${line(answer)}` });
/** Large enough for whatever opens in it; how it fits the booth at hand shows in the whole text. */
const inBooth = (line: (answer: string) => string): Probe => ({
  text: (answer) =>
    `use catalog\nassembly wall { particle-board 18 mm }\nbooth cabin {\noutside 30 m x 30 m x 30 m\nwalls wall; roof wall; floor wall\n${line(answer)}\n}`,
});
const door = (facts: (answer: string) => string): Probe =>
  inBooth((answer) => `door entry on front {\n${facts(answer)}\n}`);

const probes: Readonly<Record<string, Probe>> = {
  room: { ...inSite((answer) => `room ${answer}`), isSize: true },
  doorway: { ...inSite((answer) => `doorway ${answer}`), isSize: true },
  'floor-limit': outside((answer) => `site { floor timber limit ${answer} }\nrequire floor-load <= ${answer}`),
  noise: inSite((answer) => `noise outside ${answer} like road-traffic`),
  'noise-hours': inSite((answer) => `noise outside 50 dBA like road-traffic { hours ${answer} }`),
  between: outside((answer) => `assembly separation { ${answer} }`),
  'neighbour-limit': outside((answer) => `require voice-outside <= ${answer}`),
  space: {
    ...outside(
      (answer) =>
        `assembly wall { hardboard 1 mm }\nbooth cabin {\noutside ${answer}\nwalls wall; roof wall; floor wall\n}`,
    ),
    isSize: true,
  },
  walls: outside((answer) => `assembly shell { ${answer} }`),
  lining: inBooth((answer) => `lining on walls { ${answer} }`),
  door: { ...door((answer) => `size ${answer}\nleaf wall`), isSize: true },
  leaf: door((answer) => `size 660 mm x 1900 mm\nleaf ${answer}`),
  'gap-below': door((answer) => `size 660 mm x 1900 mm\nleaf wall\ngap threshold ${answer}`),
  'gap-around': door((answer) => `size 660 mm x 1900 mm\nleaf wall\ngap perimeter ${answer}`),
  'fan-flow': inBooth(
    (answer) =>
      `vent intake on left { duct 125 mm; run 1.2 m; fan supply ${answer} }\nvent exhaust on right { duct 125 mm; run 1.2 m }`,
  ),
  people: inSession('people'),
  length: inSession('length'),
  starts: inSession('starts'),
  stature: inSession('stature'),
  'mic-noise': inBooth((answer) => `mic at 1 m, 1 m, 1 m { self-noise ${answer} }`),
  'room-tone': outside((answer) => `require room-tone <= ${answer}`),
  carry: outside((answer) => `require panel-weight <= ${answer}`),
  budget: outside((answer) => `require cost <= ${answer}`),
};

/** Undefined for what is not written in the language, such as a title. */
export function probeOf(name: string): Probe | undefined {
  return Object.hasOwn(probes, name) ? probes[name] : undefined;
}
