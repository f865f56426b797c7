import type { BaseResult, ResultDocument } from '@boothwright/assessment';
import type { BoothSpec, SourceAnswer } from '@boothwright/language';

/** What differs between a process and a web worker. */
export interface Platform {
  /** Reads a file below a workspace folder; `path` is POSIX and relative to it. Never leaves the folder. */
  read(folderUri: string, path: string): SourceAnswer;
  /** The specs below a workspace folder, as paths that `read` takes; empty where folders cannot be searched. */
  list(folderUri: string): Promise<readonly string[]>;
  /** Runs a task once the messages that have arrived are dealt with; the answer calls it off. */
  later(task: () => void): () => void;
  /** The last commit of the repository around a folder; absent where no history can be read. */
  lastCommit?(folderUri: string): Promise<string | undefined>;
  /** A file below a folder as it was at a commit. */
  committed?(folderUri: string, commit: string, path: string): Promise<SourceAnswer>;
  /** Works the numbers of a spec out, beside everything else where the platform can. */
  assess(spec: BoothSpec, run?: AssessRun): Promise<ResultDocument>;
}

export interface AssessRun {
  /** Gets the build-ups, which are there long before the booths. */
  readonly assemblies?: (found: ResultDocument['assemblies']) => void;
  /** Gets what the spec itself comes to, which is there before its variants. */
  readonly base?: (found: BaseResult) => void;
  /** Once it is aborted the numbers are not wanted any more, and the promise is rejected. */
  readonly signal?: AbortSignal;
}
