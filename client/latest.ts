/**
 * Makes a trigger of a task, which never runs twice at once: of the calls that come while it runs, the last one counts,
 * and starts it once more. So the newest state is shown as soon as the server can, without a delay.
 */
export function latest(task: () => Promise<void>): () => void {
  let running = false;
  let again = false;
  const run = async (): Promise<void> => {
    running = true;
    try {
      do {
        again = false;
        await task();
      } while (again);
    } finally {
      running = false;
    }
  };
  return () => {
    if (running) again = true;
    else void run();
  };
}
