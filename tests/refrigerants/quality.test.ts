import { describe, expect, it } from 'vitest';
import { mixingPairs } from '../../src/data/mixing/pairs.ts';
import { refrigerants } from '../../src/refrigerants/index.ts';

const published = mixingPairs.filter(({ source }) => !source.startsWith('estimated'));
const isPublished = (one: string, other: string): boolean =>
  published.some(({ first, second }) => [first, second].sort().join() === [one, other].sort().join());

/** Which pairs of a blend have published mixing parameters follows from the table of pairs alone. */
describe('quality grades and sources', () => {
  const blends = refrigerants().filter(({ isBlend }) => isBlend);

  it.each(blends.map((blend) => [blend.designation, blend] as const))('%s', (_designation, blend) => {
    const names = blend.composition.map(({ designation }) => designation);
    const estimated = names.flatMap((one, i) =>
      names
        .slice(i + 1)
        .filter((other) => !isPublished(one, other))
        .map((other) => `${one} with ${other}`),
    );
    const { qualityGrade, sources } = blend;
    const isFitted = sources.model.startsWith('equation of state');
    expect(qualityGrade.estimatedPairs).toEqual(isFitted ? [] : estimated);
    expect(qualityGrade.grade === 'partly estimated').toBe(!isFitted && estimated.length > 0);
    if (qualityGrade.grade === 'partly estimated') {
      expect(qualityGrade.doubtK).toBeGreaterThanOrEqual(1);
      for (const pair of estimated) expect(qualityGrade.reason).toContain(pair);
    } else expect(qualityGrade.doubtK).toBeGreaterThanOrEqual(isFitted ? 0.2 : 0.4);
    // Every paper named describes a pair of this blend, and each such paper is named.
    const papers = published
      .filter(({ first, second }) => names.includes(first) && names.includes(second))
      .map(({ source }) => source);
    if (!isFitted) {
      for (const paper of papers) expect(sources.model).toContain(paper);
      const others = published.map(({ source }) => source).filter((source) => !papers.includes(source));
      for (const paper of new Set(others)) expect(sources.model.split(/[ ,]+/)).not.toContain(paper);
    }
    expect(sources.composition).toContain('ASHRAE 34 nominal composition by mass');
    expect(sources.normalBoilingPoint).toContain(sources.model);
  });

  it.each(
    refrigerants()
      .filter(({ isBlend }) => !isBlend)
      .map((gas) => [gas.designation, gas] as const),
  )('%s is one substance with an equation of its own', (_designation, gas) => {
    expect(gas.qualityGrade).toMatchObject({ grade: 'published', doubtK: 0.1, estimatedPairs: [] });
    expect(gas.sources.composition).toBe('single substance');
    expect(gas.sources.criticalPoint).toContain('as stated with the equation of state');
  });
});
