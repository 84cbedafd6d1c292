// Before packing, after the build: npm takes the files' permissions into the tarball, and these differ with the file mask
// of whoever cloned. Nothing in it is a program, so that everything is read by all and written by its owner.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';

const list = execFileSync('node', ['tools/tarball-contents.mjs'], { encoding: 'utf8' });
for (const file of list.trimEnd().split('\n')) fs.chmodSync(file, 0o644);
