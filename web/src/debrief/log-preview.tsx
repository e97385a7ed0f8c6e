import {
  type LogColumn,
  type LogMapping,
  type LogPreview,
  type LogQuantity,
  logColumnWhy,
  logDoubtSentence,
  logQuantities,
  logQuantityWords,
  logUnitChoices,
  upperFirst,
} from "@delaywright/documents";
import { Checkbox } from "react-aria-components";
import { PickField } from "../parts/index.js";
import { withColumn, withReversed, withUnit } from "./mapping.js";

export interface LogPreviewTableProps {
  readonly preview: LogPreview;
  readonly onMapping: (mapping: LogMapping) => void;
}

const NOT_USED = "(not used)";
/** Cells that are shown of a column. */
const CELLS = 4;

/** Each column of a file, some of its cells, and what it is taken for, to be put right. */
export function LogPreviewTable({ preview, onMapping }: LogPreviewTableProps) {
  const { columns, doubts } = preview;
  const general = doubts.filter(({ column }) => column === null);
  return (
    <>
      {general.map((doubt) => (
        <p key={doubt.code} className="debrief-doubt">
          {logDoubtSentence(doubt, columns)}
        </p>
      ))}
      <ul className="log-columns">
        {columns.map((column) => (
          <Column key={column.index} column={column} preview={preview} onMapping={onMapping} />
        ))}
      </ul>
    </>
  );
}

function Column({ column, preview, onMapping }: LogPreviewTableProps & { readonly column: LogColumn }) {
  const { index, heading, cells, guess, unit, reversed } = column;
  const { columns, doubts, mapping } = preview;
  const name = heading === "" ? `Column ${index + 1}` : heading;
  const own = doubts.filter((doubt) => doubt.column === index);
  return (
    <li className="log-column">
      <div className="log-column-head">
        <b>{name}</b>
        <span className="log-cells">{cells.slice(0, CELLS).join("  ")}</span>
      </div>
      <div className="log-column-fields">
        <PickField
          frame="debrief-choice alone"
          label={`${name} holds`}
          hiddenLabel
          items={[
            { id: NOT_USED, word: "not used" },
            ...logQuantities.map((quantity) => ({ id: quantity, word: logQuantityWords(quantity) })),
          ]}
          chosen={guess ?? NOT_USED}
          onChoose={(id) => onMapping(withColumn(preview, index, id === NOT_USED ? null : (id as LogQuantity)))}
        />
        {guess !== null && guess !== "marks" && (
          <PickField
            frame="debrief-choice alone"
            label={`Unit of ${name}`}
            hiddenLabel
            items={logUnitChoices(guess).map((symbol) => ({ id: symbol, word: symbol }))}
            chosen={unit}
            placeholder="unit"
            onChoose={(symbol) => onMapping(withUnit(mapping, guess, symbol))}
          />
        )}
      </div>
      {guess !== null && <p className="quiet">{upperFirst(logColumnWhy(column))}.</p>}
      {guess === "acceleration" && (
        <Checkbox
          className="debrief-check"
          isSelected={reversed}
          onChange={(turned) => onMapping(withReversed(mapping, turned))}
        >
          <i aria-hidden="true" /> forward counts as negative in it
        </Checkbox>
      )}
      {own.map((doubt) => (
        <p key={`${doubt.code} ${doubt.quantity}`} className="debrief-doubt">
          {logDoubtSentence(doubt, columns)}
        </p>
      ))}
    </li>
  );
}
