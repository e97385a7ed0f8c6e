export const demoLibraryFolder: string;
export function demoLibrary(): readonly { readonly name: string; readonly text: string }[];
