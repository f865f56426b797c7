export interface BadInput {
  readonly what: string;
  readonly files: string | Record<string, string>;
  /** How many messages it must give; one unless said. */
  readonly mistakes?: number;
}

export const layers = (line: string): string => `use catalog\nassembly shell {\n  osb 9 mm\n  ${line}\n}\n`;
export const material = (lines: string): string => `material stuff {\n  ${lines}\n}\n`;
export const booth = (lines: string, more = ''): string =>
  `use catalog\nassembly shell { osb 50 mm }\nbooth box {\n  inside 1 m x 1 m x 2 m\n  walls shell; roof shell; floor shell\n  ${lines}\n}\n${more}`;
export const door = (lines: string): string => booth(`door entry on front { ${lines} }`);
export const site = (lines: string): string => `site {\n  ${lines}\n}\n`;
export const session = (line: string): string => `session {\n  ${line}\n}\n`;
