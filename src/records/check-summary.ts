import { phrase } from '../phrase.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import type { VerdictWord } from '../verdict-words.ts';
import type { Finding, Severity } from './field.ts';

const words: Readonly<Record<Severity, VerdictWord>> = {
  reject: 'Reject',
  missing: 'Gaps',
  warn: 'Look again',
};

const worstFirst: readonly Severity[] = ['reject', 'missing', 'warn'];

/** More than this does not fit beside a row. */
const shown = 3;

/** The findings of a row as one verdict: the word of the worst, then the first few. */
export function checkSummary(findings: readonly Finding[]): Verdict {
  const ordered = worstFirst.flatMap((severity) =>
    findings.filter((finding) => finding.severity === severity),
  );
  const worst = ordered[0];
  if (!worst) return { word: 'Fine', reason: [] };
  const told = ordered.slice(0, shown).map(({ message }) => message);
  const rest = ordered.length - told.length;
  const sentence = told.reduce<Phrase>(
    (text, message, index) => (index === 0 ? message : phrase`${text}; ${message}`),
    [],
  );
  return {
    word: words[worst.severity],
    reason: rest > 0 ? phrase`${sentence}; and ${String(rest)} more` : sentence,
  };
}
