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

/** What is wrong in documents, each leading to its field; what is wrong with one that is not there leads nowhere. */
export function IssueList({ issues, doubts = [], label = "What is wrong" }: IssueListProps) {
  const entries = useListing();
  if (issues.length + doubts.length === 0) return null;
  const line = (note: Issue | Doubt, words: string) => {
    const entry = entries.find(({ path }) => path === note.file);
    return (
      <li key={`${note.file} ${note.path} ${note.code}`}>
        {entry === undefined ? (
          <p className="issue-list-item">
            <b>{note.file}</b>
            {words}
          </p>
        ) : (
          <Button className="issue-list-item" onPress={() => revealField(note.file, note.path, entry.kind)}>
            <b>{entry.name}</b>
            {words} <u>Go there</u>
          </Button>
        )}
      </li>
    );
  };
  return (
    <ul className="issue-list" aria-label={label}>
      {issues.map((issue) => line(issue, issueSentence(issue)))}
      {doubts.map((doubt) => line(doubt, doubtLine({ ...doubt, file: "" })))}
    </ul>
  );
}
