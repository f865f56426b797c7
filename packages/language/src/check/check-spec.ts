import type { CheckOptions, CheckResult } from './check-result.js';
import type { SourceHost } from './source-host.js';

export declare function checkSpec(entry: string, host: SourceHost, options?: CheckOptions): CheckResult;
