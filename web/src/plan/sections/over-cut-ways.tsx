import { overCutSentences, percent, type UnitSystem } from "@delaywright/documents";
import type { OverCut } from "@delaywright/engine";

/** What can be done with a motor that was cut too deep, each way with its odds; the last: do not fly it. */
export function OverCutWays({ overCut, units }: { readonly overCut: OverCut; readonly units: UnitSystem }) {
  const { now, ways, doNotFly } = overCutSentences(overCut, units);
  return (
    <div className="sheet-ways">
      <h3 className="sheet-part">What would make it right</h3>
      <p>{now} Read the depth once more before you believe it.</p>
      <ol>
        {ways.map(({ does, but, clean }) => (
          <li key={does}>
            <span>
              {does}
              {but !== null && <small>{but}</small>}
            </span>
            <b>{percent(clean)}</b>
          </li>
        ))}
        <li>
          <span>{doNotFly ?? "Do not fly it: keep it, labelled with its delay, for a rocket that it suits."}</span>
        </li>
      </ol>
    </div>
  );
}
