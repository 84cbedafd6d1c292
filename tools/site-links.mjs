// Looks through a built site: every link must lead somewhere on it, down to the fragment, and nothing may come from or
// lead to another host, so that the site works from any file server and from a folder. `node tools/site-links.mjs site`
import fs from 'node:fs';
import path from 'node:path';
import { inflateSync } from 'node:zlib';

const tags = /<[a-z][^\s>]*\s[^>]*>/g;
const references = /\s(?:href|src|srcset|poster|action|data-base)="([^"]*)"/g;
const identifiers = /\s(?:id|name)="([^"]*)"/g;
const outside = /^(?:[a-z][a-z0-9+.-]*:)?\/\//i;
const withoutTarget = /^(?:data|mailto|javascript):/i;

const unescaped = (value) =>
  value
    .replace(/&#x([0-9a-f]+);/gi, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/&#(\d+);/g, (_, code) => String.fromCodePoint(Number(code)))
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&');

function readPage(file) {
  // What stands in scripts and comments is no mark-up.
  const html = fs
    .readFileSync(file, 'utf8')
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/(<script\b[^>]*>)[\s\S]*?<\/script>/g, '$1');
  const ids = new Set();
  const links = new Set();
  for (const [tag] of html.matchAll(tags)) {
    for (const [, id] of tag.matchAll(identifiers)) ids.add(unescaped(id));
    for (const [, link] of tag.matchAll(references)) links.add(unescaped(link));
  }
  return { html, ids, links };
}

/** The addresses of the sidebar, which TypeDoc keeps compressed in a script. */
function sidebarLinks(file) {
  const [, data] = /"([^"]+)"/.exec(fs.readFileSync(file, 'utf8')) ?? [];
  const collect = (nodes) =>
    nodes.flatMap(({ path: link, children = [] }) => [...(link === undefined ? [] : [link]), ...collect(children)]);
  return collect(JSON.parse(inflateSync(Buffer.from(data, 'base64')).toString('utf8')));
}

/**
 * Every fault of the site in a folder, one line each.
 * @param {string} site
 * @returns {string[]}
 */
export function siteFaults(site) {
  const files = fs
    .readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(site, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'));
  const known = new Set(files);
  const pages = new Map(
    files.filter((file) => file.endsWith('.html')).map((file) => [file, readPage(path.join(site, file))]),
  );
  const faults = [];

  const follow = (from, link) => {
    if (withoutTarget.test(link)) return;
    if (outside.test(link) || /^[a-z][a-z0-9+.-]*:/i.test(link)) {
      faults.push(`${from}: leads to another host: ${link}`);
      return;
    }
    const [address, fragment] = link.split('#');
    const [file] = address.split('?');
    const target = file === '' ? from : path.posix.join(path.posix.dirname(from), decodeURI(file));
    const found = [target, `${target}/index.html`.replace('//', '/')].find((candidate) => known.has(candidate));
    // A folder is a base for scripts, not a page.
    if (found === undefined && (target === '.' || target.endsWith('/') || target.endsWith('..'))) return;
    if (found === undefined) faults.push(`${from}: leads nowhere: ${link}`);
    else if (fragment && pages.has(found) && !pages.get(found).ids.has(decodeURIComponent(fragment))) {
      faults.push(`${from}: no such place on the page: ${link}`);
    }
  };

  for (const [file, { html, links }] of pages) {
    if (html.includes('katex-error')) faults.push(`${file}: an equation does not parse`);
    for (const link of links) follow(file, link);
  }
  for (const file of files.filter((name) => name.endsWith('.css'))) {
    for (const [, link] of fs
      .readFileSync(path.join(site, file), 'utf8')
      .matchAll(/url\(\s*["']?((?:https?:)?\/\/[^"')]*)/g)) {
      faults.push(`${file}: leads to another host: ${link}`);
    }
  }
  if (known.has('assets/navigation.js')) {
    for (const link of sidebarLinks(path.join(site, 'assets/navigation.js'))) follow('index.html', link);
  }
  return faults;
}

if (import.meta.filename === process.argv[1]) {
  const faults = siteFaults(process.argv[2] ?? 'site');
  for (const fault of faults) console.error(fault);
  process.exitCode = faults.length === 0 ? 0 : 1;
}
