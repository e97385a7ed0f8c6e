import { asksForCut, cautions, type DecisionData } from "@delaywright/documents";
import { styleFor } from "../style.js";
import { wrap } from "../wrap.js";
import { allChecks, checksNote } from "./all-checks.js";
import { backUp } from "./back-up.js";
import { basis } from "./basis.js";
import { beforeYouCut, twoCuts, why } from "./cutting.js";
import { driversText } from "./drivers.js";
import { flightSummary, packing, stabilityText } from "./flight-summary.js";
import { headline } from "./headline.js";
import { lookOut } from "./look-out.js";
import { openings } from "./openings.js";
import { overCutText } from "./over-cut.js";
import { settingsTable } from "./settings-table.js";
import { unopenedText } from "./unopened.js";

/**
 * A decision for a person: the answer first, then what to look out for, then all that it follows from.
 *
 * @param everyCheck every rule is listed, not only those that say stop or look
 */
export function decisionText(data: DecisionData, colour: boolean, everyCheck = false): string {
  const style = styleFor(colour);
  const headed = (section: string | null): string | null => {
    const [head = "", ...rest] = section?.split("\n") ?? [];
    return section === null ? null : [style.strong(head), ...rest].join("\n");
  };
  const cutFirst = asksForCut(data);
  const sections = [
    headline(data, style),
    twoCuts(data),
    cutFirst ? headed(beforeYouCut(data)) : null,
    overCutText(data),
    headed(lookOut(data, style)),
    openings(data),
    headed(settingsTable(data)),
    cutFirst ? null : headed(beforeYouCut(data)),
    why(data),
    headed(backUp(data)),
    headed(flightSummary(data)),
    headed(stabilityText(data)),
    headed(packing(data)),
    headed(unopenedText(data)),
    headed(driversText(data)),
    checksNote(data, everyCheck),
    everyCheck ? headed(allChecks(data)) : null,
    basis(data),
    cautions.authority.map((line) => wrap(line)).join("\n"),
  ];
  return `${sections.filter((section) => section !== null).join("\n\n")}\n`;
}
