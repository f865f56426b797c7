import type { ProblemEntry } from './problem-entry.js';

/** Problems of the booth as it is described: sizes that contradict each other, places, parts that do not work. */
export const boothProblems = {
  'air-has-no-way-out': {
    severity: 'warning',
    means: 'Air is blown in, or drawn out, and no second vent lets it pass.',
    remedy: 'Add a second vent, or say which way each fan blows.',
  },
  'appliance-missing': {
    severity: 'warning',
    means: 'A vent opens to the room of an appliance, and the site names none.',
    remedy: 'Name the appliance in the site, or say that the vent opens to another room.',
  },
  'area-too-large': {
    severity: 'warning',
    means: 'An area is larger than the wall it is a part of.',
    remedy: 'Check the area and the sizes of the room.',
  },
  'booth-outside-room': {
    severity: 'warning',
    means: 'The booth as it is placed reaches through a wall of its room.',
    remedy: 'Check where it stands and the size of the room.',
  },
  'chamber-narrower-than-duct': {
    severity: 'warning',
    means: 'A box along a duct is no wider than the duct, so it does nothing.',
    remedy: 'Check the sizes of both.',
  },
  'cold-surface-warm': {
    severity: 'warning',
    means: 'The coldest surface of the room is warmer than its air.',
    remedy: 'Check both temperatures.',
  },
  'dimensions-disagree': {
    severity: 'warning',
    means: 'The outside less the inside is not what the layers add up to.',
    remedy: 'Change the outside, the inside or the layers so that they agree.',
  },
  'distances-disagree': {
    severity: 'warning',
    means: 'The stated distance from the mouth is not that between the two places.',
    remedy: 'Check the distance and the places.',
  },
  'equipment-beyond-face': {
    severity: 'warning',
    means: 'A thing reaches into a face of the booth.',
    remedy: 'Check its place and its size.',
  },
  'equipment-outside': {
    severity: 'error',
    means: 'A thing stands outside the booth.',
    remedy: 'Places begin at the inside front left corner of the floor.',
  },
  'face-missing': {
    severity: 'warning',
    means:
      'Nothing says what a face of the booth is made of. An error where the inside of the booth follows from its faces.',
    remedy: 'Name an assembly for the face.',
  },
  'fan-beyond-curve': {
    severity: 'warning',
    means: 'A fan is asked for more flow than its curve holds.',
    remedy: 'Check the flow and the points of the curve.',
  },
  'fan-curve-not-falling': {
    severity: 'error',
    means: 'The pressure of a fan rises with its flow at some point of its curve.',
    remedy: 'Check the points: a curve falls as the flow rises.',
  },
  'fan-curve-short': {
    severity: 'error',
    means: 'The curve of a fan has one point.',
    remedy: 'Give two points or more.',
  },
  'fan-curve-swapped': {
    severity: 'error',
    means: "The points of a fan's curve hold the pressure before the flow.",
    remedy: 'Write the flow first.',
  },
  'fill-too-thick': {
    severity: 'warning',
    means: 'The fill is thicker than the frame is deep.',
    remedy: 'Take a thinner fill or a deeper frame: pressed wool is denser than its figures say.',
  },
  'fixings-without-board': {
    severity: 'error',
    means: 'Channels or clips hold no board.',
    remedy: 'Write the board next to them.',
  },
  'fixings-without-frame': {
    severity: 'error',
    means: 'Channels or clips stand next to no frame.',
    remedy: 'Write them next to the frame they are fixed to.',
  },
  'gauge-too-thick': {
    severity: 'error',
    means: 'The sheet of a folded stud is thicker than the stud is.',
    remedy: 'Check the gauge and the size of the stud.',
  },
  'inside-not-smaller': {
    severity: 'error',
    means: 'The inside of the booth is not smaller than its outside.',
    remedy: 'Check both sizes.',
  },
  'layers-fill-booth': {
    severity: 'error',
    means: 'The layers of two faces leave nothing of the outside between them.',
    remedy: 'Check the outside and the layers.',
  },
  'lining-fills-booth': {
    severity: 'error',
    means: 'Linings leave no room inside.',
    remedy: 'Check the thickness of the linings and the inside.',
  },
  'lining-fills-chamber': {
    severity: 'error',
    means: 'The lining of a box along a duct fills it.',
    remedy: 'Take a thinner lining or a larger box.',
  },
  'maze-leg-short': {
    severity: 'warning',
    means: 'A leg of a maze is shorter than its channel is wide, so it is hardly a leg.',
    remedy: 'Check the length and the width.',
  },
  'mic-outside': {
    severity: 'error',
    means: 'The microphone is outside the booth or inside a lining.',
    remedy: 'Places begin at the inside front left corner of the floor.',
  },
  'mouth-outside': {
    severity: 'error',
    means: 'The mouth is outside the booth or inside a lining.',
    remedy: 'Places begin at the inside front left corner of the floor.',
  },
  'neighbour-unassessable': {
    severity: 'warning',
    means: 'A neighbour is named and nothing says what separates it.',
    remedy: 'Add `through` and an assembly, or `loss` and its bands.',
  },
  'obstacle-outside': {
    severity: 'warning',
    means: 'An obstacle reaches out of the room.',
    remedy: 'Check its place and its size.',
  },
  'opening-beyond-face': {
    severity: 'error',
    means: 'An opening reaches past the edge of its face.',
    remedy: 'Check its place and its size.',
  },
  'opening-larger-than-face': {
    severity: 'error',
    means: 'An opening is larger than the face it is in.',
    remedy: 'Check its size and the size of the booth.',
  },
  'opening-larger-than-inside': {
    severity: 'error',
    means: 'An opening is larger than the clear inside behind its face.',
    remedy: 'Check its size and the inside.',
  },
  'openings-overlap': {
    severity: 'error',
    means: 'Two openings of a face overlap.',
    remedy: 'Move one of them.',
  },
  'openings-too-wide': {
    severity: 'error',
    means: 'The openings of a face are too wide to stand side by side.',
    remedy: 'Check their sizes, or move one to another face.',
  },
  'panels-wider-than-faces': {
    severity: 'hint',
    means: 'The panels are wider than any face, so every face is one panel.',
    remedy: 'Nothing needs to be done when that is meant.',
  },
  'room-missing': {
    severity: 'warning',
    means: 'Something has a place in the room, and the room has no size.',
    remedy: 'Give the site its `room`.',
  },
  'screws-without-effect': {
    severity: 'warning',
    means: 'The distance of the screws is given for studs to which it means nothing.',
    remedy: 'Remove it: it is a figure of light steel studs.',
  },
  'separation-twice': {
    severity: 'warning',
    means: 'A neighbour has both a wall and a measured loss; the loss counts.',
    remedy: 'Remove one of the two.',
  },
  'sill-in-flat-face': {
    severity: 'warning',
    means: 'A window in a roof or a floor has a sill.',
    remedy: 'Remove the sill, or check the face.',
  },
  'split-above-wall': {
    severity: 'error',
    means: 'A joint between panels lies above the wall.',
    remedy: 'Check its height.',
  },
  'stands-and-hangs': {
    severity: 'error',
    means: 'A thing both stands and hangs.',
    remedy: 'Keep one of the two.',
  },
  'studs-touch': {
    severity: 'error',
    means: 'Studs are as wide as the distance between them, so there is no cavity.',
    remedy: 'Check both: `every` is the distance from centre to centre.',
  },
  'take-beyond-session': {
    severity: 'warning',
    means: 'A take is longer than the session.',
    remedy: 'Check both lengths.',
  },
} as const satisfies Readonly<Record<string, ProblemEntry>>;
