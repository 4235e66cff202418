/** The script by which a sheet can be filled in on a tablet, put in as text when the command is bundled. */

declare const WMARK_TABLET: string | undefined;

/** Undefined where the command was not bundled: sheets are for paper alone, then. */
export const tabletScript = typeof WMARK_TABLET === 'string' ? WMARK_TABLET : undefined;
