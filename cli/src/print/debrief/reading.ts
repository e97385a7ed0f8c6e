import {
  logColumnName,
  logColumnWhy,
  logDoubtSentence,
  logQuantityWords,
  logReadSentence,
  type ReadLogRecord,
} from "@delaywright/documents";

/** What the columns were taken for, and what is not certain of it. */
export function readingSentences(read: ReadLogRecord): string[] {
  const { columns, doubts } = read;
  const used = columns.flatMap((column) => {
    const { index, guess, unit } = column;
    if (guess === null) return [];
    const inUnit = unit === null ? "" : ` in ${unit}`;
    return [`${logColumnName(columns, index)} is ${logQuantityWords(guess)}${inUnit} (${logColumnWhy(column)})`];
  });
  return [
    logReadSentence(read),
    `${used.join("; ")}. --column says otherwise.`,
    ...doubts.map((doubt) => logDoubtSentence(doubt, columns)),
  ];
}
