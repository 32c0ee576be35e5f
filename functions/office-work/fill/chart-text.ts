/** A chart without the series whose names stand in the given cells. */
export function withoutSeries(chartXml: string, absent: readonly string[]): string {
  return absent.reduce((xml, name) => {
    const escaped = name.replaceAll("'", '&#39;');
    return xml.replace(/<ser>.*?<\/ser>/gs, (series) =>
      series.includes(`<tx><strRef><f>${escaped}</f>`) ? '' : series,
    );
  }, chartXml);
}

/** Words that a chart's title leaves open, such as the unit of weight. */
export function titled(chartXml: string, words: Readonly<Record<string, string>>): string {
  return Object.entries(words).reduce((xml, [open, word]) => xml.replaceAll(`{${open}}`, word), chartXml);
}

/**
 * A chart of several series with those that it lacks, each like the last one it has: a gas that was added for the first
 * time. Charts that none of the names belong to stay as they are.
 *
 * @param names - cells of the names of series, "Figures!$H$5", in their order
 */
export function addSeries(chartXml: string, names: readonly string[]): string {
  const pattern = /<(?:c:)?ser>.*?<\/(?:c:)?ser>/gs;
  const series = [...chartXml.matchAll(pattern)].map(([text]) => text);
  const holds = (text: string, name: string): boolean =>
    text.replaceAll(/&#39;|&apos;|'/g, '').includes(`>${name}<`);
  const present = names.filter((name) => series.some((text) => holds(text, name)));
  const [model, last] = [series.at(-1), present.at(-1)];
  if (model === undefined || last === undefined) return chartXml;
  const column = (name: string): string => /\$([A-Z]+)\$\d+$/.exec(name)?.[1] ?? '';
  const more = names
    .filter((name) => !present.includes(name))
    .map((name, index) =>
      model
        .replaceAll(`$${column(last)}$`, `$${column(name)}$`)
        .replace(/(<(?:c:)?(?:idx|order) val=")\d+(")/g, `$1${series.length + index}$2`)
        .replace(/<(?:c:)?(?:strCache|numCache)>.*?<\/(?:c:)?(?:strCache|numCache)>/gs, '')
        .replace(
          /(<a:srgbClr val=")[0-9A-Fa-f]{6}(")/g,
          `$1${moreColours[index % moreColours.length] ?? '5B6B78'}$2`,
        ),
    );
  return chartXml.replace(model, () => model + more.join(''));
}

const moreColours = ['6FA8D6', 'E9C46A', '3F6484', '8A6D1B', 'A9BCCB', '5B6B78'] as const;
