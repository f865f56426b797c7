import type { ProblemEntry } from './problem-entry.js';

/** Problems of what lines mean: names, files, sorts of values, and the comments that allow. */
export const meaningProblems = {
  'allow-of-error': {
    severity: 'warning',
    means: 'A comment allows an error. What could not be read cannot be vouched for, so the error stays.',
    remedy: 'Mend the line and remove the comment.',
  },
  'allow-unused': {
    severity: 'warning',
    means: 'A comment allows something that is not told at its line.',
    remedy: 'Remove the comment, or move it to the line it is meant for or right above that line.',
  },
  'allow-without-reason': {
    severity: 'warning',
    means: 'A comment allows something and does not say why, so it is told all the same.',
    remedy: 'Write the reason behind a colon.',
  },
  'amount-missing': {
    severity: 'error',
    means: 'A layer says neither how thick nor how heavy it is, and its material has no thickness of its own.',
    remedy: 'Write the thickness, or the mass per area, behind the name.',
  },
  'amount-of-assembly': {
    severity: 'error',
    means: 'An assembly is given a thickness; it has that of its layers.',
    remedy: 'Leave the thickness out.',
  },
  'assemblies-too-deep': {
    severity: 'error',
    means: 'Assemblies are made of each other deeper than the language reads.',
    remedy: 'List the layers in one of them.',
  },
  'assembly-cycle': {
    severity: 'error',
    means: 'An assembly is made of itself, directly or through others.',
    remedy: 'List the layers of one of them instead of its name.',
  },
  'band-twice': {
    severity: 'error',
    means: 'A table has the same band twice.',
    remedy: 'Remove one of the two.',
  },
  'block-twice': {
    severity: 'error',
    means: 'The spec has two blocks of a kind of which there is one.',
    remedy: 'Bring the two together.',
  },
  'catalogue-missing': {
    severity: 'error',
    means: 'A material of the catalogue is used without `use catalog`.',
    remedy: 'Write `use catalog` at the top.',
  },
  'currencies-mixed': {
    severity: 'error',
    means: 'Prices in several currencies cannot be added, and no rate of exchange is assumed.',
    remedy: 'Write all prices in one currency.',
  },
  'division-by-zero': {
    severity: 'error',
    means: 'A value divides by zero.',
    remedy: 'Check the values that the divisor is made of.',
  },
  'fitting-with-size': {
    severity: 'error',
    means: 'An item of the budget for a seal or fitting has a size; only a duct has one there.',
    remedy: 'Leave the size out; several widths of one seal are one item.',
  },
  'fact-missing': {
    severity: 'error',
    means: 'A block lacks a fact that it cannot do without.',
    remedy: 'Add the fact that the message names.',
  },
  'fact-twice': {
    severity: 'error',
    means: 'A fact that a block has once stands there twice.',
    remedy: 'Remove one of the two.',
  },
  'fact-without-effect': {
    severity: 'warning',
    means: 'The fact changes nothing, because of what the rest of the text says or leaves out.',
    remedy: 'Remove it, or add what it needs.',
  },
  'figure-without-effect': {
    severity: 'warning',
    means: 'A figure of a material is none that its kind has.',
    remedy: 'Remove it, or check the kind.',
  },
  'file-missing': {
    severity: 'error',
    means: 'A file that is used is not there.',
    remedy: 'Check the path: it begins at the folder of the file that says so.',
  },
  'file-unreadable': {
    severity: 'error',
    means: 'A file that is used cannot be read.',
    remedy: 'Check that it is a text and may be read.',
  },
  'hours-empty': {
    severity: 'error',
    means: 'A stretch of the day begins and ends at the same time.',
    remedy: 'Write `0:00 to 24:00` for all of the day, or leave the hours out.',
  },
  'kind-does-not-fit': {
    severity: 'error',
    means: 'A material is used for what its kind cannot do.',
    remedy: 'Take a material of a kind that fits, or check the kind.',
  },
  'let-cycle': {
    severity: 'error',
    means: 'A named value is defined by itself, directly or through others.',
    remedy: 'Give one of them a value of its own.',
  },
  'let-too-deep': {
    severity: 'error',
    means: 'Named values lead to each other further than the language follows.',
    remedy: 'Give one of them a value of its own.',
  },
  'level-arithmetic': {
    severity: 'error',
    means: 'Levels are added, multiplied or averaged with signs. Decibels are logarithms, so the sum would be wrong.',
    remedy: 'State each source as a `noise`; they are combined by energy.',
  },
  'mass-unknown': {
    severity: 'error',
    means: 'The mass of a layer is not known, and what comes through hangs on it.',
    remedy: 'Write a mass per area on the line, or add `density` to the material.',
  },
  'measured-nothing': {
    severity: 'warning',
    means: 'A `measured` block holds nothing that was measured.',
    remedy: 'Add a line such as `room-tone 22 dBA`, or remove the block.',
  },
  'name-twice': {
    severity: 'error',
    means: 'Two things that are told apart by their name have the same one.',
    remedy: 'Give one of the two another name.',
  },
  'no-layers': {
    severity: 'error',
    means: 'An assembly has no layers.',
    remedy: 'List them from outside to inside.',
  },
  'no-such-band': {
    severity: 'error',
    means: 'A frequency is the centre of no band of the stated grid.',
    remedy: 'Take the nearest band, or check `octave` and `third`.',
  },
  'no-such-curve': {
    severity: 'warning',
    means: 'A noise criterion for which no curve is published.',
    remedy: 'State the limit in `dBA`, or take a curve that there is.',
  },
  'not-a-value': {
    severity: 'error',
    means: 'A name of something else stands where a value is expected.',
    remedy: 'Declare a value with `let`, or write the number.',
  },
  'no-such-date': {
    severity: 'error',
    means: 'A date is no day of the calendar.',
    remedy: 'Write year, month and day, like `2026-05-14`.',
  },
  'number-too-large': {
    severity: 'error',
    means: 'A number is larger than any that can be worked with.',
    remedy: 'Check its digits.',
  },
  path: {
    severity: 'error',
    means: 'A change of a variant names something that cannot be changed in that way.',
    remedy: 'Follow the message: name the fact, or write the whole block in the variant.',
  },
  'path-refused': {
    severity: 'error',
    means:
      'The path leads out of the workspace folder, is absolute, is an address, or has signs that no path may have.',
    remedy: 'Put the file below the workspace folder and write a relative path with `/`.',
  },
  'range-turned-round': {
    severity: 'error',
    means: 'A range ends below its beginning.',
    remedy: 'Write the smaller value first.',
  },
  'recording-kind': {
    severity: 'error',
    means: 'A recording is no file of a kind that can be read.',
    remedy: 'Name a `.wav` file.',
  },
  'stiffer-across': {
    severity: 'warning',
    means: 'A board is said to be stiffer across its grain than along it.',
    remedy: 'Swap the two moduli, or check them.',
  },
  'temperature-arithmetic': {
    severity: 'error',
    means: 'Temperatures are added or multiplied with signs; their zero is arbitrary.',
    remedy: 'Write the temperature itself, or a difference in `K` where one is meant.',
  },
  tolerance: {
    severity: 'error',
    means: 'A tolerance does not fit its value.',
    remedy: "Write a level's tolerance in dB, others in percent or in a unit of the value.",
  },
  'too-many-changes': {
    severity: 'error',
    means: 'A variant changes more than is worked out.',
    remedy: 'Make it a spec of its own.',
  },
  'too-many-files': {
    severity: 'error',
    means: 'The spec uses more files than are read.',
    remedy: 'Bring some of them together.',
  },
  'too-many-layers': {
    severity: 'error',
    means: 'An assembly has more layers than are read.',
    remedy: 'Check what it is made of.',
  },
  'too-many-variants': {
    severity: 'error',
    means: 'The spec has more variants than are worked out for its size.',
    remedy: 'Split the spec.',
  },
  'unit-missing': {
    severity: 'error',
    means: 'A number of something that has a dimension stands without a unit.',
    remedy: 'Write the unit.',
  },
  'unit-of-wrong-dimension': {
    severity: 'error',
    means: 'A value is of another sort than the line wants, such as a mass where a length belongs.',
    remedy: 'Write a value of the sort that the message names.',
  },
  'unknown-lumber': {
    severity: 'error',
    means: 'A nominal size of lumber that the language does not know.',
    remedy: 'Write the true size: width x depth.',
  },
  'unknown-name': {
    severity: 'error',
    means: 'Nothing of this name is declared.',
    remedy: 'Check the spelling, or declare it.',
  },
  'use-cycle': {
    severity: 'error',
    means: 'Files use each other in a circle.',
    remedy: 'Move what both need into a file of its own.',
  },
  'value-implausible': {
    severity: 'error',
    means: 'A figure cannot be what it says.',
    remedy: 'Check the number, its sign and its unit.',
  },
  'value-unusual': {
    severity: 'warning',
    means: 'A figure can be, but hardly ever is.',
    remedy: 'Check the number and its unit. When it is right, allow it with the reason.',
  },
  'variant-empty': {
    severity: 'warning',
    means: 'A variant changes nothing.',
    remedy: 'Add what it changes, or remove it.',
  },
  'wrong-sort-of-name': {
    severity: 'error',
    means: 'The name is that of another sort of thing.',
    remedy: 'Take a name of the sort that the message names.',
  },
} as const satisfies Readonly<Record<string, ProblemEntry>>;
