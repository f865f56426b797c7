import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { generatedSpec } from './generated-spec.js';
import type { Subject } from './measure.js';
import { jsonDocument, largestThickness, typeScriptDocument, wallSchema, yamlDocument } from './neighbour-documents.js';

/** Thicknesses in mm from 9 to 27, none twice in a thousand; one is far enough from the next to change what is told. */
const thickness = (n: number): string => (9 + ((n * 7.313) % 18)).toFixed(3);

/** A number that is allowed and one that is too large take turns, so that a report tells which text it is about. */
const inAndOut = (n: number) =>
  n % 2 === 0
    ? { text: (largestThickness + Number(thickness(n))).toFixed(3), isWrong: true }
    : { text: thickness(n), isWrong: false };

export interface Places {
  /** The root of the checkout. */
  readonly root: string;
  /** Where the documents lie. */
  readonly folder: string;
  /** Our server, built. */
  readonly server: string;
}

/** Our server and its neighbours on documents of so many thousand lines; the neighbours as installed from npm. */
export function contenders({ root, folder, server }: Places, thousands: number): readonly Subject[] {
  const lines = thousands * 1000;
  const modules = path.join(root, 'node_modules');
  const schema = path.join(folder, 'walls.schema.json');
  fs.writeFileSync(schema, JSON.stringify(wallSchema));
  const checks = { validate: true, hover: true, completion: true };
  return [
    {
      name: 'boothwright',
      command: [server, '--stdio'],
      language: 'booth',
      extension: 'booth',
      document: generatedSpec(thousands),
      keystroke: (n) => ({ text: thickness(n), isWrong: false }),
      // At ten times the length numbers take far longer than a keystroke, and nothing is aimed at.
      hasNumbers: thousands === 1,
    },
    {
      name: 'JSON',
      command: [path.join(modules, 'vscode-langservers-extracted/bin/vscode-json-language-server'), '--stdio'],
      language: 'json',
      extension: 'json',
      initializationOptions: { handledSchemaProtocols: ['file'], provideFormatter: false },
      settings: { json: { validate: { enable: true }, schemas: [{ fileMatch: ['*.json'], schema: wallSchema }] } },
      document: jsonDocument(lines),
      keystroke: inAndOut,
      hasNumbers: false,
    },
    {
      name: 'YAML',
      command: [path.join(modules, 'yaml-language-server/bin/yaml-language-server'), '--stdio'],
      language: 'yaml',
      extension: 'yaml',
      settings: { yaml: { ...checks, schemaStore: { enable: false } } },
      document: yamlDocument(lines, pathToFileURL(schema).href),
      keystroke: inAndOut,
      hasNumbers: false,
    },
    {
      name: 'TypeScript',
      command: [path.join(modules, 'typescript-language-server/lib/cli.mjs'), '--stdio'],
      language: 'typescript',
      extension: 'ts',
      // Types of other packages are not fetched: nothing may come from the network while it is measured.
      initializationOptions: {
        disableAutomaticTypingAcquisition: true,
        tsserver: { path: path.join(modules, 'typescript/lib/tsserver.js') },
      },
      document: typeScriptDocument(lines),
      keystroke: (n) =>
        n % 2 === 0 ? { text: `'${thickness(n)}'`, isWrong: true } : { text: thickness(n), isWrong: false },
      hasNumbers: false,
    },
  ];
}
