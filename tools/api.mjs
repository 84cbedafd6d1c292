// Compares the public types of every entry with the committed report in tools/api; with --local it rewrites them.
import fs from 'node:fs';
import path from 'node:path';
import { Extractor, ExtractorConfig } from '@microsoft/api-extractor';
import { entries } from './entries.mjs';

const isLocal = process.argv.includes('--local');
const root = process.cwd();
fs.mkdirSync('tools/api', { recursive: true });
const none = { default: { logLevel: 'none' } };

let changed = 0;
for (const { name } of entries) {
  const config = ExtractorConfig.prepare({
    configObjectFullPath: path.join(root, 'tools', 'api-extractor.json'),
    packageJsonFullPath: path.join(root, 'package.json'),
    configObject: {
      projectFolder: root,
      mainEntryPointFilePath: path.join(root, 'dist', `${name}.d.ts`),
      compiler: {
        overrideTsconfig: {
          compilerOptions: {
            target: 'ES2022',
            module: 'NodeNext',
            moduleResolution: 'NodeNext',
            strict: true,
            skipLibCheck: true,
            types: [],
          },
          files: [path.join(root, 'dist', `${name}.d.ts`)],
        },
      },
      apiReport: {
        enabled: true,
        reportFileName: `${name}.api.md`,
        reportFolder: path.join(root, 'tools', 'api'),
        reportTempFolder: path.join(root, '.cache', 'api'),
      },
      newlineKind: 'lf',
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      // The comments are TypeDoc's business (this tool's parser refuses TeX); here only the types count.
      messages: { compilerMessageReporting: none, tsdocMessageReporting: none, extractorMessageReporting: none },
    },
  });
  const result = Extractor.invoke(config, {
    localBuild: isLocal,
    messageCallback: (message) => {
      message.handled = message.logLevel !== 'error';
    },
  });
  if (result.apiReportChanged) {
    changed += 1;
    console.log(`the public types of ${name} ${isLocal ? 'are noted anew' : 'differ from'} tools/api/${name}.api.md`);
  }
}

for (const file of fs.readdirSync('tools/api')) {
  if (entries.some(({ name }) => file === `${name}.api.md`)) continue;
  changed += 1;
  console.log(`tools/api/${file} belongs to no entry`);
  if (isLocal) fs.rmSync(path.join('tools/api', file));
}

if (changed > 0 && !isLocal) {
  console.error('if the change is meant, run `npm run build && npm run api` and commit tools/api');
  process.exitCode = 1;
}
