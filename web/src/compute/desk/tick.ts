/**
 * A pause that lets the messages that have come be taken: shorter than any timer.
 *
 * @returns call and await it
 */
export function ticker(): () => Promise<void> {
  const { port1, port2 } = new MessageChannel();
  let waiting: (() => void)[] = [];
  port2.onmessage = () => {
    const now = waiting;
    waiting = [];
    for (const resolve of now) resolve();
  };
  return () =>
    new Promise((resolve) => {
      waiting.push(resolve);
      if (waiting.length === 1) port1.postMessage(null);
    });
}
