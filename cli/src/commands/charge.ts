import { chargeStops, chargeToEngine, type Issue, loadAny, packingToEngine, placedMotor } from "@delaywright/documents";
import { bayFindings, type MotorCharge, staticPortFindings } from "@delaywright/engine";
import { EXIT, type Io } from "../io/io.js";
import type { ChargeData } from "../print/answer.js";
import { chargeText } from "../print/charge-text.js";
import { issuesText } from "../print/issues.js";
import { jsonText } from "../print/json.js";

/** What `delaywright charge` was asked. */
export interface ChargeArgs {
  readonly rocket: string;
  /** A motor's file, or a motor's in hand. */
  readonly motor?: string;
  readonly json?: boolean;
}

/** A motor's name and its charge, which is undefined where it has none; or what is wrong. */
type ReadMotor =
  | { readonly ok: true; readonly name: string | null; readonly charge: MotorCharge | undefined }
  | { readonly ok: false; readonly issues: readonly Issue[] };

async function motorOf(path: string | undefined, io: Io): Promise<ReadMotor> {
  if (path === undefined) return { ok: true, name: null, charge: undefined };
  const { root, issues } = await loadAny(path, io.files, ["motor", "motor-in-hand"]);
  const motor = placedMotor(root?.kind === "motor-in-hand" ? root.children["type"] : root);
  if (issues.length > 0 || motor === undefined) return { ok: false, issues };
  return { ok: true, name: motor.document.name, charge: chargeToEngine(motor.document) };
}

/** The ejection charge that a rocket's bay needs, what its pins bear, and its static ports. */
export async function charge(args: ChargeArgs, io: Io): Promise<number> {
  const [loaded, motor] = [await loadAny(args.rocket, io.files, ["rocket"]), await motorOf(args.motor, io)];
  const { root } = loaded;
  const issues = [...loaded.issues, ...(motor.ok ? [] : motor.issues)];
  if (issues.length > 0 || root?.document?.kind !== "rocket" || !motor.ok) {
    io.err(issuesText(issues));
    return EXIT.wrongInput;
  }
  const { bay, electronicsBay } = packingToEngine(root.document);
  if (bay === undefined) {
    io.err(issuesText([missingBay(args.rocket)]));
    return EXIT.wrongInput;
  }
  const data: ChargeData = {
    rocket: root.document.name,
    motor: motor.name,
    bay: bayFindings(bay, { motorCharge: motor.charge }),
    staticPorts: staticPortFindings({ bay, ...(electronicsBay === undefined ? {} : { electronicsBay }) }),
  };
  io.out(args.json ? jsonText(data) : chargeText(data));
  return chargeStops(data.bay) ? EXIT.notGoodEnough : EXIT.done;
}

function missingBay(file: string): Issue {
  return {
    file,
    path: "bay",
    code: "missing",
    found: "nothing",
    accepted: "the bay that the ejection charge opens",
    example: '{ "diameter": "72 mm", "length": "250 mm" }',
  };
}
