import { type BadInput, booth, layers, material, session, site } from './bad-input.js';

const room = (lines: string): string => site(`room 4 m x 3 m x 2.4 m\n  ${lines}`);
const vent = (lines: string, more = ''): string =>
  booth(`vent in on left { duct 125 mm; run 1 m; ${lines} }\n  vent out on right { duct 125 mm; run 1 m }`, more);
const inRoom = (lines: string): string =>
  `${room('humidity 50 %')}${booth(`outside 1.1 m x 1.1 m x 2.1 m\n  ${lines}`)}`;
const framed = (line: string, more = ''): string =>
  `${more}use catalog\nassembly shell {\n  osb 9 mm\n  ${line}\n  osb 9 mm\n}\n`;

/** What goes wrong around the wall: the room, the air, what stands inside, panels, hours, takes, shopping, variants. */
export const wholeBoothInputs: readonly BadInput[] = [
  {
    what: 'a mouth farther from the microphone than stated',
    files: booth('mouth at 0.5 m, 0.8 m, 1.2 m\n  mic at 0.5 m, 0.3 m, 1.2 m { distance 150 mm }'),
  },
  // frames and boards
  { what: 'studs of board', files: framed('frame 35 mm x 75 mm every 600 mm of steel-sheet') },
  { what: 'studs of steel by another name', files: framed('frame 35 mm x 75 mm every 600 mm of steel') },
  { what: 'channels without a stiffness', files: framed('frame 2x4 every 600 mm\n  channels 16 mm every 400 mm') },
  { what: 'channels without a frame', files: framed('channels 16 mm every 400 mm stiffness 150 N/mm') },
  {
    what: 'clips without a board',
    files: layers('frame 2x4 every 600 mm\n  clips 16 mm every 400 mm stiffness 150 N/mm'),
  },
  {
    what: 'a stiffness of a clip in weight',
    files: framed('frame 2x4 every 600 mm\n  clips 16 mm every 400 mm stiffness 15 kg/mm'),
  },
  { what: 'screws in timber', files: framed('frame 2x4 every 600 mm { screws 300 mm }') },
  {
    what: 'a stud folded from a plate',
    files: framed(
      'frame 35 mm x 75 mm every 600 mm of thick',
      'material thick { kind lumber; density 7850 kg/m3; gauge 20 mm }\n',
    ),
    mistakes: 2,
  },
  {
    what: 'a grain that is stiffer across',
    files: material('kind panel; density 500 kg/m3; modulus 0.6 GPa; modulus-across 11 GPa'),
  },
  {
    what: 'a grain of wool',
    files: material('kind porous; density 40 kg/m3; resistivity 10 kPa.s/m2; modulus-across 1 GPa'),
  },
  // the room and what is around it
  { what: 'a cold surface that is warm', files: room('temperature 18 degC; cold-surface 25 degC') },
  { what: 'joists along a wall', files: room('joists along left') },
  { what: 'an alarm without a weighting', files: room('alarm 85 dB') },
  { what: 'fresh air in people', files: room('fresh-air 2') },
  { what: 'occupants without fresh air', files: room('occupants 2') },
  {
    what: 'occupants beside the air that is stated',
    files: `${room('fresh-air 6 L/s; occupants 2')}${session('supply-air 700 ppm')}`,
  },
  {
    what: 'occupants of a room of no size',
    files: site('fresh-air 6 L/s; occupants 2'),
  },
  { what: 'half an occupant', files: room('occupants 0.5') },
  { what: 'a negative occupant', files: room('occupants -1') },
  { what: 'an appliance that burns nothing known', files: room('appliance boiler gas') },
  { what: 'an appliance somewhere', files: room('appliance boiler open-flued kitchen') },
  { what: 'a passage without a width', files: room('passage stair { headroom 1.9 m }') },
  { what: 'a passage with a misspelt fact', files: room('passage stair { width 0.8 m; hedroom 1.9 m }') },
  { what: 'a turn that no stair has', files: room('passage stair { width 0.8 m; turn full }') },
  { what: 'an obstacle without a place', files: room('obstacle pipe { size 4 m x 80 mm x 100 mm }') },
  { what: 'an obstacle of two lengths', files: room('obstacle pipe at 0 m, 0 m { size 1 m x 1 m x 1 m }') },
  { what: 'an obstacle without a size', files: room('obstacle pipe at 0 m, 0 m, 1 m { }') },
  { what: 'an obstacle in no room', files: site('obstacle pipe at 0 m, 0 m, 1 m { size 1 m x 1 m x 1 m }') },
  {
    what: 'a neighbour with two things between',
    files: `use catalog\nassembly floor-above { osb 18 mm }\n${room('neighbour flat above { through floor-above; loss octave 125 Hz 30 dB }')}`,
  },
  { what: 'a neighbour through a board', files: `use catalog\n${room('neighbour flat above { through osb }')}` },
  {
    what: 'a ceiling larger than the room',
    files: room('neighbour flat above { loss octave 125 Hz 30 dB; area 20 m2 }'),
  },
  {
    what: 'an echo outdoors',
    files: room('neighbour garden outdoors { loss octave 125 Hz 30 dB; distance 5 m; reverberation 0.5 s }'),
  },
  {
    what: 'a distance to the flat next door',
    files: room('neighbour flat beside { loss octave 125 Hz 30 dB; distance 5 m }'),
  },
  { what: 'a loss that is negative', files: room('neighbour flat above { loss octave 125 Hz -30 dB }') },
  { what: 'a loss in one number', files: room('neighbour flat above { loss 52 dB }') },
  // hours, times and takes
  { what: 'hours that never are', files: site('noise tram 60 dBA like pink { hours 6:00 to 6:00 }') },
  { what: 'hours from midnight to midnight', files: site('noise tram 60 dBA like pink { hours 24:00 to 0:00 }') },
  { what: 'hours of which one part is no time', files: site('noise tram 60 dBA like pink { hours 6:00 to 8.30 }') },
  { what: 'hours without an end', files: site('noise tram 60 dBA like pink { hours 6:00 }') },
  { what: 'hours in words', files: site('noise tram 60 dBA like pink { hours night }') },
  { what: 'hours without their keyword', files: site('noise tram 60 dBA like pink { 6:00 to 8:00 }') },
  { what: 'a minute of one digit', files: session('starts 7:5') },
  { what: 'an hour after midnight', files: session('starts 24:30') },
  { what: 'an hour with seconds', files: session('starts 13:00:00') },
  { what: 'a start in words', files: session('starts noon') },
  { what: 'takes without rests', files: session('take 12 min') },
  { what: 'takes with a comma', files: session('take 12 min, rest 5 min') },
  { what: 'takes of minutes that are levels', files: session('take 12 min rest 5 dB') },
  { what: 'a fan in takes that is low', files: session('take 12 min rest 5 min fan low') },
  { what: 'a rest of nothing', files: session('take 12 min rest 0 min') },
  { what: 'a session of people and a fan that is on', files: session('fan on') },
  { what: 'a performer in feet', files: session('stature 6') },
  { what: 'a posture that is unknown', files: session('posture standing') },
  // air paths
  { what: 'a fan curve of one point', files: vent('fan 10 L/s { curve 0 L/s 120 Pa }') },
  { what: 'a fan curve that rises', files: vent('fan 10 L/s { curve 0 L/s 40 Pa, 20 L/s 80 Pa }') },
  { what: 'a fan beyond its curve', files: vent('fan 50 L/s { curve 0 L/s 120 Pa, 20 L/s 0 Pa }') },
  { what: 'a fan curve in the wrong order', files: vent('fan 10 L/s { curve 120 Pa 0 L/s, 0 Pa 20 L/s }') },
  { what: 'a fan curve without commas', files: vent('fan 10 L/s { curve 0 L/s 120 Pa 20 L/s 0 Pa }') },
  { what: 'a low speed that is high', files: vent('fan 10 L/s { low 160 % }') },
  { what: 'a fan that blows up', files: vent('fan up 10 L/s') },
  { what: 'a fan without its flow', files: vent('fan supply') },
  { what: 'a fan in a place', files: vent('fan 10 L/s { place roof }') },
  {
    what: 'fans that blow the same way',
    files: booth(
      'vent in on left { duct 125 mm; run 1 m; fan supply 10 L/s }\n  vent out on right { duct 125 mm; run 1 m; fan supply 10 L/s }',
    ),
  },
  { what: 'a chamber narrower than its duct', files: vent('chamber 300 mm x 100 mm x 100 mm') },
  { what: 'a chamber that its lining fills', files: vent('chamber 300 mm x 150 mm x 150 mm lined glass-wool 80 mm') },
  { what: 'a chamber of two lengths', files: vent('chamber 300 mm x 300 mm') },
  { what: 'a chamber lined with board', files: vent('chamber 300 mm x 300 mm x 300 mm lined osb 18 mm') },
  { what: 'a maze without its turns', files: vent('maze leg 250 mm channel 80 mm x 300 mm') },
  { what: 'a maze of half a turn', files: vent('maze 2.5 turns leg 250 mm channel 80 mm x 300 mm') },
  { what: 'a maze with legs shorter than its channel', files: vent('maze 6 turns leg 50 mm channel 80 mm x 300 mm') },
  { what: 'a grille larger than the face', files: vent('grille 1.5 m x 150 mm') },
  { what: 'a grille that is all open', files: vent('grille 250 mm x 150 mm free 120 %') },
  { what: 'a vent that opens to a place', files: vent('opens-to kitchen') },
  { what: 'a vent to the appliance where there is none', files: vent('opens-to appliance-room') },
  { what: 'a wall of a duct', files: vent('wall soft') },
  // what stands in the booth
  { what: 'a booth in no room', files: booth('stands at 0.1 m, 0.1 m') },
  { what: 'a booth that stands in the wall', files: inRoom('stands at 3.5 m, 0.1 m') },
  { what: 'a booth that stands at one length', files: inRoom('stands at 0.1 m') },
  { what: 'a mouth outside', files: booth('mouth at 0.5 m, 0.5 m, 2.5 m') },
  { what: 'a mouth without at', files: booth('mouth 0.5 m, 0.5 m, 1.5 m') },
  {
    what: 'a thing that reaches out',
    files: booth('equipment copy at 0.9 m, 0.5 m, 1.2 m { size 400 mm x 100 mm x 400 mm }'),
  },
  { what: 'a thing outside', files: booth('equipment copy at 1.9 m, 0.5 m, 1.2 m') },
  {
    what: 'a thing that stands and hangs',
    files: booth('equipment copy at 0.5 m, 0.5 m, 1.2 m { size 300 mm x 100 mm x 400 mm; hangs; stands }'),
  },
  { what: 'a thing of no kind', files: booth('equipment copy at 0.5 m, 0.5 m, 1.2 m { kind music-stand }') },
  { what: 'a thing that absorbs a number', files: booth('equipment copy at 0.5 m, 0.5 m, 1.2 m { absorbs 0.8 }') },
  { what: 'a thing tilted in a share', files: booth('equipment copy at 0.5 m, 0.5 m, 1.2 m { tilt 30 % }') },
  { what: 'a microphone of a kind', files: booth('mic at 0.5 m, 0.5 m, 1.2 m { pattern kidney }') },
  { what: 'a microphone at two lengths', files: booth('mic at 0.5 m, 0.5 m') },
  { what: 'a microphone without at', files: booth('mic 0.5 m, 0.5 m, 1.2 m') },
  { what: 'panels wider than the booth', files: booth('outside 1.1 m x 1.1 m x 2.1 m\n  panels { width 3 m }') },
  {
    what: 'a joint above the walls',
    files: booth('outside 1.1 m x 1.1 m x 2.1 m\n  panels { width 600 mm; split 2.5 m }'),
  },
  { what: 'panels without a width', files: booth('panels { split 1.2 m }') },
  { what: 'panels fastened somewhere', files: booth('panels { width 600 mm; fastened both }') },
  { what: 'a roof that folds', files: booth('panels { width 600 mm; roof fold }') },
  { what: 'mounts without a stiffness', files: booth('mounts 16') },
  { what: 'mounts with a load', files: booth('mounts 16 stiffness 200 kg') },
  { what: 'two mounts', files: booth('mounts 2 stiffness 200 N/mm') },
  // what is sold and bought
  { what: 'a sheet of one length', files: material('kind panel; density 500 kg/m3; modulus 3 GPa; sheet 2.44 m') },
  {
    what: 'a sheet of millimetres written in metres',
    files: material('kind panel; density 500 kg/m3; modulus 3 GPa; sheet 1220 m x 2440 m'),
    mistakes: 2,
  },
  { what: 'a length of stock in a size', files: material('kind lumber; density 440 kg/m3; stock 45 mm x 2.4 m') },
  { what: 'an item of a thickness in metres', files: 'use catalog\nbudget { item a for osb 18 m 7 at 38 EUR }\n' },
  { what: 'an item of a misspelt kind', files: 'use catalog\nbudget { item a of osb 18 mm 7 at 38 EUR }\n' },
  { what: 'an item without its number', files: 'use catalog\nbudget { item a for osb 18 mm at 38 EUR }\n' },
  { what: 'an item per square metre', files: 'budget { item a 7 at 38 EUR per m2 }\n' },
  { what: 'an item twice', files: 'budget { item a 7 at 38 EUR; item a 3 at 2 EUR }\n' },
  { what: 'an item with a comma', files: 'budget { item a 7, at 38 EUR }\n' },
  { what: 'a saw of centimetres', files: 'budget { item a 7 at 38 EUR; kerf 3 cm }\n' },
  { what: 'a reserve of a number', files: 'budget { item a 7 at 38 EUR; reserve 10 }\n' },
  { what: 'a price per pound', files: material('kind limp; density 2000 kg/m3; price 3 EUR per lb') },
  // variants of all this
  {
    what: 'a variant of one of two boxes',
    files: vent(
      'chamber 300 mm x 300 mm x 300 mm; chamber 400 mm x 300 mm x 300 mm',
      'variant v { box.in.chamber.width = 500 mm }\n',
    ),
  },
  { what: 'a variant of a fan that is not there', files: vent('bends 2', 'variant v { box.in.fan.low = 70 % }\n') },
  { what: 'a variant of a lining', files: booth('', 'variant v { box.lining = 40 mm }\n') },
  {
    what: 'a variant of an item with a unit too many',
    files: 'use catalog\nbudget { item a for osb 18 mm 7 at 38 EUR }\nvariant v { budget.a.quantity = 8 m2 }\n',
  },
  {
    what: 'a variant of an hour that no day has',
    files: `${site('noise tram 60 dBA like pink')}variant v { site.tram.hours = 25:00 to 6:00 }\n`,
  },
  {
    what: 'a variant that puts a thing outside',
    files: booth(
      'equipment copy at 0.5 m, 0.5 m, 1.2 m { size 300 mm x 100 mm x 400 mm }',
      'variant v { box.copy.x = 3 m }\n',
    ),
  },
  { what: 'a variant of a block that the base lacks', files: booth('', 'variant v { session.people = 2 }\n') },
  { what: 'a variant of a part too deep', files: booth('contents 3 kg', 'variant v { box.contents.mass = 4 kg }\n') },
  // units in words
  { what: 'metres in full', files: room('reverberation 0.5 seconds') },
  { what: 'degrees without their scale', files: room('temperature 20 C') },
  { what: 'a flow in letters', files: room('fresh-air 6 lps') },
  { what: 'a note behind a dash', files: session('people 1 – me') },
  // the rest of what the checker can say
  {
    what: 'a leaf of an assembly with a thickness',
    files: booth('door entry on front { size 700 mm x 1900 mm; leaf shell 40 mm }'),
  },
  {
    what: 'openings too wide to stand side by side',
    files: booth(
      'door a on left { size 600 mm x 1900 mm; leaf osb 18 mm }\n  door b on left { size 600 mm x 1900 mm; leaf osb 18 mm }',
    ),
  },
  {
    what: 'a window with a sill in the roof',
    files: booth('window w on roof { size 400 mm x 400 mm; sill 1.2 m; pane acrylic 18 mm }'),
  },
  { what: 'a material where a value belongs', files: layers('air osb') },
  { what: 'a number that is none', files: layers('air 1e999 mm') },
  { what: 'a tolerance that is left open', files: layers('osb 9 mm ±') },
  { what: 'a use of nothing', files: 'use\n' },
  {
    what: 'a class of fire without quotes',
    files: material('kind panel; density 500 kg/m3; modulus 3 GPa; fire-class B'),
  },
  { what: 'a gap of a door alone', files: booth('door d on front { size 700 mm x 1900 mm; leaf osb 18 mm; gap }') },
  { what: 'an effort that is left open', files: session('effort') },
  {
    what: 'values that lead to each other without an end in sight',
    files: `let a0 = 3 mm\n${Array.from({ length: 250 }, (_, i) => `let a${i + 1} = a${i} + 1 mm`)
      .reverse()
      .join('\n')}\n`,
  },
  { what: 'parentheses too deep', files: `let a = ${'('.repeat(70)}3 mm${')'.repeat(70)}\n` },
  {
    what: 'a variant of too many changes',
    files: `let gap = 3 mm\nvariant v {\n${'  gap = 4 mm\n'.repeat(101)}}\n`,
  },
];
