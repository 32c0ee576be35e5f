import ts from 'typescript';

/** Syntax of a script that Google Sheets and older editors do not read, by name; found by parsing, not by running. */
export function tooModern(script: string): readonly string[] {
  const file = ts.createSourceFile('script.js', script, ts.ScriptTarget.Latest, false, ts.ScriptKind.JS);
  const found = new Set<string>();
  visit(file);
  return [...found];

  function visit(node: ts.Node): void {
    const name = nameOf(node);
    if (name !== undefined) found.add(name);
    ts.forEachChild(node, visit);
  }
}

function nameOf(node: ts.Node): string | undefined {
  if (ts.isPrivateIdentifier(node)) return 'private field';
  if (ts.isPropertyDeclaration(node)) return 'class field';
  if (ts.isClassStaticBlockDeclaration(node)) return 'static block';
  if (ts.isBigIntLiteral(node)) return 'big integer';
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return 'module';
  if ('questionDotToken' in node && node.questionDotToken) return 'optional chaining';
  if (ts.isBinaryExpression(node)) {
    const modern = [
      ts.SyntaxKind.QuestionQuestionToken,
      ts.SyntaxKind.QuestionQuestionEqualsToken,
      ts.SyntaxKind.BarBarEqualsToken,
      ts.SyntaxKind.AmpersandAmpersandEqualsToken,
    ];
    if (modern.includes(node.operatorToken.kind)) return 'operator of ES2020 or later';
  }
  return undefined;
}
