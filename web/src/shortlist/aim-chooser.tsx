import { FieldError, Input, Label, TextField } from "react-aria-components";
import { Alternatives } from "../parts/index.js";
import { aimItems, heightProblem, type TypedAim } from "./aim.js";

interface AimChooserProps {
  readonly aim: TypedAim;
  readonly hasCeiling: boolean;
  readonly onChange: (aim: TypedAim) => void;
}

/** What the motors are ordered by. */
export function AimChooser({ aim, hasCeiling, onChange }: AimChooserProps) {
  const items = aimItems(hasCeiling);
  const problem = heightProblem(aim);
  const choose = (id: string): void => {
    const by = items.find((item) => item.id === id)?.id;
    if (by !== undefined) onChange({ ...aim, by });
  };
  return (
    <div className="shortlist-aim">
      <Alternatives label="What comes first" items={items} chosen={aim.by} onChoose={choose} />
      {aim.by === "nearest-height" && (
        <TextField
          className={problem === null ? "field" : "field wrong"}
          value={aim.height}
          onChange={(height) => onChange({ ...aim, height })}
          isInvalid={problem !== null}
          validationBehavior="aria"
          autoComplete="off"
        >
          <Label>Height to reach</Label>
          <Input className="field-control" placeholder="700 m" />
          <span className="field-aside">above the pad</span>
          <FieldError className="field-error">{problem}</FieldError>
        </TextField>
      )}
    </div>
  );
}
