export declare function format(text: string): string;
