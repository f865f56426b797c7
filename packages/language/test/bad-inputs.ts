export interface BadInput {
  readonly what: string;
  readonly files: string | Record<string, string>;
  /** How many messages it must give; one unless said. */
  readonly mistakes?: number;
}

const layers = (line: string): string => `use catalog\nassembly shell {\n  osb 9 mm\n  ${line}\n}\n`;
const material = (lines: string): string => `material stuff {\n  ${lines}\n}\n`;
const booth = (lines: string, more = ''): string =>
  `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1 m x 1 m x 2 m\n  walls shell; roof shell; floor shell\n  ${lines}\n}\n${more}`;
const door = (lines: string): string => booth(`door entry on front { ${lines} }`);
const site = (lines: string): string => `site {\n  ${lines}\n}\n`;
const session = (line: string): string => `session {\n  ${line}\n}\n`;

const byOutside = (
  layer: string,
  faces = 'walls wall; roof wall; floor wall',
  size = '1.5 m x 1.3 m x 2.1 m',
): string => `use catalog\nassembly wall { ${layer} }\nbooth box {\n  outside ${size}\n  ${faces}\n}\n`;
const doorIn = (size: string): string =>
  booth(`outside 1.1 m x 1.1 m x 2.1 m\n  door entry on front { size ${size}; leaf osb 18 mm }`);

