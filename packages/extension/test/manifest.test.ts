import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { checkSpec } from '@boothwright/language';
import { renderProblems } from '@boothwright/presentation';
import { expect, it } from 'vitest';
import { defaultSettings } from '../../language-server/src/common/settings.js';

const folder = new URL('../', import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('package.json', folder), 'utf8'));
const { properties } = manifest.contributes.configuration;
const readme = readFileSync(new URL('README.md', folder), 'utf8');

it('has a switch, with the default of the server, for all that the server can leave out', () => {
  const groups = Object.entries(defaultSettings).flatMap(([group, switches]) =>
    Object.entries(switches as Record<string, unknown>).map(
      ([kind, on]) => [`boothwright.${group}.${kind}`, on] as const,
    ),
  );
  expect(groups.length).toBeGreaterThan(10);
  for (const [name, on] of groups) expect(properties[name]?.default, name).toEqual(on);
});

it('tells of every setting and every command in its README', () => {
  for (const name of Object.keys(properties)) expect(readme).toContain(`\`${name}\``);
  for (const { title } of manifest.contributes.commands) expect(readme).toContain(`Boothwright: ${title}`);
});

it('ships every file that it names', () => {
  const { languages, grammars, walkthroughs } = manifest.contributes;
  const files: string[] = [
    manifest.icon,
    ...grammars.map(({ path }: { path: string }) => path),
    ...languages.flatMap((each: { configuration: string; icon: Record<string, string> }) => [
      each.configuration,
      ...Object.values(each.icon),
    ]),
    ...walkthroughs.flatMap(({ steps }: { steps: { media: { markdown: string } }[] }) =>
      steps.map(({ media }) => media.markdown),
    ),
  ];
  for (const file of files) {
    expect(() => readFileSync(fileURLToPath(new URL(file, folder))), file).not.toThrow();
    const top = file.replace(/^\.\//, '').split('/')[0] ?? '';
    expect(manifest.files, file).toContain(top);
  }
});

it('names in the walkthrough only commands that there are', () => {
  const own = manifest.contributes.commands.map(({ command }: { command: string }) => command);
  const text = JSON.stringify(manifest.contributes.walkthroughs);
  const named = [...text.matchAll(/\(command:(boothwright\.[A-Za-z]+)\)/g)].map(([, name]) => name);
  expect(named.length).toBeGreaterThan(2);
  for (const name of named) expect(own).toContain(name);
});

it('finds the problems that the command line prints', () => {
  const text = 'use catalog\nassembly wall {\n  osb 18 kg\n  gypsm-board 12.5 mm\n}\n';
  const { problems } = checkSpec('sub/my booth.booth', {
    read: (path) => (path === 'sub/my booth.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
  const printed = renderProblems(problems, new Map([['sub/my booth.booth', text]]), {
    colour: false,
    width: 80,
  } as never);
  const [matcher] = manifest.contributes.problemMatchers;
  const pattern = new RegExp(matcher.pattern[0].regexp);
  const found = printed.split('\n').flatMap((line) => {
    const match = pattern.exec(line);
    return match === null ? [] : [match.slice(1, 6)];
  });
  expect(found).toEqual([
    ['sub/my booth.booth', '3', '7', 'error', problems[0]?.id],
    ['sub/my booth.booth', '4', '3', 'error', problems[1]?.id],
  ]);
});
