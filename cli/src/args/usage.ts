/** A value on the command line that is not accepted. */
export class UsageError extends Error {}
