// Adding, subtracting or comparing two quantities of different units compiles, because both are numbers.
// This finds it: every `+ - < > <= >=` in src whose operands carry different unit tags.
import path from 'node:path';
import ts from 'typescript';

const operators = new Set([
  ts.SyntaxKind.PlusToken,
  ts.SyntaxKind.MinusToken,
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
  ts.SyntaxKind.PlusEqualsToken,
  ts.SyntaxKind.MinusEqualsToken,
]);

const sums = new Set([ts.SyntaxKind.PlusToken, ts.SyntaxKind.MinusToken]);

/**
 * The places in a program where two quantities of different units are added, subtracted or compared.
 * @param {ts.Program} program
 * @param {(file: string) => boolean} isWanted
 * @returns {string[]}
 */
function mixedTags(program, isWanted) {
  const checker = program.getTypeChecker();
  const found = [];

  /**
   * The unit words of an expression; a sum or difference has lost its tag, so the units of its terms stand for it.
   * @param {ts.Expression} expression
   * @returns {string | undefined}
   */
  const unitWords = (expression) => {
    if (ts.isParenthesizedExpression(expression)) return unitWords(expression.expression);
    if (ts.isPrefixUnaryExpression(expression)) return unitWords(expression.operand);
    if (ts.isBinaryExpression(expression) && sums.has(expression.operatorToken.kind)) {
      return unitWords(expression.left) ?? unitWords(expression.right);
    }
    const tag = checker.getTypeAtLocation(expression).getProperty('~unit');
    if (tag === undefined) return undefined;
    const type = checker.getTypeOfSymbolAtLocation(tag, expression);
    const words = (type.isUnion() ? type.types : [type]).filter((t) => t.isStringLiteral()).map((t) => t.value);
    return words.length === 0 ? undefined : words.sort().join(' or ');
  };

  /** @param {ts.Node} node */
  const visit = (node) => {
    if (ts.isBinaryExpression(node) && operators.has(node.operatorToken.kind)) {
      const left = unitWords(node.left);
      const right = unitWords(node.right);
      if (left !== undefined && right !== undefined && left !== right) {
        const file = node.getSourceFile();
        const line = file.getLineAndCharacterOfPosition(node.getStart()).line + 1;
        found.push(`${path.relative('.', file.fileName)}:${line} ${node.getText()} mixes ${left} with ${right}`);
      }
    }
    ts.forEachChild(node, visit);
  };

  for (const file of program.getSourceFiles()) if (isWanted(path.relative('.', file.fileName))) visit(file);
  return found;
}

/**
 * The program that tsconfig.json describes, or the given files under its options.
 * @param {readonly string[]} files
 */
function program(files) {
  const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, '.');
  const own = fileNames.filter((name) => path.relative('.', name).startsWith('src/'));
  return ts.createProgram(files.length > 0 ? files : own, options);
}

// Without arguments all of src; otherwise the files named (the test of this script).
const files = process.argv.slice(2);
const found = mixedTags(program(files), (file) => (files.length > 0 ? files.includes(file) : file.startsWith('src/')));
for (const line of found) console.error(line);
if (found.length > 0) process.exitCode = 1;
else console.log('no quantities of different units are added, subtracted or compared');
