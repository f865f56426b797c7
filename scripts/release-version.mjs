// Turns the changesets into versions and changelogs, and takes the table of predictions as that of the new version.
import { ensureInstalled, run } from './ensure-installed.mjs';

ensureInstalled();
run(process.execPath, ['scripts/predictions.mjs', '--check']);
run('npx', ['changeset', 'version']);
run(process.execPath, ['scripts/predictions.mjs', '--release']);
run('npm', ['install', '--package-lock-only', '--ignore-scripts', '--no-audit', '--no-fund']);
