import "./forms.css";
import { joinField, valueAt } from "../parts/field-path.js";
import { TextField, YesNo } from "../parts/index.js";
import { useEntry } from "../store/index.js";

export interface InstructionsFieldProps {
  readonly path: string;
  readonly base: string;
}

/** Whether the motor's own instructions allow shortening its delay: said by hand, never preset. */
export function InstructionsField({ path, base }: InstructionsFieldProps) {
  const entry = useEntry(path);
  const at = joinField(base, "delay.instructions");
  const found = valueAt(entry?.raw, at) as { allowCutting?: unknown; tool?: unknown } | undefined;
  return (
    <div className="instructions">
      <p className="caution">
        <b>May this delay be cut?</b>
        Only the motor's own instructions say whether, how and with which tool. Until you confirm that you read it
        there, odds are shown but no cut.
      </p>
      <YesNo
        path={path}
        field={joinField(at, "allowCutting")}
        label="The motor's printed instructions allow shortening the delay"
      />
      {(found?.allowCutting === true || found?.tool !== undefined) && (
        <TextField
          path={path}
          field={joinField(at, "tool")}
          label="The tool that they name"
          along={{ allowCutting: false }}
        />
      )}
    </div>
  );
}
