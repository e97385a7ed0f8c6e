/** Why a file could not be read. */
export type FileFailure = "missing" | "too-large" | "not-a-file" | "not-allowed";
