/** Put in place when the command is bundled. */
declare const BOOTHWRIGHT_VERSION: string | undefined;

export const version = typeof BOOTHWRIGHT_VERSION === 'string' ? BOOTHWRIGHT_VERSION : 'unbundled';
