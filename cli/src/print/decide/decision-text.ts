import { cautions } from "@delaywright/documents";
import type { Answer } from "../answer.js";
import { styleFor } from "../style.js";
import { wrap } from "../wrap.js";
import { backUp } from "./back-up.js";
import { basis } from "./basis.js";
import { asksForCut, beforeYouCut, twoCuts, why } from "./cutting.js";
import { driversText } from "./drivers.js";
import { flightSummary, packing, stabilityText } from "./flight-summary.js";
import { headline } from "./headline.js";
import { lookOut, withinLimits } from "./look-out.js";
import { openings } from "./openings.js";
import { overCutText } from "./over-cut.js";
import { settingsTable } from "./settings-table.js";
import { unopenedText } from "./unopened.js";

/** A decision for a person: the answer first, then what to look out for, then all that it follows from. */
export function decisionText(answer: Answer, colour: boolean): string {
  const style = styleFor(colour);
  const headed = (section: string | null): string | null => {
    const [head = "", ...rest] = section?.split("\n") ?? [];
    return section === null ? null : [style.strong(head), ...rest].join("\n");
  };
  const cutFirst = asksForCut(answer);
  const sections = [
    headline(answer, style),
    twoCuts(answer),
    cutFirst ? headed(beforeYouCut(answer)) : null,
    overCutText(answer),
    headed(lookOut(answer, style)),
    openings(answer),
    headed(settingsTable(answer)),
    cutFirst ? null : headed(beforeYouCut(answer)),
    why(answer),
    headed(backUp(answer)),
    headed(flightSummary(answer)),
    headed(stabilityText(answer)),
    headed(packing(answer)),
    headed(unopenedText(answer)),
    headed(driversText(answer)),
    withinLimits(answer),
    basis(answer),
    cautions.authority.map((line) => wrap(line)).join("\n"),
  ];
  return `${sections.filter((section) => section !== null).join("\n\n")}\n`;
}
