export function webServer(version: string): Promise<{readonly text: string; readonly metafile: object}>;
