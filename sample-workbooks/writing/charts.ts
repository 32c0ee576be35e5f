import type { Chart } from 'excelize-wasm';

import type { Excelize } from './excelize.ts';
import type { ChartRecipe } from './recipe.ts';

/** Translates a chart into the writer's terms; it becomes a native chart that follows its cells. */
export function chartOf(recipe: ChartRecipe, excelize: Excelize): Chart {
  const type = {
    curve: excelize.Scatter,
    columns: excelize.Col,
    stacked: excelize.ColStacked,
    bars: excelize.Bar,
  }[recipe.kind];
  const dashes = {
    solid: excelize.LineDashSolid,
    dash: excelize.LineDashDash,
    dot: excelize.LineDashSysDot,
    'dash dot': excelize.LineDashSashDot,
  };
  const labels = { Family: 'Arial', Size: 9, Color: '3D4852' };
  const curve = recipe.kind === 'curve';
  const text = (words: string, size: number, bold: boolean) => ({
    Paragraph: [{ Text: words, Font: { Family: 'Arial', Size: size, Bold: bold, Color: '22384D' } }],
  });
  return {
    Type: type,
    Series: recipe.series.map((series) => ({
      Name: series.name,
      Categories: series.across,
      Values: series.values,
      Fill: { Type: 'pattern', Pattern: 1, Color: [series.colour] },
      ...(curve
        ? {
            Line: {
              Type: excelize.LineSolid,
              Width: series.thin === true ? 1 : 1.75,
              Smooth: recipe.straight !== true,
              Dash: dashes[series.dash ?? 'solid'],
              Fill: { Type: 'pattern', Pattern: 1, Color: [series.colour] },
            },
            Marker: {
              Symbol: series.marker ?? 'none',
              Size: 6,
              Fill: { Type: 'pattern', Pattern: 1, Color: [series.colour] },
            },
          }
        : {}),
    })),
    Title: text(recipe.title, 12, true),
    Dimension: { Width: recipe.widthPx, Height: recipe.heightPx },
    Legend: { Position: recipe.legend === false ? 'none' : 'bottom', ShowLegendKey: false },
    ...(recipe.gapWidth === undefined ? {} : { GapWidth: recipe.gapWidth }),
    XAxis: {
      MajorGridLines: curve,
      ...(recipe.acrossTitle === '' ? {} : { Title: text(recipe.acrossTitle, 10, false) }),
      Font: labels,
      ...(recipe.acrossLimits === undefined
        ? {}
        : { Minimum: recipe.acrossLimits[0], Maximum: recipe.acrossLimits[1] }),
    },
    YAxis: {
      MajorGridLines: true,
      ...(recipe.valueTitle === '' ? {} : { Title: text(recipe.valueTitle, 10, false) }),
      Font: labels,
      ...(recipe.valueLimits === undefined
        ? {}
        : { Minimum: recipe.valueLimits[0], Maximum: recipe.valueLimits[1] }),
    },
    ShowBlanksAs: 'gap',
    PlotArea: { ShowVal: false, ShowCatName: false, ShowSerName: false },
  };
}
