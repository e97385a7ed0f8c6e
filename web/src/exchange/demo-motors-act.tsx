import "./demo-motors.css";
import { useState } from "react";
import { Button } from "react-aria-components";
import { importInto } from "../store/index.js";

/** Puts the demo library onto the bench; it is loaded only now. Returns what came of it, in words. */
async function bringDemoMotors(): Promise<string> {
  try {
    const { demoMotorFiles } = await import("./demo-motor-files.js");
    const { added } = await importInto(demoMotorFiles());
    if (added.length === 0) return "They are all on the bench already.";
    return `${added.length} invented motor types are on the bench now. Undo takes them off again.`;
  } catch {
    return "They could not be loaded. Without a network they are there once the app is kept on this device; try again then.";
  }
}

/** Offers a library of invented motors to try things out with. */
export function DemoMotorsAct() {
  const [busy, setBusy] = useState(false);
  const [said, say] = useState("");
  const bring = async (): Promise<void> => {
    setBusy(true);
    say(await bringDemoMotors());
    setBusy(false);
  };
  return (
    <section className="demo-motors" aria-label="Motors to try it out with">
      <p className="second">
        To try it out there is a demo library of motors, all of them invented: no maker, figure or certificate in it is
        real.
      </p>
      <Button className="act" onPress={() => void bring()} isPending={busy}>
        Bring the demo motors
      </Button>
      <p role="status">{said}</p>
    </section>
  );
}
