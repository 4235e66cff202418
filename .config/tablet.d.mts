/** What `tablet.mjs` gives. */
export function tabletScript(): Promise<{readonly text: string; readonly metafile: object}>;
