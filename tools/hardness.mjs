// `npm run hardness`: puts the recorded measurements of docs/measurements into the tables of docs/guides/hardness.md.
import fs from 'node:fs';

const page = 'docs/guides/hardness.md';
const json = (file) => (fs.existsSync(file) ? JSON.parse(fs.readFileSync(file, 'utf8')) : {});
const measured = (name) => json(`docs/measurements/${name}.json`);
const number = (value) => value.toLocaleString('en').replaceAll(',', ' ');
const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');

/** The page as it is to be. */
export function hardnessPage() {
  const parts = { mutants: mutants(), survivors: survivors(), fuzz: fuzz(), platforms: platforms() };
  return Object.entries(parts).reduce(
    (text, [name, part]) => {
      const [before, rest] = text.split(`<!-- ${name} -->\n`);
      const [, after] = rest.split(`<!-- end of ${name} -->\n`);
      return `${before}<!-- ${name} -->\n\n${part}\n\n<!-- end of ${name} -->\n${after}`;
    },
    fs.readFileSync(page, 'utf8'),
  );
}

function mutants() {
  const head = [
    'folder',
    'mutants',
    'failed a test',
    'did not end',
    'survived',
    'not reached',
    'noticed',
    'date',
    'commit',
  ];
  const rows = Object.entries(measured('mutants')).map(([folder, each]) => [
    `\`${folder}\``,
    ...[each.mutants, each.killed, each.timeouts, each.survived, each.notReached].map(number),
    `${each.score_percent} %`,
    each.date,
    `\`${each.commit}\``,
  ]);
  return table(head, rows);
}

function survivors() {
  const { groups } = json('tools/stryker/survivors.json');
  return groups.map(({ reason, mutants: known }) => `- ${known.length}: ${reason}.`).join('\n');
}

function fuzz() {
  const head = ['function', 'inputs', 'read', 'refused', 'slowest', 'kept', 'date', 'commit'];
  const rows = Object.entries(measured('fuzz')).map(([name, each]) => [
    `\`${name}\``,
    ...[each.inputs, each.read, each.refused].map(number),
    `${each.slowest_ms} ms`,
    `${each.kept_MB} MB`,
    each.date,
    `\`${each.commit}\``,
  ]);
  return table(head, rows);
}

function platforms() {
  const { platforms: all, reference, formulas, calls, answered, date, commit } = measured('platforms');
  const head = ['platform', 'numbers', 'greatest difference', 'formulas and examples that differ', 'texts that differ'];
  const rows = Object.entries(all).map(([name, each]) =>
    'missing' in each
      ? [name, 'not run', each.missing, '', '']
      : [
          each.platform ?? name,
          number(each.numbers),
          each.greatest === 0 ? 'none' : each.greatest.toExponential(1),
          Object.keys(each.differing).length,
          each.otherTexts,
        ],
  );
  const ran = Object.values(all).filter((each) => 'excepted' in each);
  const exceptions = Object.entries(ran[0].excepted).map(([id, { reason }]) => {
    const greatest = Math.max(...ran.map((each) => each.excepted[id].greatest));
    return `\`${id}\` is not among them: it differs by ${greatest.toExponential(1)}; ${reason}.`;
  });
  const against = `${number(formulas)} formulas and examples, ${number(calls)} calls of which ${number(answered)} have an answer and the others the same refusal, against ${reference}, on ${date} at commit \`${commit}\`:`;
  return [against, table(head, rows), ...exceptions].join('\n\n');
}

if (import.meta.filename === process.argv[1]) fs.writeFileSync(page, hardnessPage());
