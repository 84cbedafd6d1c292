// The bill of materials of the package in CycloneDX, by npm's own command from the lock file: the package and what it needs
// at run time. Prints it. The same commit gives the same text: number and time come from content and commit, not from
// the moment.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-sbom-'));
process.on('exit', () => fs.rmSync(folder, { recursive: true, force: true }));

// npm leaves out of `--omit dev` what a tool needs as well as the package; so it is shown no tools at all.
const { devDependencies: _, scripts: __, ...manifest } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
const { packages, ...lock } = JSON.parse(fs.readFileSync('package-lock.json', 'utf8'));
const atRunTime = Object.entries(packages).filter(([, { dev, devOptional }]) => !dev && !devOptional);
const { devDependencies: ___, ...itself } = packages[''];
const write = (name, content) => fs.writeFileSync(path.join(folder, name), JSON.stringify(content));
write('package.json', manifest);
write('package-lock.json', { ...lock, packages: { ...Object.fromEntries(atRunTime), '': itself } });

const command = ['sbom', '--package-lock-only', '--sbom-format=cyclonedx', '--sbom-type=library'];
const bill = JSON.parse(execFileSync('npm', command, { cwd: folder, encoding: 'utf8' }));
// npm takes the name from the folder.
bill.metadata.component.name = manifest.name;
bill.metadata.timestamp = new Date(
  Number(execFileSync('git', ['log', '-1', '--format=%ct'], { encoding: 'utf8' })) * 1000,
).toISOString();
bill.serialNumber = '';
const digest = createHash('sha256').update(JSON.stringify(bill)).digest('hex');
// A UUID of version 8: made from the content.
const uuid = [
  digest.slice(0, 8),
  digest.slice(8, 12),
  `8${digest.slice(13, 16)}`,
  `8${digest.slice(17, 20)}`,
  digest.slice(20, 32),
];
bill.serialNumber = `urn:uuid:${uuid.join('-')}`;
console.log(JSON.stringify(bill, null, 2));
