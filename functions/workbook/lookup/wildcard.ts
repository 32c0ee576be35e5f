/** One step of a pattern: any text, any one character, or the character in `is`. */
interface Step {
  readonly kind: 'any text' | 'any character' | 'this';
  readonly is: string;
}

export function hasWildcard(text: string): boolean {
  return /[*?~]/.test(text);
}

/** Reads a pattern with * for any text, ? for one character and ~ before a character meant literally. */
function stepsOf(pattern: string): Step[] {
  const steps: Step[] = [];
  for (let index = 0; index < pattern.length; index++) {
    const character = pattern.charAt(index);
    const following = pattern.charAt(index + 1);
    if (character === '~' && (following === '*' || following === '?' || following === '~')) {
      steps.push({ kind: 'this', is: following });
      index++;
    } else if (character === '*') {
      if (steps[steps.length - 1]?.kind !== 'any text') steps.push({ kind: 'any text', is: '' });
    } else if (character === '?') {
      steps.push({ kind: 'any character', is: '' });
    } else {
      steps.push({ kind: 'this', is: character });
    }
  }
  return steps;
}

/**
 * Whether the steps fit the text from a start on, up to its end or, open-ended, up to anywhere. Goes back to the last
 * star only, so that no pattern can make it take more than text length times pattern length.
 */
function fits(steps: readonly Step[], text: string, start: number, openEnded: boolean): boolean {
  let at = start;
  let step = 0;
  let star = -1;
  let resume = start;
  for (;;) {
    const wanted = steps[step];
    if (wanted === undefined && (openEnded || at === text.length)) return true;
    if (wanted?.kind === 'any text') {
      star = step++;
      resume = at;
    } else if (
      wanted !== undefined &&
      at < text.length &&
      (wanted.kind === 'any character' || wanted.is === text.charAt(at))
    ) {
      step++;
      at++;
    } else if (star >= 0 && resume < text.length) {
      step = star + 1;
      at = ++resume;
    } else {
      return false;
    }
  }
}

/** A test whether a whole text fits a pattern, letter case ignored. */
export function wildcardTest(pattern: string): (text: string) => boolean {
  const steps = stepsOf(pattern.toLowerCase());
  return (text) => fits(steps, text.toLowerCase(), 0, false);
}

/** Where in a text a pattern first fits, letter case ignored; -1 when nowhere. */
export function findWildcard(pattern: string, text: string): number {
  const steps = stepsOf(pattern.toLowerCase());
  const lower = text.toLowerCase();
  for (let start = 0; start <= lower.length; start++) if (fits(steps, lower, start, true)) return start;
  return -1;
}
