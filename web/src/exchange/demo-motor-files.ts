import type { Raw } from "@delaywright/documents";

const documents: Readonly<Record<string, Raw>> = import.meta.glob("../../../cli/examples/demo-motors/*.motor.json", {
  eager: true,
  import: "default",
});

const NOTE = "Invented for the demo: there is no such motor.";

/** The demo library as files to be taken in; every motor says that it is invented. */
export function demoMotorFiles(): { readonly name: string; readonly bytes: Uint8Array }[] {
  const encoder = new TextEncoder();
  return Object.entries(documents).map(([path, { kind, version, name, ...rest }]) => ({
    name: path.slice(path.lastIndexOf("/") + 1),
    bytes: encoder.encode(JSON.stringify({ kind, version, name, note: NOTE, ...rest })),
  }));
}
