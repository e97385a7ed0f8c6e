import type { UnjudgedData } from "@delaywright/documents";
import { addressOf } from "../app/router.js";
import { IssueList, Section } from "../parts/index.js";

/** So many issues of one motor tell what it is about; its own page has them all. */
const FEW = 2;

/** Motors that could not be judged, with what is wrong in their documents. */
export function Unjudged({ motors }: { readonly motors: readonly UnjudgedData[] }) {
  if (motors.length === 0) return null;
  return (
    <Section title="Not judged" aside="something in their documents is wrong or missing">
      <ul className="refusals">
        {motors.map(({ file, name, issues }) => (
          <li key={file}>
            <h3>{name}</h3>
            <IssueList issues={issues.slice(0, FEW)} label={`What is wrong with ${name}`} />
            {issues.length > FEW && <p className="second">And {issues.length - FEW} more.</p>}
            <a className="act" href={addressOf({ page: "document", shelf: "motors", path: file })}>
              Open {name}
            </a>
          </li>
        ))}
      </ul>
    </Section>
  );
}
