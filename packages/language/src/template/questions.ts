import { type BuildUp, linings, separations, wallBuildUps } from './build-ups.js';
import type { Choice, Question } from './question.js';

const named = (buildUps: Readonly<Record<string, BuildUp>>): Choice[] =>
  Object.entries(buildUps).map(([value, { says }]) => ({ value, says }));

/** All that is asked, in the order in which it is asked. */
export const questions: readonly Question[] = [
  {
    name: 'kind',
    asks: 'What do you want to describe?',
    example: 'planned',
    choices: [
      { value: 'planned', says: 'a booth to be built' },
      { value: 'booth', says: 'a booth as it stands' },
      { value: 'wardrobe', says: 'a wardrobe or closet as it stands' },
    ],
  },
  { name: 'title', asks: 'What do you call the room it stands in?', example: 'back bedroom' },
  {
    name: 'room',
    asks: 'How wide, deep and high is that room?',
    example: '3.60 m x 3.10 m x 2.45 m',
  },
  {
    name: 'doorway',
    asks: 'How wide and high is the narrowest door on the way in?',
    example: '760 mm x 1980 mm',
  },
  {
    name: 'floor',
    asks: 'What carries the room?',
    example: 'timber',
    choices: [
      { value: 'timber', says: 'a timber floor' },
      { value: 'concrete', says: 'a concrete floor' },
      { value: 'unknown', says: 'nobody knows' },
    ],
  },
  { name: 'floor-limit', asks: 'What load is that floor designed for, if you know?', example: '1.5 kPa' },
  {
    name: 'noise',
    asks: 'What does a sound level meter read in the room, door shut, in the loudest ten minutes?',
    example: '52 dBA',
  },
  {
    name: 'noise-kind',
    asks: 'What is that noise most like?',
    example: 'road-traffic',
    choices: [
      { value: 'road-traffic', says: 'traffic, trams, trains: mostly low' },
      { value: 'living-noise', says: 'household: voices, music, machines' },
      { value: 'speech', says: 'people talking' },
      { value: 'pink', says: 'even over all pitches' },
    ],
  },
  { name: 'noise-hours', asks: 'At which hours is that noise there?', example: '6:00 to 22:00' },
  {
    name: 'footsteps',
    asks: 'Are there footsteps or knocks through the building?',
    example: 'yes',
    choices: [
      { value: 'yes', says: 'yes, they can be heard' },
      { value: 'no', says: 'no' },
    ],
  },
  {
    name: 'neighbour',
    asks: 'Who must not hear the voice?',
    example: 'above',
    choices: [
      { value: 'none', says: 'nobody in particular' },
      { value: 'above', says: 'someone above' },
      { value: 'below', says: 'someone below' },
      { value: 'beside', says: 'someone behind a wall' },
    ],
  },
  {
    name: 'between',
    asks: 'What separates the room from there?',
    example: 'timber-floor',
    choices: named(separations),
    free: true,
    when: { name: 'neighbour', is: ['above', 'below', 'beside'] },
  },
  {
    name: 'neighbour-limit',
    asks: 'How loud may the voice be there at most?',
    example: '25 dBA',
    when: { name: 'neighbour', is: ['above', 'below', 'beside'] },
  },
  {
    name: 'flame',
    asks: 'Does a boiler, stove or heater burn fuel nearby?',
    example: 'none',
    choices: [
      { value: 'none', says: 'no, none' },
      { value: 'open-flued', says: 'yes, and it takes its air from the room it stands in' },
      { value: 'room-sealed', says: 'yes, with a pipe for its air from outdoors' },
      { value: 'unknown', says: 'yes, or perhaps: nobody has looked' },
    ],
  },
  {
    name: 'flame-place',
    asks: 'Where does it burn?',
    example: 'next-room',
    choices: [
      { value: 'same-room', says: 'in the room of the booth' },
      { value: 'next-room', says: 'in the next room' },
      { value: 'elsewhere', says: 'elsewhere in the building' },
    ],
    when: { name: 'flame', is: ['open-flued', 'room-sealed', 'unknown'] },
  },
  {
    name: 'space',
    asks: 'How wide, deep and high is it over everything, or may it become?',
    example: '1.34 m x 1.54 m x 2.15 m',
  },
  {
    name: 'walls',
    asks: 'What are its walls and its roof made of?',
    example: 'timber-frame',
    choices: named(wallBuildUps),
    free: true,
  },
  {
    name: 'lining',
    asks: 'What is soft inside?',
    example: 'wool-50',
    choices: [{ value: 'none', says: 'nothing: bare boards' }, ...named(linings)],
    free: true,
  },
  { name: 'door', asks: 'How wide and high is its door?', example: '660 mm x 1900 mm' },
  {
    name: 'leaf',
    asks: 'What is that door made of?',
    example: 'solid-core 44 mm',
    choices: [{ value: 'same', says: 'the same as the walls' }],
    free: true,
  },
  { name: 'gap-below', asks: 'How high is the gap under that door?', example: '3 mm' },
  { name: 'gap-around', asks: 'How wide is the gap around that door?', example: '0.5 mm' },
  {
    name: 'air',
    asks: 'How does fresh air get in?',
    example: 'fan',
    choices: [
      { value: 'none', says: 'it does not: the box is shut' },
      { value: 'openings', says: 'through two lined ducts, by itself' },
      { value: 'fan', says: 'through two lined ducts with a fan' },
    ],
  },
  {
    name: 'fan-flow',
    asks: 'How much air does the fan move through those ducts?',
    example: '10 L/s',
    when: { name: 'air', is: ['fan'] },
  },
  { name: 'people', asks: 'How many people are inside?', example: '1' },
  {
    name: 'voice',
    asks: 'How loud is the voice?',
    example: 'normal',
    choices: [
      { value: 'casual', says: 'soft, as beside a table' },
      { value: 'normal', says: 'reading aloud' },
      { value: 'raised', says: 'raised' },
      { value: 'loud', says: 'loud' },
      { value: 'shout', says: 'shouting, singing out' },
    ],
  },
  { name: 'length', asks: 'How long is the door shut?', example: '90 min' },
  { name: 'starts', asks: 'When does a session start?', example: '21:00' },
  {
    name: 'posture',
    asks: 'Does the performer stand or sit?',
    example: 'stands',
    choices: [
      { value: 'stands', says: 'stands' },
      { value: 'sits', says: 'sits' },
    ],
  },
  { name: 'stature', asks: 'How tall is the tallest performer?', example: '1.74 m' },
  { name: 'mic-noise', asks: 'What self-noise does the data sheet of the microphone state?', example: '8 dBA' },
  { name: 'room-tone', asks: 'How quiet must it be at the microphone?', example: 'NC 15' },
  { name: 'carry', asks: 'What may one panel weigh at most, to be carried?', example: '32 kg' },
  { name: 'budget', asks: 'What may it cost at most?', example: '1900 EUR' },
];
