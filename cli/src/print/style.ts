import picocolors from "picocolors";

/** How words are weighted on a terminal. Nothing is said by colour alone. */
export interface Style {
  readonly strong: (text: string) => string;
  readonly stop: (text: string) => string;
  readonly look: (text: string) => string;
  readonly quiet: (text: string) => string;
}

const plain = (text: string): string => text;

/** The weights of a terminal, or none. */
export function styleFor(colour: boolean): Style {
  if (!colour) return { strong: plain, stop: plain, look: plain, quiet: plain };
  const { bold, red, yellow, dim } = picocolors.createColors(true);
  return { strong: bold, stop: (text) => bold(red(text)), look: yellow, quiet: dim };
}
