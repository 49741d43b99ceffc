/** The path of a browser that can be executed, or undefined. Throws where CHROMIUM_PATH is set but wrong. */
export function findChromium(env?: Record<string, string | undefined>): string | undefined;
export const chromiumArgs: string[];
