// Builds what the worksheet page of the documentation needs into site/worksheet-page: its script with the library, its
// style sheet, and of each formula a script of its own, which the page loads when a figure is opened.
import fs from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';

const source = 'docs/worksheet-page';

/** Every TeX of a formula that the working prints: the equation and the letters. */
const texOf = ({ equation, symbols }) => [equation, ...Object.values(symbols).map(({ symbol }) => symbol)];

/** @param {string} site the folder of the built site */
export async function buildWorksheetPage(site) {
  if (!fs.existsSync('dist/worksheet.js'))
    throw new Error('the worksheet page is made of the built library: npm run build');
  const folder = path.join(site, 'worksheet-page');
  fs.rmSync(folder, { recursive: true, force: true });
  await build({
    entryPoints: { page: `${source}/page.ts`, style: `${source}/page.css` },
    outdir: folder,
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    // Without the paths of the types: the page takes the library as any other app does.
    tsconfigRaw: {},
    logLevel: 'warning',
  });
  const { checkValues, formulaMathml, formulaRecords } = await import('groundroll/register');
  const { worksheetFormula } = await import('groundroll/worksheet');
  fs.mkdirSync(path.join(folder, 'formulas'));
  for (const record of formulaRecords) {
    const formula = worksheetFormula(record, checkValues);
    const mathml = Object.fromEntries(texOf(formula).map((tex) => [tex, formulaMathml[tex]]));
    fs.writeFileSync(
      path.join(folder, 'formulas', `${record.id}.js`),
      `worksheetPageFormula(${JSON.stringify({ formula, mathml })});\n`,
    );
  }
}
