/** The pages that diagnostics lead to, by their path below the folder of the documentation. */
export declare function packPages(docs: string): Record<string, string>;
