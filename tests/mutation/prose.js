import { PluginKind, declareClassPlugin } from '@stryker-mutator/api/plugin';

/** What a text is given for where it is told and never compared: where a figure is from, what a field is for. */
const told = new Set(['source', 'description', 'summary', 'note', 'help']);

/**
 * Leaves out changes to text that only tells: the wording of sources and descriptions, and of the first sentence of an
 * error when no figure stands in it (code, parameter, what came in and what is allowed are compared). Verdicts, reasons,
 * labels, and every sentence with a figure stay.
 */
class ProseIgnorer {
  shouldIgnore(path) {
    const { node, parent, key } = path;
    const plain =
      node.type === 'StringLiteral' || (node.type === 'TemplateLiteral' && node.expressions.length === 0);
    if (!plain) return undefined;
    if (parent.type === 'ObjectProperty' && key === 'value' && told.has(parent.key.name))
      return 'source or description';
    if (
      parent.type === 'NewExpression' &&
      parent.callee.name === 'CalcError' &&
      path.listKey === 'arguments' &&
      key === 0
    )
      return 'sentence of an error without a figure';
    return undefined;
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Ignore, 'prose', ProseIgnorer)];
