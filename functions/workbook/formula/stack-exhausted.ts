/**
 * Whether an exception says that calls went too deep, as Node, Chromium and Safari or Firefox put it. Asked where hardly
 * any stack is left: a regular expression there ends the process.
 */
export function isStackExhausted(problem: unknown): boolean {
  if (!(problem instanceof Error)) return false;
  return problem.message.includes('call stack') || problem.message.includes('too much recursion');
}
