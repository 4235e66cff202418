/** The version of the tool, and which build of it this is; both put in when the command is bundled. */

declare const WMARK_VERSION: string | undefined;
declare const WMARK_BUILD: string | undefined;

/** `unbuilt` for code that was not bundled, as in tests. */
export const version = typeof WMARK_VERSION === 'string' ? WMARK_VERSION : 'unbuilt';

/** Digest of the whole bundle: two builds with one of these give the same answers. */
export const build = typeof WMARK_BUILD === 'string' ? WMARK_BUILD : 'unbuilt';
