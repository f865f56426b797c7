/** The parts of our own pictures that tests look at; a reader for exactly what `svgElement` writes. */
export function readSvg(svg: string) {
  const attribute = (tag: string, name: string) => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];
  const tags = [...svg.matchAll(/<([a-z]+)([^>]*)>/g)].map(([, name = '', rest = '']) => ({ name, rest }));
  return {
    names: [...new Set(tags.map(({ name }) => name))].sort(),
    attributeNames: [
      ...new Set(tags.flatMap(({ rest }) => [...rest.matchAll(/\s([a-zA-Z-]+)=/g)].map(([, name]) => name))),
    ],
    title: /<title>([^<]*)<\/title>/.exec(svg)?.[1],
    description: /<desc>([^<]*)<\/desc>/.exec(svg)?.[1],
    root: tags[0]?.rest ?? '',
    series: Object.fromEntries(
      tags
        .filter(({ rest }) => attribute(rest, 'data-values') !== undefined)
        .map(({ rest }) => [attribute(rest, 'class') ?? '', attribute(rest, 'data-values')]),
    ),
    path: (className: string) =>
      attribute(tags.find(({ rest }) => attribute(rest, 'class') === className)?.rest ?? '', 'd'),
    hz: attribute(tags[0]?.rest ?? '', 'data-hz'),
    texts: [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text),
  };
}
