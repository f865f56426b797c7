/** What of SARIF 2.1.0 is written; names are those of the standard. */
export interface SarifLog {
  readonly $schema: string;
  readonly version: '2.1.0';
  readonly runs: readonly [SarifRun];
}

export interface SarifRun {
  readonly tool: { readonly driver: { readonly name: string; readonly version?: string; readonly rules: SarifRule[] } };
  readonly columnKind: 'utf16CodeUnits';
  readonly artifacts: readonly { readonly location: { readonly uri: string } }[];
  readonly results: readonly SarifResult[];
}

export type SarifLevel = 'error' | 'warning' | 'note';

export interface SarifRule {
  readonly id: string;
  readonly shortDescription: { readonly text: string };
  readonly help: { readonly text: string };
  readonly defaultConfiguration: { readonly level: SarifLevel };
}

export interface SarifLocation {
  readonly physicalLocation: {
    readonly artifactLocation: { readonly uri: string };
    readonly region: {
      readonly startLine: number;
      readonly startColumn: number;
      readonly endLine: number;
      readonly endColumn: number;
    };
  };
  readonly message?: { readonly text: string };
}

export interface SarifResult {
  readonly ruleId: string;
  readonly ruleIndex: number;
  readonly kind: 'fail' | 'open';
  readonly level: SarifLevel | 'none';
  readonly message: { readonly text: string };
  readonly locations: readonly [SarifLocation];
  readonly relatedLocations?: readonly SarifLocation[];
  readonly suppressions?: readonly { readonly kind: 'inSource'; readonly justification: string }[];
}
