/**
 * Puts the editor in which the extension is tested into `.cache/editor-host`: a server and a workbench taken from
 * one package at a fixed version. Nothing of its install scripts is run and nothing is compiled. Quick when it is
 * already there.
 *
 *     node scripts/editor-host.mjs            prints the folder
 */
import { execFileSync, spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const here = path.dirname(fileURLToPath(import.meta.url));
const manifestFolder = path.join(here, 'editor-host');
export const editorHostFolder = path.resolve(here, '..', '.cache', 'editor-host');

/** Debian's names of what the editor needs from the system, and the command that shows that each is there. */
const systemParts = [
  { deb: 'chromium', found: () => findChromium() !== undefined },
  { deb: 'ripgrep', found: () => findCommand('rg') !== undefined },
  { deb: 'fonts-dejavu-core', found: () => spawnSync('fc-list', ['DejaVu Sans'], { encoding: 'utf8' }).stdout?.trim() },
];

/** @param {string} name */
function findCommand(name) {
  for (const folder of (process.env.PATH ?? '').split(path.delimiter)) {
    const file = path.join(folder, name);
    if (folder !== '' && existsSync(file)) return file;
  }
  return undefined;
}

/** The Chromium that drives the workbench: `CHROMIUM` in the environment, else the usual commands. */
export function findChromium() {
  const { CHROMIUM: named } = process.env;
  if (named !== undefined && named !== '') return named;
  return findCommand('chromium') ?? findCommand('chromium-browser');
}

/** What the installed host must have been made from; any change but one of layout installs anew. */
function wantedStamp() {
  const { dependencies } = JSON.parse(readFileSync(path.join(manifestFolder, 'package.json'), 'utf8'));
  const rest = [JSON.stringify(dependencies)];
  const lock = path.join(manifestFolder, 'package-lock.json');
  if (existsSync(lock)) rest.push(readFileSync(lock, 'utf8'));
  return rest.join('\n');
}

function installSystemParts() {
  const missing = systemParts.filter((part) => !part.found()).map((part) => part.deb);
  if (missing.length === 0) return;
  const canInstall = process.getuid?.() === 0 && findCommand('apt-get') !== undefined;
  if (!canInstall) {
    throw new Error(`The editor tests need ${missing.join(', ')}: install them with your system's package manager`);
  }
  console.error(`Installing ${missing.join(', ')}`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-qq'], { stdio: ['ignore', 'ignore', 'inherit'], env });
  execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env,
  });
}

/** @param {string} folder @param {string[]} args */
function npm(folder, args) {
  execFileSync('npm', [...args, '--no-audit', '--no-fund', '--ignore-scripts', '--loglevel=error'], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

/** @param {string} target @param {string} link */
function link(target, link) {
  rmSync(link, { force: true, recursive: lstatSync(link, { throwIfNoEntry: false })?.isDirectory() ?? false });
  mkdirSync(path.dirname(link), { recursive: true });
  symlinkSync(target, link);
}

/** Installs what is missing and answers the folder of the editor host. */
export function installEditorHost() {
  installSystemParts();
  const stampFile = path.join(editorHostFolder, 'stamp');
  const stamp = wantedStamp();
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return editorHostFolder;

  console.error('Installing the editor host');
  rmSync(editorHostFolder, { recursive: true, force: true });
  mkdirSync(editorHostFolder, { recursive: true });
  copyFileSync(path.join(manifestFolder, 'package.json'), path.join(editorHostFolder, 'package.json'));
  const lock = path.join(manifestFolder, 'package-lock.json');
  if (existsSync(lock)) {
    copyFileSync(lock, path.join(editorHostFolder, 'package-lock.json'));
    npm(editorHostFolder, ['ci']);
  } else {
    npm(editorHostFolder, ['install']);
  }

  // The editor inside the package has dependencies of its own, and the skipped install script would have made this link.
  const editor = path.join(editorHostFolder, 'node_modules/code-server/lib/vscode');
  npm(editor, ['install', '--omit=dev']);
  link('node_modules', path.join(editor, 'node_modules.asar'));
  const ripgrep = findCommand('rg');
  if (ripgrep !== undefined) link(ripgrep, path.join(editor, 'node_modules/@vscode/ripgrep/bin/rg'));

  writeFileSync(stampFile, stamp);
  return editorHostFolder;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    console.log(path.relative(process.cwd(), installEditorHost()) || '.');
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
