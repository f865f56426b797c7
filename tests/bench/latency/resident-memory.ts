import fs from 'node:fs';

/** Resident memory of a process and all below it, MiB; undefined where the system does not tell it as Linux does. */
export function residentMemory(process: number): number | undefined {
  if (!fs.existsSync('/proc/self/status')) return undefined;
  const parents = new Map<number, number>();
  for (const name of fs.readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    const parent = fieldOf(Number(name), 'PPid');
    if (parent !== undefined) parents.set(Number(name), parent);
  }
  const isBelow = (one: number): boolean => {
    for (let each: number | undefined = one; each !== undefined && each > 1; each = parents.get(each)) {
      if (each === process) return true;
    }
    return false;
  };
  let kibibytes = 0;
  for (const one of parents.keys()) if (isBelow(one)) kibibytes += fieldOf(one, 'VmRSS') ?? 0;
  return kibibytes / 1024;
}

function fieldOf(process: number, field: string): number | undefined {
  try {
    const status = fs.readFileSync(`/proc/${process}/status`, 'utf8');
    const found = new RegExp(`^${field}:\\s+(\\d+)`, 'm').exec(status);
    return found === null ? undefined : Number(found[1]);
  } catch {
    // It has ended since.
    return undefined;
  }
}
