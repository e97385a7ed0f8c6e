import { addressOf } from "../app/router.js";
import { More } from "../parts/index.js";
import { useListing } from "../store/index.js";

/** From the motors to a shortlist of them: which plan they are to suit is picked here. */
export function ShortlistLinks() {
  const plans = useListing().filter(({ kind }) => kind === "plan");
  if (plans.length === 0) return null;
  return (
    <More title="Shortlist of these motors for a plan" level={2}>
      <ul className="shelf-list">
        {plans.map(({ path, name }) => (
          <li key={path}>
            <a href={addressOf({ page: "shortlist", path })}>
              <b>{name}</b>
            </a>
          </li>
        ))}
      </ul>
    </More>
  );
}
