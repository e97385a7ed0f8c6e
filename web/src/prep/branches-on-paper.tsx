import { type PrepData, prepBranchLines, prepBranchWords, type UnitSystem } from "@delaywright/documents";
import type { PrepBranch } from "@delaywright/engine";

const branches: readonly PrepBranch[] = ["misfire", "scrub"];

/** On paper nobody knows yet whether it lights: what to do then stands below the sheet. */
export function BranchesOnPaper({ data, units }: { readonly data: PrepData; readonly units: UnitSystem }) {
  const walked = new Set(data.state.steps.map(({ step }) => step.branch));
  return branches
    .filter((branch) => !walked.has(branch))
    .map((branch) => {
      const { steps, again } = prepBranchLines(data, branch, units);
      return (
        <section className="prep-phase print-only" key={branch} aria-label={prepBranchWords(branch)}>
          <h3 className="sheet-part">{prepBranchWords(branch)}</h3>
          <ol className="prep-steps">
            {steps.map(({ id, title, how, hazards }) => (
              <li className="prep-step" key={id}>
                <div className="prep-head">
                  <h4>{title}</h4>
                  <span className="prep-blank">______ __:__</span>
                </div>
                <div className="prep-body">
                  <p>
                    <b>{hazards.join(" ")}</b>
                  </p>
                  {how.map((each) => (
                    <p key={each}>{each}</p>
                  ))}
                </div>
              </li>
            ))}
          </ol>
          <p>Then again: {again.map((title) => title.toLowerCase()).join("; ")}.</p>
        </section>
      );
    });
}
