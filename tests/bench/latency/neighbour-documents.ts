import type { Document } from './generated-spec.js';

/** Lines of one wall in each of the documents. */
const wallLines = 10;

/** The largest thickness that the documents allow, mm; a larger one is reported. */
export const largestThickness = 100;

/** What the documents for JSON and YAML are checked against. */
export const wallSchema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  type: 'object',
  additionalProperties: {
    type: 'object',
    description: 'A wall',
    required: ['kind', 'thickness', 'density'],
    additionalProperties: false,
    properties: {
      kind: { enum: ['porous', 'board', 'cloth', 'air'] },
      thickness: { type: 'number', minimum: 0, maximum: largestThickness },
      density: { type: 'number', minimum: 0 },
      resistivity: { type: 'number' },
      cover: { type: 'number' },
      spacing: { type: 'number' },
      source: { type: 'string' },
    },
  },
};

interface Notation {
  readonly head: readonly string[];
  wall(index: number, thickness: string): readonly string[];
  readonly tail: readonly string[];
  /** What fills a line that is left over. */
  readonly filler: string;
  /** What stands where hover and completion are asked for, as found in the edited wall. */
  readonly hover: RegExp;
  readonly completion: RegExp;
}

function document(notation: Notation, total: number): Document {
  const room = total - notation.head.length - notation.tail.length;
  const count = Math.floor(room / wallLines);
  const edited = Math.floor(count / 2);
  const lines = [...notation.head];
  for (let index = 0; index < count; index++) lines.push(...notation.wall(index, (9 + (index % 24) * 0.75).toFixed(3)));
  while (lines.length < total - notation.tail.length) lines.push(notation.filler);
  lines.push(...notation.tail);

  const first = notation.head.length + edited * wallLines;
  const place = (pattern: RegExp, what: 'start' | 'end') => {
    for (let line = first; line < first + wallLines; line++) {
      const match = pattern.exec(lines[line]!);
      if (match !== null) return { line, character: match.index + (what === 'end' ? match[0].length : 0) };
    }
    throw new Error(`${pattern} is not in the wall that is edited`);
  };
  const from = place(/\d+\.\d{3}/, 'start');
  return {
    text: `${lines.join('\n')}\n`,
    edited: { line: from.line, from: from.character, to: place(/\d+\.\d{3}/, 'end').character },
    hover: place(notation.hover, 'start'),
    completion: place(notation.completion, 'end'),
    lines: { first, last: first + wallLines - 1 },
  };
}

/** Walls as objects of a JSON document. */
export function jsonDocument(total: number): Document {
  return document(
    {
      head: ['{'],
      wall: (index, thickness) => [
        `  "wall${index}": {`,
        '    "kind": "board",',
        `    "thickness": ${thickness},`,
        `    "density": ${500 + index},`,
        '    "resistivity": 20.5,',
        '    "cover": 0.9,',
        '    "spacing": 300,',
        '    "source": "invented"',
        '  },',
        '',
      ],
      // A last one without a comma.
      tail: ['  "last": { "kind": "air", "thickness": 1, "density": 1.2 }', '}'],
      filler: '',
      hover: /wall\d+/,
      completion: /"kind": "/,
    },
    total,
  );
}

/** Walls as mappings of a YAML document; `schema` is the address of the schema. */
export function yamlDocument(total: number, schema: string): Document {
  return document(
    {
      head: [`# yaml-language-server: $schema=${schema}`],
      wall: (index, thickness) => [
        `wall${index}:`,
        '  kind: board',
        `  thickness: ${thickness}`,
        `  density: ${500 + index}`,
        '  resistivity: 20.5',
        '  cover: 0.9',
        '  spacing: 300',
        '  source: invented',
        '',
        '',
      ],
      tail: [],
      filler: '',
      hover: /wall\d+/,
      completion: /kind: /,
    },
    total,
  );
}

/** Walls as constants of a TypeScript module; a thickness in quotation marks is of the wrong type. */
export function typeScriptDocument(total: number): Document {
  return document(
    {
      head: [
        'export interface Wall {',
        "  readonly kind: 'porous' | 'board' | 'cloth' | 'air';",
        '  readonly thickness: number;',
        '  readonly density: number;',
        '}',
      ],
      wall: (index, thickness) => [
        `export const wall${index}: Wall = {`,
        "  kind: 'board',",
        `  thickness: ${thickness},`,
        `  density: ${500 + index},`,
        '};',
        `export function mass${index}(area: number): number {`,
        `  const perArea = wall${index}.density * wall${index}.thickness;`,
        '  return perArea * area;',
        '}',
        '',
      ],
      tail: [],
      filler: '',
      hover: /wall\d+: Wall/,
      completion: /= wall\d+\./,
    },
    total,
  );
}
