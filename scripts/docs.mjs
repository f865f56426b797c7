// The pages of every exported name of @boothwright/acoustics, into docs/api. Any warning is a failure.
// Ends with the count of documented names and of warnings.
import path from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { Application, Logger, LogLevel, ReflectionKind, TSConfigReader, TypeDocReader } = await import('typedoc');

/** Prints each warning and error and counts them. */
class CountingLogger extends Logger {
  warnings = 0;
  log(message, level) {
    if (level < LogLevel.Warn) return;
    this.warnings++;
    console.error(`${level === LogLevel.Warn ? 'warning' : 'error'}: ${message}`);
  }
}

const folder = path.join(root, 'packages/acoustics');
process.chdir(folder);
const app = await Application.bootstrapWithPlugins({ options: path.join(folder, 'typedoc.json') }, [
  new TypeDocReader(),
  new TSConfigReader(),
]);
const logger = new CountingLogger();
app.logger = logger;

const project = await app.convert();
if (project) {
  app.validate(project);
  await app.generateOutputs(project);
}

const kinds =
  ReflectionKind.Function |
  ReflectionKind.Variable |
  ReflectionKind.TypeAlias |
  ReflectionKind.Interface |
  ReflectionKind.Class |
  ReflectionKind.Enum;
const exported = project?.getReflectionsByKind(kinds).filter((one) => one.parent?.kindOf(ReflectionKind.Module)) ?? [];
const documented = exported.filter((one) => one.hasComment() || one.signatures?.some((each) => each.hasComment()));
const examples = exported.filter((one) =>
  [one, ...(one.signatures ?? [])].some((each) => each.comment?.getTag('@example') !== undefined),
);
if (project) console.log(`Pages in ${path.relative(root, path.resolve(folder, app.options.getValue('out')))}`);
console.log(`${examples.length} names have an example`);
console.log(
  `${documented.length} of ${exported.length} exported names documented, ${logger.warnings} warning${logger.warnings === 1 ? '' : 's'}`,
);
process.exit(project && logger.warnings === 0 && documented.length === exported.length && exported.length > 0 ? 0 : 1);
