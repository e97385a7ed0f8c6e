import { fieldAt } from "@delaywright/documents";
import { memo } from "react";
import { joinField, leadsTo } from "../parts/field-path.js";
import {
  ChoiceField,
  ColumnsField,
  DayField,
  DocumentField,
  More,
  NumberField,
  QuantityField,
  RowsField,
  TextField,
  YesNo,
  YesOrNo,
} from "../parts/index.js";
import { useNotes } from "../parts/scope.js";

import { useEntryPart } from "../store/index.js";
import { EitherField } from "./either-field.js";
import { type FieldPart, type FormPart, fieldsOf, type MorePart } from "./model.js";

export interface FormPartsProps {
  /** Path of the document. */
  readonly path: string;
  /** Where in it the form stands; empty: the whole document. */
  readonly base?: string;
  readonly parts: readonly FormPart[];
}

/** The fields of a form, each by the control that fits it. */
export const FormParts = memo(function FormParts({ path, base = "", parts }: FormPartsProps) {
  return parts.map((part) => <OnePart key={keyOf(part)} path={path} base={base} part={part} />);
});

function keyOf(part: FormPart): string {
  if (part.part === "own") return part.id;
  return "field" in part ? part.field : part.label;
}

interface OnePartProps<Part> {
  readonly path: string;
  readonly base: string;
  readonly part: Part;
}

function OnePart({ path, base, part }: OnePartProps<FormPart>) {
  switch (part.part) {
    case "field":
      return <FieldControl path={path} base={base} part={part} />;
    case "rows":
      return (
        <RowsField
          path={path}
          field={joinField(base, part.field)}
          label={part.label}
          one={part.one}
          start={() => structuredClone(part.start)}
          hint={part.hint}
          flat={part.flat}
          fixedOrder={part.fixedOrder}
        >
          {(row) => <FormParts path={path} base={row} parts={part.parts} />}
        </RowsField>
      );
    case "either":
      return (
        <EitherField path={path} base={base} part={part}>
          {(branch) => <FormParts path={path} base={base} parts={branch.parts} />}
        </EitherField>
      );
    case "more":
      return <MoreParts path={path} base={base} part={part} />;
    case "own":
      return part.show(path, base);
    case "columns":
      return <ColumnsField path={path} field={joinField(base, part.field)} label={part.label} columns={part.columns} />;
  }
}

function FieldControl({ path, base, part }: OnePartProps<FieldPart>) {
  const kind = useEntryPart(path, (entry) => entry?.kind);
  const name = joinField(base, part.field);
  const { part: _, field: __, ...rest } = part;
  const props = { ...rest, path, field: name };
  switch (kind == null ? undefined : fieldAt(kind, name)?.holds) {
    case "quantity":
      return <QuantityField {...props} />;
    case "number":
      return <NumberField {...props} />;
    case "choice":
      return <ChoiceField {...props} />;
    case "yes-no":
      return part.threeWay === true ? <YesOrNo {...props} /> : <YesNo {...props} />;
    case "reference":
      return <DocumentField {...props} />;
    default:
      if (part.day === true) return <DayField {...props} />;
      return part.kinds === undefined ? <TextField {...props} /> : <DocumentField {...props} />;
  }
}

/** Parts behind one line, which says when something in it is missing or wrong; then it starts open. */
function MoreParts({ path, base, part }: OnePartProps<MorePart>) {
  const { issues } = useNotes(path);
  const drafts = useEntryPart(path, (entry) => Object.keys(entry?.drafts ?? {}).join("\n"));
  const fields = fieldsOf(part.parts, base);
  const inside = (place: string) => {
    const plain = place.replace(/\[\d+\]/g, "[]");
    return place !== "" && fields.some((each) => leadsTo(plain, each) || leadsTo(each, plain));
  };
  const wrong = issues.filter((issue) => inside(issue.path));
  const needed = wrong.filter((issue) => issue.code === "missing").length;
  const toMend = wrong.length - needed + drafts.split("\n").filter(inside).length;
  const words = [needed > 0 ? `${needed} needed` : "", toMend > 0 ? `${toMend} to mend` : ""].filter(
    (each) => each !== "",
  );
  return (
    <More
      title={part.label}
      aside={part.aside}
      call={words.length === 0 ? undefined : words.join(", ")}
      open={words.length > 0}
    >
      <FormParts path={path} base={base} parts={part.parts} />
    </More>
  );
}
