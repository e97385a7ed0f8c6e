import { useState } from "react";
import { Loaded, loadedLater, More } from "../parts/index.js";
import type { SectionProps } from "../plan/sections/section-props.js";

const steadinessView = loadedLater(async () => (await import("./steadiness-view.js")).SteadinessView);

/** How steadily the plan flies: flown and drawn only while it is open. */
export function SteadinessPart(props: SectionProps) {
  const [open, setOpen] = useState(false);
  return (
    <More title="How steady it flies" aside="as a rigid body" onTurn={setOpen}>
      {open && (
        <Loaded part={steadinessView} props={props} waiting={<p className="quiet sheet-picture-room">Opening …</p>} />
      )}
    </More>
  );
}