/** What goes wrong when people write specs; the snapshot shows what each is told. */
export const badInputs: readonly BadInput[] = [
  // reading
  { what: 'a value is missing', files: layers('air') },
  { what: 'a character means nothing', files: layers('air 2 $ mm') },
  { what: 'a parenthesis is not closed', files: layers('air (2 mm + 3 mm') },
  { what: 'a block is not closed', files: 'use catalog\nassembly one {\n  osb 9 mm\n\nassembly two { osb 9 mm }\n' },
  { what: 'a block at the end is not closed', files: 'use catalog\nassembly one {\n  osb 9 mm\n' },
  { what: 'a brace too many in a block', files: layers('}\n  osb 9 mm') },
  { what: 'a brace too many behind a block', files: 'use catalog\nassembly one { osb 9 mm }\n}\n' },
  { what: 'the brace is on the next line', files: 'use catalog\nassembly one\n{\n  osb 9 mm\n}\n' },
  { what: 'the block is missing', files: 'session\n' },
  { what: 'a text is not closed', files: 'use catalog\nassembly one "wall {\n  osb 9 mm\n}\n' },
  { what: 'a text stands in other quotes', files: 'assembly one “wall” {\n}\n' },
  { what: 'two values follow each other', files: layers('air 2 mm 3 mm') },
  { what: 'a decimal comma', files: layers('air 0,9 mm') },
  { what: 'a number without its zero', files: layers('air .9 mm') },
  { what: 'a mixed number with a blank', files: layers('osb 2 1/2 in') },
  { what: 'a minus without blanks', files: 'let a = 9 mm\nlet b = a -2 mm\n' },
  { what: 'a unit that does not exist', files: layers('osb 9 furlongs') },
  { what: 'a misspelt unit', files: layers('osb 9 mmm') },
  { what: 'a unit with a wrong part', files: layers('osb 9 kg/sqm') },
  { what: 'a misspelt keyword', files: material('kind porous; densty 5 kg/m3; resistivity 5 kPa.s/m2') },
  { what: 'a misspelt block', files: 'assembli shell {\n  osb 9 mm\n}\n' },
  { what: 'a fact in the wrong block', files: session('walls shell') },
  { what: 'a word out of a list is misspelt', files: session('effort rised') },
  { what: 'a value without let', files: 'gap = 6 mm\n' },
  { what: 'a size of one length', files: site('doorway 760 mm') },
  { what: 'a size without units', files: site('doorway 2x4') },
  { what: 'bands without a grid', files: site('noise tram 63 Hz 58 dB, 125 Hz 52 dB') },
  { what: 'bands without a comma', files: site('noise tram octave 63 Hz 58 dB 125 Hz 52 dB') },
  { what: 'a reading without a shape', files: site('noise tram 64 dBA') },
  { what: 'a requirement the wrong way round', files: 'require co2 >= 1000 ppm\n' },
  { what: 'a requirement that does not exist', files: 'require room-ton <= 20 dBA\n' },
  { what: 'a comment without a blank', files: layers('osb 9 mm# thin') },
  { what: 'a misspelt sort of source', files: material('kind limp; density 2000 kg/m3 from publishd "a book"') },
  { what: 'an empty file', files: '' },
  { what: 'a file that is no text', files: 'GIF\u0000\u0001' },
  { what: 'the second word of a fact alone', files: door('size 700 mm x 1900 mm; leaf osb 18 mm; threshold 2 mm') },
  { what: 'a fact with a sign', files: booth('left = shell') },
  { what: 'a colon', files: layers('osb: 9 mm') },
  { what: 'a comma between facts', files: layers('osb 9 mm, air 3 mm') },
  { what: 'an unknown layer with an unknown value', files: layers('cloth open-weave') },
  { what: 'a wall of two materials', files: booth('left osb on rubber-mat 6 mm') },
  // units
  { what: 'a layer with a mass per volume', files: layers('osb 5 kg/m3') },
  { what: 'a gap with a mass per area', files: layers('air 5 kg/m2') },
  { what: 'a thickness without a unit', files: layers('osb 12') },
  { what: 'a stud without a unit', files: layers('frame 45 mm x 70 every 600 mm') },
  { what: 'a sum of a length and a mass', files: layers('air 5 mm + 3 kg') },
  { what: 'a difference of a length and a number', files: layers('air 5 mm - 3') },
  { what: 'a product that is no length', files: layers('air 5 mm * 3 mm') },
  { what: 'a sum of levels', files: 'let noise-sum = 50 dB + 50 dB\n' },
  { what: 'a sum of temperatures', files: 'let warm = 20 degC + 3 degC\n' },
  { what: 'a division by zero', files: 'let none = 5 mm / 0\n' },
  { what: 'a tolerance of a level in percent', files: site('noise tram 64 dBA ± 10 % like road-traffic') },
  { what: 'a tolerance of another sort', files: layers('osb 9 mm ± 2 kg') },
  { what: 'a share without percent', files: site('humidity 50') },
  { what: 'a level with the wrong weighting', files: session('voice -20 dB') },
  { what: 'a loudness where a time belongs', files: session('length 90 dB') },
  { what: 'a price without a currency', files: 'budget {\n  item latch 4 at 3.20\n}\n' },
  // names
  { what: 'a material that is not there', files: layers('gypsm-board 12 mm') },
  { what: 'a material without the catalogue', files: 'assembly shell { osb 9 mm }\n' },
  { what: 'a value that is not there', files: 'let gap = 3 mm\nuse catalog\nassembly shell { air gp; osb 9 mm }\n' },
  {
    what: 'an assembly that is not there',
    files: 'use catalog\nassembly shell { osb 9 mm }\nrequire stc of shel >= 40\n',
  },
  { what: 'an assembly as a layer', files: 'use catalog\nassembly one { osb 9 mm }\nassembly two { one 9 mm }\n' },
  { what: 'a material as a wall', files: booth('left osb') },
  {
    what: 'a noise that is not there',
    files: 'site { noise tram 64 dBA like road-traffic }\nrequire isolation >= 30 dB against tran\n',
  },
  { what: 'a name twice', files: 'use catalog\nassembly shell { osb 9 mm }\nassembly shell { osb 12 mm }\n' },
  {
    what: 'a value and an assembly of one name',
    files: 'use catalog\nlet shell = 9 mm\nassembly shell { osb 9 mm }\n',
  },
  {
    what: 'an opening twice',
    files: booth('hole a on back { diameter 20 mm; depth 50 mm }\n  hole a on left { diameter 20 mm; depth 50 mm }'),
  },
  { what: 'a fact twice', files: session('people 1\n  people 2') },
  { what: 'a site twice', files: 'site { humidity 40 % }\nsite { humidity 50 % }\n' },
  { what: 'values that define each other', files: 'let a = b * 2\nlet b = a / 2\n' },
  { what: 'a value that defines itself', files: 'let a = a + 1 mm\n' },
  { what: 'an assembly that nothing is like', files: 'require stc of shell >= 40\n' },
  // files
  { what: 'a file outside the workspace', files: 'use "../other.booth"\n' },
  { what: 'a file by address', files: 'use "https://example.org/a.booth"\n' },
  { what: 'a file by absolute path', files: 'use "/home/a.booth"\n' },
  { what: 'a file with a drive', files: 'use "C:/a.booth"\n' },
  { what: 'a file with a backslash', files: 'use "parts\\a.booth"\n' },
  { what: 'a file that is not there', files: 'use "a.booth"\nassembly shell { mine 9 mm }\n' },
  { what: 'files in a circle', files: { 'a.booth': 'use "b.booth"\n', 'b.booth': 'use "a.booth"\n' } },
  // missing
  { what: 'a material without its kind', files: material('density 5 kg/m3') },
  { what: 'a panel without its modulus', files: material('kind panel; density 500 kg/m3') },
  { what: 'a board without a thickness', files: layers('gypsum-board') },
  { what: 'a limp sheet without a mass', files: layers('limp-sheet') },
  {
    what: 'a cloth without any mass',
    files: 'material net { kind cloth; flow-resistance 20 Pa.s/m }\nassembly shell { net }\n',
  },
  { what: 'an assembly without layers', files: 'assembly shell {\n}\n' },
  { what: 'a door without a leaf', files: door('size 700 mm x 1900 mm') },
  {
    what: 'a booth without a size',
    files: 'use catalog\nassembly shell { osb 9 mm }\nbooth box { walls shell; roof shell; floor shell }\n',
  },
  {
    what: 'a booth without a roof',
    files: 'use catalog\nassembly shell { osb 9 mm }\nbooth box { inside 1 m x 1 m x 2 m; walls shell; floor shell }\n',
  },
  // sense
  { what: 'a thickness of nothing', files: layers('gypsum-board 0 mm') },
  { what: 'a board of metres', files: layers('gypsum-board 12.5 m') },
  { what: 'a sheet of tonnes', files: layers('limp-sheet 1 t/m2') },
  { what: 'a negative gap', files: layers('air -5 mm') },
  { what: 'a density no material has', files: material('kind limp; density 30000 kg/m3') },
  { what: 'an unusual density', files: material('kind porous; density 900 kg/m3; resistivity 5 kPa.s/m2') },
  {
    what: 'a Poisson ratio that cannot be',
    files: material('kind panel; density 500 kg/m3; modulus 3 GPa; poisson 0.7'),
  },
  {
    what: 'a loss factor that cannot be',
    files: material('kind panel; density 500 kg/m3; modulus 3 GPa; loss-factor 5'),
  },
  { what: 'an unusual resistivity', files: material('kind porous; density 40 kg/m3; resistivity 12 Pa.s/m2') },
  { what: 'studs that touch', files: layers('frame 45 mm x 70 mm every 45 mm') },
  { what: 'nominal lumber that does not exist', files: layers('frame 3x5 every 400 mm') },
  {
    what: 'a fill that does not fit',
    files: layers('frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 100 mm }'),
  },
  { what: 'a board as a fill', files: layers('frame 45 mm x 70 mm every 600 mm { fill osb 9 mm }') },
  { what: 'lumber as a layer', files: layers('softwood 20 mm') },
  { what: 'a frame of board', files: layers('frame 45 mm x 70 mm every 600 mm of osb') },
  { what: 'a duct lined with board', files: booth('vent a on left { duct 100 mm; run 1 m; lined osb 9 mm }') },
  { what: 'a window of wool', files: booth('window w on left { size 400 mm x 400 mm; pane mineral-wool-40 50 mm }') },
  { what: 'a band that does not exist', files: site('noise tram octave 63 Hz 58 dB, 130 Hz 52 dB') },
  { what: 'a band twice', files: site('noise tram octave 63 Hz 58 dB, 63 Hz 52 dB') },
  {
    what: 'an inside larger than the outside',
    files:
      'use catalog\nassembly shell { osb 50 mm }\nbooth box { outside 1 m x 2 m x 3 m; inside 1.1 m x 1.9 m x 2.9 m; walls shell; roof shell; floor shell }\n',
  },
  { what: 'sizes and layers that disagree', files: booth('outside 1.1 m x 1.15 m x 2.1 m') },
  { what: 'a door larger than its face', files: door('size 1.2 m x 1.9 m; leaf osb 18 mm') },
  { what: 'a door beyond its face', files: door('size 700 mm x 1900 mm; offset 500 mm; leaf osb 18 mm') },
  {
    what: 'doors that overlap',
    files: booth(
      'door a on left { size 500 mm x 1900 mm; offset 50 mm; leaf osb 18 mm }\n  door b on left { size 400 mm x 1900 mm; offset 500 mm; leaf osb 18 mm }',
    ),
  },
  { what: 'a microphone outside the booth', files: booth('mic at 0.5 m, 1.5 m, 1.2 m') },
  {
    what: 'a duct larger than its face',
    files: booth('vent a on left { duct 1.2 m x 100 mm; run 1 m }').replace('inside 1 m x 1 m', 'inside 1 m x 1.1 m'),
    mistakes: 2,
  },
  { what: 'a hole larger than its face', files: booth('hole h on roof { diameter 1.1 m; depth 50 mm }') },
  {
    what: 'linings that fill the booth',
    files: booth('lining on left, right { mineral-wool-60 400 mm; mineral-wool-60 100 mm }'),
  },
  { what: 'a range the wrong way round', files: 'require reverberation within 0.2 s .. 0.1 s from 160 Hz\n' },
  { what: 'bands the wrong way round', files: 'require reverberation within 0.1 s .. 0.2 s from 4 kHz to 160 Hz\n' },
  { what: 'a requirement at no band', files: 'require reverberation <= 0.3 s at 130 Hz\n' },
  { what: 'a change of what a missing file may declare', files: 'use "nope.booth"\nvariant v { gap = 3 mm }\n' },
  { what: 'nobody inside', files: session('people 0') },
  { what: 'a part of a person', files: session('people 1.5') },
  { what: 'a fan without a way out', files: booth('vent a on left { duct 100 mm; run 1 m; fan 10 L/s }') },
  { what: 'currencies mixed', files: 'budget {\n  item a 1 at 3 EUR\n  item b 1 at 3 USD\n}\n' },
  // variants
  { what: 'a variant of nothing that is there', files: 'let gap = 3 mm\nvariant v { gpa = 4 mm }\n' },
  { what: 'a variant with another sort of value', files: 'let gap = 3 mm\nvariant v { gap = 4 kg }\n' },
  { what: 'a variant of a whole booth', files: booth('contents 3 kg', 'variant v { box = 4 kg }\n') },
  { what: 'a variant of a misspelt fact', files: booth('contents 3 kg', 'variant v { box.contnts = 4 kg }\n') },
  {
    what: 'a variant of a fact of two parts',
    files: booth('door d on front { size 700 mm x 1900 mm; leaf osb 18 mm }', 'variant v { box.d.gap = 4 mm }\n'),
  },
  {
    what: 'a variant of an opening',
    files: booth('door d on front { size 700 mm x 1900 mm; leaf osb 18 mm }', 'variant v { box.d = 4 mm }\n'),
  },
  { what: 'a variant of a layer', files: booth('', 'variant v { shell.osb = 4 mm }\n') },
  { what: 'a variant with a value missing', files: 'let gap = 3 mm\nvariant v { gap = }\n' },
  {
    what: 'a variant whose value has a wrong unit',
    files: booth('contents 3 kg', 'variant v { box.contents = 4 mm }\n'),
  },
  {
    what: 'a variant that makes sizes disagree',
    files:
      'use catalog\nlet t = 50 mm\nassembly shell { osb t }\nbooth box { outside 1.1 m x 1.1 m x 2.1 m; inside 1 m x 1 m x 2 m; walls shell; roof shell; floor shell }\nvariant thick { t = 60 mm; box.outside.width = 1.12 m; box.outside.depth = 1.12 m }\n',
  },
  { what: 'a requirement in a variant', files: 'let gap = 3 mm\nvariant v { gap = 4 mm; require co2 <= 900 ppm }\n' },
  { what: 'a change without its sign', files: 'let gap = 3 mm\nvariant v { gap 4 mm }\n' },
  { what: 'a variant twice', files: 'let gap = 3 mm\nvariant v { gap = 4 mm }\nvariant v { gap = 5 mm }\n' },
  { what: 'a variant that changes nothing', files: 'let gap = 3 mm\nvariant v { }\n' },
  // an error elsewhere does not make the inside missing
  { what: 'a layer that cannot be read, and a booth by its outside', files: byOutside('osb 18 furlongs') },
  {
    what: 'a misspelt wall, and a booth by its outside',
    files: byOutside('osb 18 mm', 'walls wal; roof wall; floor wall'),
  },
  {
    what: 'an outside with a comma, and no inside',
    files: byOutside('osb 18 mm', undefined, '1,5 m x 1.2 m x 2.1 m'),
  },
  {
    what: 'a booth without an inside and a floor',
    files: byOutside('osb 18 mm', 'walls wall; roof wall'),
  },
  { what: 'layers that fill the booth', files: byOutside('osb 800 mm'), mistakes: 2 },
  // commas
  { what: 'a comma between thousands or a decimal comma', files: 'budget {\n  item sheet 1 at 1,500 EUR\n}\n' },
  { what: 'a size with an ambiguous comma', files: site('doorway 760 mm x 1,850 mm') },
  { what: 'commas between thousands', files: 'require cost <= 1,234,500.50 EUR\n' },
  { what: 'three decimal commas', files: site('room 1,5 m x 1,3 m x 2,1 m'), mistakes: 3 },
  // inches and lumber
  { what: 'an inch sign', files: layers('osb 1/2"') },
  { what: 'an inch sign behind a mixed number', files: layers('osb 1 1/2"') },
  { what: 'a size in inch signs', files: site('doorway 30" x 78"') },
  { what: 'feet and inches in signs', files: site('doorway 2\'2" x 6\'6"') },
  { what: 'a curved inch sign', files: layers('osb 1/2”') },
  { what: 'a fraction in one character', files: layers('osb ½ in') },
  { what: 'a mixed number with a fraction in one character', files: layers('osb 1½ in') },
  { what: 'nominal lumber with blanks', files: layers('frame 2 x 4 every 16 in') },
  { what: 'nominal lumber with inch signs', files: layers('frame 2"x4" every 16 in { fill mineral-wool-40 89 mm }') },
  { what: 'nominal lumber with a capital', files: layers('frame 2X4 every 16 in') },
  { what: 'nominal lumber with an inch sign', files: layers('frame 2x4" every 16 in') },
  // braces
  { what: 'a header without its brace', files: 'use catalog\nassembly base "floor"\n  osb 18 mm\n}\n' },
  {
    what: 'a header in a block without its brace',
    files: door('').replace(' {  }', '\n  size 700 mm x 1900 mm\n  leaf osb 18 mm\n  }'),
  },
  {
    what: 'a let in a block',
    files: 'site {\n  humidity 40 %\n  let span = 3 m\n  room span x span x 2.4 m\n}\nlet twice = span * 2\n',
  },
  { what: 'a let in a variant', files: 'let gap = 3 mm\nvariant v {\n  let gap = 4 mm\n}\n' },
  { what: 'a block without any brace', files: 'use catalog\nassembly one\n  osb 18 mm\n\nassembly two { osb 9 mm }\n' },
  // words of the trade
  { what: 'plasterboard', files: layers('plasterboard 12.5 mm') },
  { what: 'stone wool in a frame', files: layers('frame 2x4 every 400 mm { fill stone-wool 89 mm }') },
  { what: 'pine as a layer', files: layers('pine 18 mm') },
  { what: 'pine as a stud', files: layers('frame 2x4 every 400 mm of pine') },
  { what: 'a door leaf of lumber', files: door('size 700 mm x 1900 mm; leaf softwood 40 mm') },
  {
    what: 'many materials without the catalogue',
    files: 'assembly shell {\n  osb 9 mm\n  drywall 12 mm\n  mineral-wool-40 50 mm\n  osb 9 mm\n}\n',
  },
  // signs of elsewhere
  { what: 'a euro sign before a price', files: 'budget {\n  item latch 4 at €18\n}\n' },
  { what: 'a euro sign behind a price', files: 'budget {\n  item latch 4 at 18 €\n}\n' },
  { what: 'a dollar sign', files: 'require cost <= $1800\n' },
  {
    what: 'comments of another language',
    files: '// my booth\nuse catalog\nassembly shell { // wall\n  osb 9 mm // thin\n}\n',
  },
  { what: 'a weighting in parentheses', files: site('noise tram 55 dB(A) like road-traffic') },
  { what: 'a lining on a wall', files: booth('lining on wall { mineral-wool-60 50 mm }') },
  { what: 'a door on a wall', files: booth('door entry on wall { size 700 mm x 1900 mm; leaf osb 18 mm }') },
  { what: 'a vent on the ceiling', files: booth('vent a on ceiling { duct 100 mm; run 1 m }') },
  { what: 'a tolerance with plus and minus', files: layers('osb 9 mm +- 0.2 mm') },
  // limits that cannot be
  { what: 'a floor load in mass per area', files: 'require floor-load <= 200 kg/m2\n' },
  { what: 'a floor limit in mass per area', files: site('floor timber limit 200 kg/m2') },
  { what: 'a booth of kilometres', files: byOutside('osb 18 mm', undefined, '1500 m x 1.2 m x 2.1 m') },
  { what: 'a room of kilometres', files: site('room 3600 m x 3.1 m x 2.4 m') },
  { what: 'a door higher than the inside', files: doorIn('900 mm x 2050 mm') },
  { what: 'a door wider than the inside', files: doorIn('1020 mm x 1900 mm') },
  { what: 'a noise criterion without a curve', files: 'require room-tone <= NC 10\n' },
  {
    what: 'a fan without a way out and variants',
    files: booth(
      'vent a on left { duct 100 mm; run 1 m; fan 10 L/s }',
      'let gap = 3 mm\nvariant v { gap = 4 mm }\nvariant w { box.contents = 30 kg }\nvariant u { box.a.run = 2 m }\nvariant t { box.a.fan = 12 L/s }\n',
    ),
  },
  // surroundings and hours
  { what: 'an hour that no day has', files: site('noise tram 60 dBA like pink { hours 25:00 to 6:00 }') },
  { what: 'minutes that no hour has', files: site('noise tram 60 dBA like pink { hours 6:70 to 8:00 }') },
  { what: 'an hour with a unit', files: site('noise tram 60 dBA like pink { hours 6 h to 8 h }') },
  { what: 'an hour of half a day', files: session('starts 1:30 pm') },
  { what: 'hours with a dash', files: site('noise tram 60 dBA like pink { hours 06:00-22:00 }') },
  { what: 'a neighbour with nothing between', files: site('neighbour nursery above { area 11 m2 }') },
  {
    what: 'a misspelt neighbour',
    files: `${site('neighbour nursery above { loss octave 125 Hz 30 dB }')}require voice-outside <= 27 dBA in nursry\n`,
  },
  {
    what: 'a neighbour where there is none',
    files: 'require voice-outside <= 27 dBA in nursery\n',
  },
  { what: 'a neighbour on no side', files: site('neighbour flat next { loss octave 125 Hz 30 dB }') },
  {
    what: 'two passages of one name',
    files: site('passage stair { width 0.8 m }\n  passage stair { width 0.9 m }'),
  },
  { what: 'a passage that nobody passes', files: site('passage stair { width 80 mm }') },
  {
    what: 'an obstacle outside the room',
    files: site('room 4 m x 3 m x 2.4 m\n  obstacle pipe at 0 m, 0 m, 2.35 m { size 4 m x 80 mm x 100 mm }'),
  },
  { what: 'a take longer than its session', files: session('length 20 min; take 30 min rest 5 min') },
  { what: 'a rise in degrees Celsius', files: 'require temperature-rise <= 4 degC\n' },
  { what: 'a ratio at no band', files: 'require decay-ratio <= 2\n' },
  { what: 'an item of an unknown material', files: 'use catalog\nbudget { item a for obs 18 mm 7 at 38 EUR }\n' },
  { what: 'an item without a price', files: 'budget { item a 7 }\n' },
];
