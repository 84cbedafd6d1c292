// `npm run readme`: renews what the README shows of the library itself: the output and the figure of the main job, and
// the sources and check values behind each folder. With `--check` it only says whether anything has changed.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { assessTakeoff } from 'groundroll';
import { stairsFigure } from 'groundroll/worksheet';
import { registerData, summary } from './register-data.mjs';

const figureFile = 'docs/figures/takeoff-28.svg';
const request = 'examples/requests/takeoff-28.json';

/** The ledger as the demo prints it, down to the speeds. */
function mainJob() {
  const printed = execFileSync('node', ['examples/demo.mjs', request], { encoding: 'utf8' });
  return printed.slice(0, printed.indexOf('\nSpeeds:')).trimEnd();
}

/** The stairs in ink that follows the reader's colour scheme: a picture in a README cannot take it from the page. */
function figure() {
  const json = (file) => JSON.parse(fs.readFileSync(file, 'utf8'));
  const assessed = assessTakeoff({
    ...json(request),
    performanceData: json('examples/performance-data/corran-four.json'),
  });
  if (!assessed.ok) throw new Error('the example has faults');
  const ink =
    '<style>svg{color:#1b1b1b;background:#fff}@media(prefers-color-scheme:dark){svg{color:#e6e6e6;background:#111}}</style>';
  return `${stairsFigure(assessed.value).replace('</desc>', `</desc>${ink}`)}\n`;
}

const unspecific = new Set(['mathematics', 'groundroll', 'trade-practice']);

/** Formulas, published figures and the sources most cited, of one folder. */
function behind(folder, { formulas, sources }) {
  const own = formulas.filter((formula) => formula.folder === folder);
  if (own.length === 0) return ['', '', ''];
  const cited = new Map();
  for (const { source, access } of own.flatMap(({ citations }) => citations)) {
    if (unspecific.has(source)) continue;
    cited.set(source, [...(cited.get(source) ?? []), access]);
  }
  const most = [...cited]
    .sort(([a, x], [b, y]) => y.length - x.length || a.localeCompare(b))
    .slice(0, 3)
    .map(([id, access]) => `${sources[id].title} (${[...new Set(access)].join(', ')})`);
  return [own.length, summary(own).figures.published, most.join('; ')];
}

async function withTable(readme) {
  const register = await registerData();
  return readme.replace(/^\| `([a-z-]+)` \| ([^|]+) \|.*$/gm, (_, folder, holds) => {
    const [formulas, figures, sources] = behind(folder, register);
    return `| \`${folder}\` | ${holds} | ${formulas} | ${figures} | ${sources} |`;
  });
}

const before = fs.readFileSync('README.md', 'utf8');
const shown = before.replace(/```text\n[\s\S]*?\n```/, () => `\`\`\`text\n${mainJob()}\n\`\`\``);
const after = await withTable(shown);
const drawn = figure();
const isRenewed = after !== before || !fs.existsSync(figureFile) || fs.readFileSync(figureFile, 'utf8') !== drawn;
if (process.argv.includes('--check')) {
  if (isRenewed) {
    console.error('README.md or its figure no longer shows what the library gives: npm run readme');
    process.exitCode = 1;
  }
} else {
  fs.mkdirSync('docs/figures', { recursive: true });
  fs.writeFileSync(figureFile, drawn);
  fs.writeFileSync('README.md', after);
}
