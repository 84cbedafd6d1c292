// Writes dist/third-party-notices.md: what the package needs at run time, with the licence of each as its own package has
// it. Nothing of them is copied into our files; an installation puts them beside us.
import fs from 'node:fs';
import path from 'node:path';

const { dependencies } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
const { packages } = JSON.parse(fs.readFileSync('package-lock.json', 'utf8'));
const atRunTime = Object.entries(packages)
  .filter(([place, { dev, devOptional }]) => place !== '' && !dev && !devOptional)
  .map(([place]) => place)
  .sort();
const missing = Object.keys(dependencies).filter((name) => !atRunTime.includes(`node_modules/${name}`));
if (missing.length > 0) throw new Error(`not in the lock file: ${missing.join(', ')}`);

const parts = atRunTime.map((place) => {
  const { name, version, license } = JSON.parse(fs.readFileSync(path.join(place, 'package.json'), 'utf8'));
  const texts = fs
    .readdirSync(place)
    .filter((file) => /^(?:licen[cs]e|notice|copying)/i.test(file))
    .sort();
  if (typeof license !== 'string' || texts.length === 0) throw new Error(`${name} has no licence to be found`);
  const shown = texts.map((file) => `\`\`\`text\n${fs.readFileSync(path.join(place, file), 'utf8').trim()}\n\`\`\`\n`);
  return `## ${name} ${version}, ${license}\n\n${shown.join('\n')}`;
});
const text = `# Third-party notices

groundroll needs the packages below at run time. They are installed beside it, under their own licences; nothing of them is
copied into its files.

The coefficients of the World Magnetic Model, which geomagnetism carries, come from the NOAA National Centers for
Environmental Information and the British Geological Survey, and are in the public domain. The published figures among the
check values are facts, each with its source.

${parts.join('\n')}`;
fs.writeFileSync('dist/third-party-notices.md', text);
console.log(`dist/third-party-notices.md: ${atRunTime.length} packages`);
