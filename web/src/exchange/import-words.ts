import type { ImportReport } from "../store/index.js";

function documents(count: number): string {
  return count === 1 ? "1 document" : `${count} documents`;
}

/**
 * What came of an import, in one sentence.
 *
 * @example
 * importSentence({ added: [], same: [one, two], curves: [], issues: [] }); // "Nothing new: 2 documents are on the bench already."
 */
export function importSentence({ added, same, curves, issues }: ImportReport): string {
  const curveWords = curves.length === 1 ? "1 thrust curve" : `${curves.length} thrust curves`;
  if (added.length === 0 && same.length > 0 && curves.length === 0)
    return `Nothing new: ${documents(same.length)} ${same.length === 1 ? "is" : "are"} on the bench already.`;
  const came = [
    ...(added.length > 0 ? [documents(added.length)] : []),
    ...(curves.length > 0 ? [`${curveWords} without a motor`] : []),
  ];
  if (came.length === 0) return "Nothing could be taken in.";
  const known =
    same.length === 0 ? "" : ` ${documents(same.length)} ${same.length === 1 ? "was" : "were"} there already.`;
  const wrong = issues.length === 0 ? "" : " Not all of it is right: see below. It is kept as it came.";
  return `Taken in: ${came.join(" and ")}.${known}${wrong}`;
}
