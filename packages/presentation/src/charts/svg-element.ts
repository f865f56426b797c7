const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text for an SVG document; characters that XML 1.0 does not allow, and marks that turn the reading direction round, are left out. */
export function escapeXml(text: string): string {
  let out = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const allowed =
      code >= 0x20
        ? code < 0xd800 || (code > 0xdfff && code < 0xfffe) || code > 0xffff
        : code === 9 || code === 10 || code === 13;
    const direction = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);
    if (allowed && !direction) out += escapes[character] ?? character;
  }
  return out;
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One SVG element with presentation attributes; `undefined` attributes are left out. `content` is SVG, not text. */
export function svgElement(name: string, attributes: Attributes, content = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? round(value) : escapeXml(String(value))}"`)
    .join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

export function svgText(text: string, attributes: Attributes): string {
  return svgElement('text', attributes, escapeXml(text));
}

/** A tenth of a pixel is finer than anyone sees and keeps the picture small. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Numbers of a series for `data-` attributes: a tenth of a dB, empty where nothing is known. */
export function dataList(values: readonly (number | null)[]): string {
  return values.map((value) => (value === null || !Number.isFinite(value) ? '' : String(round(value)))).join(',');
}
