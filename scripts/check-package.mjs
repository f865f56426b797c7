// @boothwright/acoustics as it would be published: packed, looked over, installed without a network and used.
// `--sizes` prints the size of every entry; the checks themselves are in tests/package.
import { run } from './ensure-installed.mjs';

run(process.execPath, ['tests/package/run.mjs', ...process.argv.slice(2)], { stdio: 'inherit' });
