import fs from 'node:fs';
import path from 'node:path';

/**
 * Replaces the contents of a file in one step, so that a full disk or a crash leaves the old text whole. A symbolic link
 * keeps leading to the file. Returns the reason when it could not be done.
 */
export function replaceFile(file: string, text: string): string | undefined {
  let beside: string | undefined;
  try {
    const target = fs.realpathSync(file);
    // A file that may not be written is not to be replaced either, though its folder would allow it.
    fs.accessSync(target, fs.constants.W_OK);
    const { mode } = fs.statSync(target);
    beside = path.join(path.dirname(target), `.${path.basename(target)}.${process.pid}.new`);
    fs.writeFileSync(beside, text, { flag: 'wx' });
    fs.chmodSync(beside, mode & 0o7777);
    fs.renameSync(beside, target);
    return undefined;
  } catch (error) {
    if (beside !== undefined) fs.rmSync(beside, { force: true });
    return (error as NodeJS.ErrnoException).code ?? 'unknown reason';
  }
}
