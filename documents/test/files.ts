import type { ExportEntry, GivenFile, Imported } from "../src/exchange/exchange.js";
import { utf8 } from "../src/file-source.js";
import { field, motor, motorInHand, plan, rocket, tool } from "./fixtures.js";

/** A file as a browser gives it. */
export const file = (name: string, content: unknown): GivenFile => ({
  name,
  bytes:
    content instanceof Uint8Array ? content : utf8(typeof content === "string" ? content : JSON.stringify(content)),
});
/** A thrust curve as a file, and as it stands in a motor. */
export const csv = "time (s),thrust (N)\n0,0\n0.1,190\n2,150\n2.1,0\n";
export const curve = { time: [0, 0.1, 2, 2.1], newtons: [0, 190, 150, 0] };

/** What a store keeps of an import, and gives to an export. */
export const stored = ({ entries }: Imported): ExportEntry[] =>
  entries.map(({ path, raw, text, drafts }) => ({ path, raw, ...(raw === undefined ? { text } : {}), drafts }));

/** A plan with its files in folders, and its motor's curve in a file of its own. */
export const folders: readonly GivenFile[] = [
  file("flights/third/plan.json", {
    ...plan,
    rocket: "../../larkmoor/demo.rocket.json",
    motor: "../../larkmoor/bag-3.json",
    tool: "../../larkmoor/two-collar.tool.json",
    field: "../../larkmoor/larkmoor.field.json",
  }),
  file("larkmoor/demo.rocket.json", rocket),
  file("larkmoor/bag-3.json", { ...motorInHand, type: "motors/demo-h150.motor.json" }),
  file("larkmoor/motors/demo-h150.motor.json", { ...motor, thrust: "curve.csv" }),
  file("larkmoor/motors/curve.csv", csv),
  file("larkmoor/two-collar.tool.json", tool),
  file("larkmoor/larkmoor.field.json", field),
];
