import type { RankedData, UnitSystem } from "@delaywright/documents";
import { useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { addressOf } from "../app/router.js";
import { figureSentences, leadWords, noteSentences } from "./row-words.js";

/** A hyphen at which no line ends. */
const UNBROKEN = "\u2011";

interface MotorRowProps {
  readonly row: RankedData;
  readonly draws: number;
  readonly units: UnitSystem;
  /** Said once for all of them. */
  readonly shared: ReadonlySet<string>;
  /** It is of before a change, and is being judged anew. */
  readonly waiting: boolean;
  readonly inPlan: boolean;
  readonly plan: string;
  readonly onPut: () => void;
  readonly onNew: () => void;
}

/** A motor that is not refused: its cut and odds, what asks for a look, its figures in sentences, and what can be done with it. */
export function MotorRow({ row, draws, units, shared, waiting, inPlan, plan, onPut, onNew }: MotorRowProps) {
  const link = useRef<HTMLAnchorElement>(null);
  const pressed = useRef(false);
  useEffect(() => {
    if (inPlan && pressed.current) link.current?.focus();
    pressed.current = false;
  }, [inPlan]);
  const put = (): void => {
    pressed.current = true;
    onPut();
  };
  const notes = noteSentences(row, shared, units);
  const own = [row.maker, row.designation].filter((word) => word !== null && word !== row.name);
  const made = own.map((word) => word?.replaceAll("-", UNBROKEN)).join(", ");
  return (
    <li className={waiting ? "motor-row waiting" : "motor-row"}>
      <div className="motor-row-words">
        <h3>
          {row.name} {made !== "" && <small>{made}</small>}
        </h3>
        <p className="motor-row-lead">{leadWords(row, draws)}</p>
        <p>{figureSentences(row, units).join(" ")}</p>
        {notes.length > 0 && <p className="second">{notes.join(" ")}</p>}
        {waiting && <p className="quiet">As it was before the change; being judged anew.</p>}
      </div>
      <div className="motor-row-acts">
        {inPlan ? (
          <a ref={link} className="act" href={addressOf({ page: "plan", path: plan })}>
            In the plan: open it
          </a>
        ) : (
          <Button className="act" onPress={put}>
            Put it into the plan<span className="hidden">: {row.name}</span>
          </Button>
        )}
        <Button className="act" onPress={onNew}>
          New plan with it<span className="hidden">: {row.name}</span>
        </Button>
      </div>
    </li>
  );
}
