export function findChromium(): string | undefined;
export function readyChromium(): string | undefined;
