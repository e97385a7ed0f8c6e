/** Words for a plan whose computing met a defect. */
export function defectWords(reason: string): string {
  return `This plan could not be computed: a defect of the app (${reason}). Your documents are kept. Change the field you changed last, or export the plan and report it.`;
}

/** Words for a crew that stopped again and again. */
export function stoppedWords(times: number): string {
  return `The computing stopped ${times} times in a row. Your documents are kept. It starts again with your next change; if it stops again, load the page again.`;
}
