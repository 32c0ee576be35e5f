import ts from 'typescript';

/**
 * Webpack loader for hosts that get their help from elsewhere (functions.json, comments): takes summaries,
 * descriptions, sources and examples out of the declarations before they are bundled. They are a third of the size,
 * and no calculation reads them.
 */
export default function withoutHelp(code) {
  const file = ts.createSourceFile('declaration.ts', code, ts.ScriptTarget.Latest, true);
  const edits = [];
  visit(file);
  return edits
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end, put }) => text.slice(0, start) + put + text.slice(end), code);

  function visit(node) {
    if (ts.isObjectLiteralExpression(node)) {
      const names = isDeclaration(node)
        ? ['summary', 'source', 'examples']
        : hasKind(node)
          ? ['description']
          : [];
      for (const property of node.properties) {
        if (!ts.isPropertyAssignment(property) || !names.includes(property.name.getText())) continue;
        const { initializer } = property;
        edits.push({
          start: initializer.getStart(),
          end: initializer.end,
          put: property.name.getText() === 'examples' ? '[]' : "''",
        });
      }
      if (isDeclaration(node)) {
        for (const property of node.properties) {
          if (!names.includes(property.name?.getText())) visit(property);
        }
        return;
      }
    }
    ts.forEachChild(node, visit);
  }
}

function isDeclaration(node) {
  return ts.isCallExpression(node.parent) && node.parent.expression.getText() === 'defineFunction';
}

function hasKind(node) {
  const has = (name) => node.properties.some((property) => property.name?.getText() === name);
  // Shared parameters may take their kind from a spread.
  return has('description') && (has('kind') || node.properties.some(ts.isSpreadAssignment));
}
