import { type DimensionName, dimensionWords, type Part, units } from '@boothwright/language';

/** What may stand for a part of a line: kinds of value with an example, the units, the words to choose from. */
export function valueHelp(part: Part): string {
  switch (part.kind) {
    case 'quantity':
      return quantityHelp(part.dimension);
    case 'amount':
      return `${quantityHelp('length')}\n\nor ${quantityHelp('mass-per-area')}`;
    case 'any-value':
    case 'tokens':
      return 'A value such as `6 mm`, the name of another value, or a sum such as `2 * 12.5 mm`';
    case 'size':
    case 'position':
      return quantityHelp('length');
    case 'choice':
      return `One of ${words(part.options)}`;
    case 'reference':
      return `The name of ${part.to.map((kind) => (/^[aeio]/.test(kind) ? `an ${kind}` : `a ${kind}`)).join(' or ')}`;
    case 'new-name':
      return 'A new name of small letters, digits and hyphens, such as `side-wall`';
    case 'title':
      return 'A title in quotes; may be left out';
    case 'text':
      return 'A text in quotes';
    case 'face':
      return `One of ${words(['front', 'back', 'left', 'right', 'roof', 'floor'])}`;
    case 'faces':
      return `Any of ${words(['front', 'back', 'left', 'right', 'roof', 'floor'])} or \`walls\`, separated by commas`;
    case 'bands': {
      const example = part.dimension === 'level' ? '125 Hz 40 dB, 250 Hz 36 dB' : '125 Hz 0.3, 250 Hz 0.6';
      return `\`octave\` or \`third\`, then the bands, each with ${dimensionWords[part.dimension].noun}: \`octave ${example}\``;
    }
    case 'pairs': {
      const [first, second] = [dimensionWords[part.first], dimensionWords[part.second]];
      return `Pairs of ${first.noun} and ${second.noun}, separated by commas: \`${first.example} ${second.example}\``;
    }
    case 'clock':
      return 'A time of day such as `13:00`';
    case 'hours':
      return 'Stretches of the day, separated by commas: `06:00 to 09:00, 16:00 to 19:00`';
    case 'price':
      return `A sum of money in ${unitsOf('money')}${part.per ? ', per square metre, metre, piece and so on' : ''}`;
    case 'nominal':
      return 'Nominal lumber such as `2x4`';
    case 'path':
      return 'What the variant changes: the name of a value, or a path such as `alcove.entry.gap.threshold`';
    case 'literal':
    case 'optional':
    case 'either':
      return '';
  }
}

function quantityHelp(dimension: DimensionName): string {
  const { noun, example } = dimensionWords[dimension];
  const start = `${noun.charAt(0).toUpperCase()}${noun.slice(1)} such as \`${example}\``;
  const listed = unitsOf(dimension);
  return listed === '' ? start : `${start}, in ${listed}`;
}

/** Units of a dimension, those of every day first. */
function unitsOf(dimension: DimensionName): string {
  const own = units.filter((entry) => entry.dimension === dimension);
  const sorted = [...own.filter(({ common }) => common), ...own.filter(({ common }) => !common)];
  return words(sorted.map(({ unit }) => unit));
}

const words = (list: readonly string[]): string => list.map((word) => `\`${word}\``).join(', ');
