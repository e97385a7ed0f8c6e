import type { ImportReport } from "../store/index.js";

function documents(count: number): string {
  return count === 1 ? "1 document" : `${count} documents`;
}

/** Back-ups that break off, a sentence each, with a blank before it. */
function brokenWords(issues: ImportReport["issues"]): string {
  return issues
    .filter(({ code }) => code === "back-up-broken")
    .map(({ file, path }) => ` The back-up ${file} breaks off at ${path}: none of its documents came in.`)
    .join("");
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
    return `Nothing new: ${documents(same.length)} ${same.length === 1 ? "is" : "are"} on the bench already.${brokenWords(issues)}`;
  const came = [
    ...(added.length > 0 ? [documents(added.length)] : []),
    ...(curves.length > 0 ? [`${curveWords} without a motor`] : []),
  ];
  if (came.length === 0) return `Nothing could be taken in.${brokenWords(issues)}`;
  const known =
    same.length === 0 ? "" : ` ${documents(same.length)} ${same.length === 1 ? "was" : "were"} there already.`;
  const wrong = issues.every(({ code }) => code === "back-up-broken")
    ? ""
    : " Not all of it is right: see below. It is kept as it came.";
  return `Taken in: ${came.join(" and ")}.${known}${brokenWords(issues)}${wrong}`;
}
