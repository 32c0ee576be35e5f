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
