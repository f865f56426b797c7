import type { ParsedFile } from '../syntax/parsed-file.js';
import type { CheckOptions, CheckResult } from './check-result.js';

/** Like `checkSpec`, for callers that hold parsed files: `file` answers for every path it knows. */
export declare function checkParsed(
  entry: ParsedFile,
  read: (
    path: string,
  ) => ParsedFile | { readonly kind: 'missing' | 'refused' | 'unreadable'; readonly reason?: string },
  options?: CheckOptions,
): CheckResult;
