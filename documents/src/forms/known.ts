/** Most answers that are kept. */
const MOST = 5000;

/** What was asked before: forms ask for the same fields with every key that is typed. */
export class Known<Answer> {
  private readonly answers = new Map<string, Answer>();

  /** @param find called where the question is new */
  of(question: string, find: () => Answer): Answer {
    if (this.answers.has(question)) return this.answers.get(question) as Answer;
    if (this.answers.size >= MOST) this.answers.clear();
    const answer = find();
    this.answers.set(question, answer);
    return answer;
  }
}
