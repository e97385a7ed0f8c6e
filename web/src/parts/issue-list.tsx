import "./issue-list.css";
import { type Doubt, doubtLine, type Issue, issueSentence } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { useListing } from "../store/index.js";
import { revealField } from "./field-id.js";

export interface IssueListProps {
  readonly issues: readonly Issue[];
  /** What is unlikely, after what is wrong. */
  readonly doubts?: readonly Doubt[];
  readonly label?: string;
}

/** What is wrong in documents, each leading to its field. */
export function IssueList({ issues, doubts = [], label = "What is wrong" }: IssueListProps) {
  const entries = useListing();
  if (issues.length + doubts.length === 0) return null;
  const nameOf = (file: string) => entries.find((entry) => entry.path === file)?.name ?? file;
  const kindOf = (file: string) => entries.find((entry) => entry.path === file)?.kind ?? null;
  const line = (note: Issue | Doubt, words: string) => (
    <li key={`${note.file} ${note.path} ${note.code}`}>
      <Button className="issue-list-item" onPress={() => revealField(note.file, note.path, kindOf(note.file))}>
        <b>{nameOf(note.file)}</b>
        {words} <u>Go there</u>
      </Button>
    </li>
  );
  return (
    <ul className="issue-list" aria-label={label}>
      {issues.map((issue) => line(issue, issueSentence(issue)))}
      {doubts.map((doubt) => line(doubt, doubtLine({ ...doubt, file: "" })))}
    </ul>
  );
}
