/** The version of the tool, put in when the command is bundled. */

declare const WMARK_VERSION: string | undefined;

export const version = typeof WMARK_VERSION === 'string' ? WMARK_VERSION : 'unbuilt';
