import type { ProblemEntry } from './problem-entry.js';

/** Problems of reading a line: what stands where, before anything is known of what it means. */
export const readingProblems = {
  'block-missing': {
    severity: 'error',
    means: 'The line opens a block, and no `{` follows.',
    remedy: 'Write the block behind the line, with its `{` on the same line.',
  },
  'block-not-closed': {
    severity: 'error',
    means: 'A block has no `}`, and the next declaration begins inside it.',
    remedy: 'Add the `}` where the block ends.',
  },
  'brace-missing': {
    severity: 'error',
    means: 'The facts of a block follow, but its `{` is missing.',
    remedy: 'Write the `{` at the end of the line that names the block.',
  },
  'brace-on-next-line': {
    severity: 'error',
    means: 'The `{` of a block stands on a line of its own.',
    remedy: 'Move it up to the line of the name: a line break ends a fact.',
  },
  'brace-too-early': {
    severity: 'error',
    means: 'A `}` ends a block although more of its facts follow.',
    remedy: 'Remove the `}`, or move it behind the last fact.',
  },
  'brace-without-block': {
    severity: 'error',
    means: 'A `}` closes nothing.',
    remedy: 'Remove it, or open the block that it should close.',
  },
  'comma-in-number': {
    severity: 'error',
    means: 'A number has a comma between its thousands.',
    remedy: 'Write the number without it.',
  },
  'comma-missing': {
    severity: 'error',
    means: 'Two values of a list follow each other without a comma.',
    remedy: 'Put a comma between them.',
  },
  'comma-too-many': {
    severity: 'error',
    means: 'A comma stands where no further value follows.',
    remedy: 'Remove the comma, or add the value.',
  },
  comparison: {
    severity: 'error',
    means: 'A requirement compares the wrong way round or with another sign.',
    remedy: 'Write the sign that the requirement has: `<=` for what may not be passed, `>=` for what must be reached.',
  },
  'currency-sign': {
    severity: 'error',
    means: 'A price has a sign such as `$` for its currency.',
    remedy: 'Write the three letters of the currency behind the number: several countries share a sign.',
  },
  'decimal-comma': {
    severity: 'error',
    means: 'A number has a comma for its decimals.',
    remedy: 'Write a point: `0.9`.',
  },
  'empty-file': {
    severity: 'warning',
    means: 'The file describes nothing yet.',
    remedy: 'Begin with `use catalog` and an `assembly`.',
  },
  'file-too-large': {
    severity: 'error',
    means: 'The file is longer than the language reads.',
    remedy: 'Split it and bring the parts together with `use`.',
  },
  'foreign-comment': {
    severity: 'error',
    means: 'A comment begins with the sign of another language.',
    remedy: 'Begin comments with `#`.',
  },
  'fraction-sign': {
    severity: 'error',
    means: 'A fraction is one character, such as the half sign.',
    remedy: 'Write it with a stroke: `1/2 in`.',
  },
  'grid-missing': {
    severity: 'error',
    means: 'A table by band does not say what its bands are.',
    remedy: 'Write `octave` or `third` before the first band.',
  },
  'hours-incomplete': {
    severity: 'error',
    means: 'A stretch of the day has no end.',
    remedy: 'Write `to` and the time at which it ends.',
  },
  'inch-sign': {
    severity: 'error',
    means: 'An inch or a foot is written with a quotation mark.',
    remedy: 'Write `in` or `ft`: quotation marks hold texts.',
  },
  'keyword-renamed': {
    severity: 'hint',
    means: 'The line is written with a word that the language used to have. It still means the same.',
    remedy: 'Write the present word; the older one will be dropped in a later version.',
  },
  'let-in-block': {
    severity: 'error',
    means: 'A `let` stands inside a block.',
    remedy: 'Move it out: named values are declared outside every block. In a variant, write the change without `let`.',
  },
  'let-missing': {
    severity: 'error',
    means: 'A name is given a value without `let`.',
    remedy: 'Write `let` before the name.',
  },
  'minus-needs-blanks': {
    severity: 'error',
    means: 'A minus has a blank on one side only, so it could belong to a name or to a number.',
    remedy: 'Put a blank on both sides.',
  },
  'mixed-number': {
    severity: 'error',
    means: 'A mixed number is written with a blank.',
    remedy: 'Write it with a hyphen: `2-1/2 in`.',
  },
  'name-missing': {
    severity: 'error',
    means: 'A name is expected and something else stands there.',
    remedy: 'Write a word; names have letters, digits and hyphens and begin with a letter.',
  },
  'nominal-spelling': {
    severity: 'error',
    means: 'Nominal lumber is spelt in another way than `2x4`.',
    remedy: 'Write it as one word, digits with an `x` between them, or write the true size.',
  },
  'no-such-time': {
    severity: 'error',
    means: 'A time of day that no clock shows.',
    remedy: 'Write hours from 0 to 24 and two digits of minutes.',
  },
  'not-text': {
    severity: 'error',
    means: 'The file is no text.',
    remedy: 'Save it as plain text in UTF-8.',
  },
  'number-without-zero': {
    severity: 'error',
    means: 'A number begins with its point.',
    remedy: 'Write the zero: `0.9`.',
  },
  'parenthesis-not-closed': {
    severity: 'error',
    means: 'A parenthesis in a value is not closed.',
    remedy: 'Add the `)`.',
  },
  'position-incomplete': {
    severity: 'error',
    means: 'A place lacks one of its distances.',
    remedy: 'Write all of them with commas between: along the width, along the depth, and the height.',
  },
  'price-unit': {
    severity: 'error',
    means: 'A price is per something that nothing is sold by here.',
    remedy: 'Take one of the units that the message lists.',
  },
  'size-incomplete': {
    severity: 'error',
    means: 'A size lacks one of its sides.',
    remedy: 'Write every side with its unit and `x` between them.',
  },
  'size-without-units': {
    severity: 'error',
    means: 'A size has one unit for all of its sides.',
    remedy: 'Give each side its unit.',
  },
  'text-missing': {
    severity: 'error',
    means: 'A text in quotes is expected.',
    remedy: 'Write it in straight double quotes.',
  },
  'text-not-closed': {
    severity: 'error',
    means: 'A text has no closing quote on its line.',
    remedy: 'Close it; a text ends on the line it begins on.',
  },
  'time-of-day': {
    severity: 'error',
    means: 'A time of day is written in another way than `6:30`.',
    remedy: 'Write hours and minutes with a colon, on a clock of 24 hours.',
  },
  'tolerance-missing': {
    severity: 'error',
    means: 'Nothing follows `±`.',
    remedy: 'Write the tolerance, in percent or in a unit.',
  },
  'tolerance-sign': {
    severity: 'error',
    means: 'A tolerance is written with another sign.',
    remedy: 'Write `±` or `+/-`.',
  },
  'too-deep': {
    severity: 'error',
    means: 'Blocks are nested deeper than the language reads.',
    remedy: 'A booth needs four levels; look for a `{` too many.',
  },
  'too-many-lines': {
    severity: 'error',
    means: 'The file holds more facts than are read.',
    remedy: 'Split it and bring the parts together with `use`.',
  },
  'too-many-problems': {
    severity: 'error',
    means: 'More problems were found than are listed.',
    remedy: 'Mend the first ones: they are often the cause of the rest.',
  },
  'two-values': {
    severity: 'error',
    means: 'A second value follows where the line should end.',
    remedy: 'Put an operator between the two, or a `;` when it is a fact of its own.',
  },
  unexpected: {
    severity: 'error',
    means: 'Something stands where the line cannot go on that way.',
    remedy: 'Write what the message expects, or end the line before it.',
  },
  'unknown-keyword': {
    severity: 'error',
    means: 'The first word of the line is no fact of this block.',
    remedy: 'Check its spelling and the block it belongs in.',
  },
  'unknown-unit': {
    severity: 'error',
    means: 'The word behind a number is no unit.',
    remedy: 'Take a unit of the reference; units multiply with `.` and divide with `/`.',
  },
  'unknown-word': {
    severity: 'error',
    means: 'The word is none of those that may stand here.',
    remedy: 'Take one of those that the message lists.',
  },
  'value-missing': {
    severity: 'error',
    means: 'A value is expected and the line ends, or something else stands there.',
    remedy: 'Write the value with its unit.',
  },
  'value-too-deep': {
    severity: 'error',
    means: 'Parentheses are nested deeper than the language reads.',
    remedy: 'Name parts of the value with `let`.',
  },
  'value-too-long': {
    severity: 'error',
    means: 'A value has more operators than the language reads.',
    remedy: 'Name parts of the value with `let`.',
  },
  'weighting-in-parentheses': {
    severity: 'error',
    means: 'The weighting of a level stands in parentheses.',
    remedy: 'Write it as one word: `dBA`.',
  },
  'word-missing': {
    severity: 'error',
    means: 'A fixed word of the line is missing.',
    remedy: 'Write the word that the message names.',
  },
} as const satisfies Readonly<Record<string, ProblemEntry>>;
