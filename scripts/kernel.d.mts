/** Compiles the hot loop of the draws to WebAssembly. */
export function compiledKernel(): Promise<Uint8Array>;
/** The module of the engine that holds it. */
export function kernelModule(bytes: Uint8Array): string;
