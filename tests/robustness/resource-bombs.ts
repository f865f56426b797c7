/** A text, or several files of which the first is the entry, that asks for more than anyone may spend. */
export interface Bomb {
  readonly what: string;
  readonly files: string | Readonly<Record<string, string>>;
  /** The identifier of the message that says where reading stops; absent where the text is merely large. */
  readonly told?: string;
}

const list = (count: number, line: (index: number) => string, joint = '\n'): string =>
  Array.from({ length: count }, (_, index) => line(index)).join(joint);
const inBooth = (lines: string): string =>
  `use catalog\nassembly wall { osb 18 mm }\nbooth box {\n  inside 2 m x 2 m x 2 m\n  walls wall; roof wall; floor wall\n${lines}\n}\n`;

export const bombs: readonly Bomb[] = [
  // nesting
  {
    what: 'braces in braces',
    files: `assembly a ${'{ frame 2x4 every 400 mm '.repeat(20_000)}`,
    told: 'block-not-closed',
  },
  { what: 'braces alone', files: '{'.repeat(200_000), told: 'unexpected' },
  { what: 'closing braces alone', files: '}\n'.repeat(50_000), told: 'too-many-problems' },
  { what: 'booths in booths', files: 'booth b {\n'.repeat(20_000), told: 'block-not-closed' },
  { what: 'parentheses', files: `let a = ${'('.repeat(100_000)}1 mm`, told: 'value-too-deep' },
  { what: 'signs in front', files: `let a = ${'- '.repeat(100_000)}1 mm`, told: 'value-too-long' },
  { what: 'a long sum', files: `let a = 1 mm${' + 1 mm'.repeat(100_000)}`, told: 'value-too-long' },
  // files
  {
    what: 'thousands of times the same file',
    files: { 'a.booth': 'use "./b.booth"\n'.repeat(30_000), 'b.booth': 'let b = 1 mm' },
  },
  {
    what: 'thousands of files',
    files: list(30_000, (i) => `use "./${i}.booth"`),
    told: 'too-many-files',
  },
  {
    what: 'files in a long chain',
    files: Object.fromEntries(Array.from({ length: 1000 }, (_, i) => [`f${i}.booth`, `use "./f${i + 1}.booth"\n`])),
    told: 'too-many-files',
  },
  { what: 'a long path', files: `use "${'a/'.repeat(500_000)}b.booth"`, told: 'file-missing' },
  { what: 'a path up and up', files: `use "${'../'.repeat(300_000)}b.booth"`, told: 'path-refused' },
  // numbers
  { what: 'a number of many digits', files: `let a = ${'9'.repeat(500_000)} mm`, told: 'number-too-large' },
  { what: 'a fraction over nothing', files: 'let a = 1/0 in', told: 'number-too-large' },
  {
    what: 'powers of a large number',
    files: `let a = 1000000 m\nlet b = a * a * a\n${list(150, (i) => `let c${i} = ${i === 0 ? '1000000000000' : `c${i - 1} * 1000000000000`}`)}\nsession { people c149 }`,
    told: 'number-too-large',
  },
  { what: 'many digits behind the point', files: `let a = 0.${'3'.repeat(500_000)} mm` },
  // values
  {
    what: 'values that lead to each other',
    files: `${list(20_000, (i) => `let v${i} = v${i + 1}`)}\nlet v20000 = 1 mm`,
    told: 'let-too-deep',
  },
  { what: 'values that double', files: `let v0 = 1 mm\n${list(20_000, (i) => `let v${i + 1} = v${i} + v${i}`)}` },
  { what: 'a circle of values', files: list(20_000, (i) => `let v${i} = v${(i + 1) % 20_000}`), told: 'let-too-deep' },
  {
    what: 'names that are nowhere',
    files: `use catalog\nassembly a {\n${list(30_000, (i) => `  nowhere-${i} 9 mm`)}\n}`,
    told: 'too-many-problems',
  },
  { what: 'names declared again and again', files: 'let same = 1 mm\n'.repeat(30_000), told: 'too-many-problems' },
  // variants
  {
    what: 'ten thousand variants',
    files: `let gap = 6 mm\n${list(10_000, (i) => `variant v${i} { gap = ${i} mm }`)}`,
    told: 'too-many-variants',
  },
  {
    what: 'variants of a large text',
    files: `use catalog\n${list(3000, (i) => `let v${i} = ${i} mm`)}\n${list(500, (i) => `variant w${i} { v${i} = 3 mm }`)}`,
    told: 'too-many-variants',
  },
  {
    what: 'a variant of many changes',
    files: `let gap = 6 mm\nvariant v {\n${'gap = 7 mm\n'.repeat(50_000)}}`,
    told: 'too-many-changes',
  },
  {
    what: 'a long path in a variant',
    files: `let gap = 6 mm\nvariant v { ${list(100_000, () => 'a', '.')} = 3 mm }`,
    told: 'unknown-name',
  },
  // parts
  {
    what: 'assemblies that double',
    files: `use catalog\n${list(60, (i) => `assembly w${i} { w${i + 1}; w${i + 1} }`)}\nassembly w60 { osb 9 mm }`,
    told: 'assemblies-too-deep',
  },
  {
    what: 'assemblies of many layers',
    files: `use catalog\nassembly a {\n${'  osb 9 mm\n'.repeat(50_000)}}`,
    told: 'too-many-layers',
  },
  {
    what: 'assemblies in a circle',
    files: `use catalog\n${list(5000, (i) => `assembly w${i} { osb 9 mm; w${(i + 1) % 5000} }`)}`,
    told: 'assemblies-too-deep',
  },
  {
    what: 'a table of many bands',
    files: `material m { kind covering; surface-mass 3 kg/m2; absorption octave ${list(50_000, () => '125 Hz 0.1', ', ')} }`,
    told: 'too-many-problems',
  },
  { what: 'hours without end', files: `site { impact steps { hours ${list(50_000, () => '6:00 to 7:00', ', ')} } }` },
  {
    what: 'booths by the thousand',
    files: `use catalog\nassembly wall { osb 18 mm }\n${list(3000, (i) => `booth b${i} { inside 1 m x 1 m x 2 m; walls wall; roof wall; floor wall }`)}`,
  },
  {
    what: 'holes by the thousand',
    files: inBooth(list(5000, (i) => `  hole h${i} on front { diameter 8 mm; depth 50 mm }`)),
  },
  {
    what: 'windows by the thousand',
    files: inBooth(list(3000, (i) => `  window w${i} on front { size 5 mm x 5 mm; offset ${i} mm; pane osb 18 mm }`)),
  },
  {
    what: 'things by the thousand',
    files: inBooth(list(5000, (i) => `  equipment e${i} at 1 m, 1 m, 1 m { size 10 mm x 10 mm x 10 mm }`)),
  },
  { what: 'linings by the thousand', files: inBooth('  lining on left { mineral-wool-40 1 mm }\n'.repeat(5000)) },
  // text
  { what: 'one word', files: 'a'.repeat(1_900_000), told: 'unknown-keyword' },
  { what: 'hyphens', files: `let ${'a-'.repeat(500_000)}b = 3 mm` },
  { what: 'quotes', files: '"'.repeat(500_000), told: 'unexpected' },
  { what: 'a line of semicolons', files: ';'.repeat(300_000) },
  { what: 'empty lines', files: '\n'.repeat(500_000) },
  { what: 'more characters than are read', files: ' '.repeat(2_000_001), told: 'file-too-large' },
  { what: 'more facts than are read', files: 'let a = 1 mm;'.repeat(120_000), told: 'too-many-lines' },
  { what: 'comments that allow', files: `let a = 1 mm\n${'# allow value-unusual: x\n'.repeat(70_000)}` },
  { what: 'a comment that allows much', files: `# allow ${list(100_000, () => 'a-b', ', ')}: x` },
  { what: 'a comment that nearly allows', files: `# allow ${'a'.repeat(900_000)} ${'-'.repeat(900_000)}` },
  { what: 'units of units', files: `let a = 1 ${list(100_000, () => 'kg', '.')}` },
];
