// What TypeDoc does not do by itself: links across folders, addresses and groups of the sidebar, and the way from a
// function's `@record` to its page in the formula register.
import fs from 'node:fs';
import path from 'node:path';
import { Comment, CommentTag, Converter, IndexEvent, KindRouter, PageEvent, ReflectionKind } from 'typedoc';

const documentRoots = {
  guides: 'docs/guides',
  decisions: 'docs/decisions',
  register: '.cache/docs/register',
  measured: '.cache/docs/measured',
};
const groups = { guides: 'Guides', decisions: 'Decisions', register: 'Formula register', measured: 'Guides' };

const posix = (file) => path.relative('.', file).split(path.sep).join('/');

/** Where a document is on the site: `guides/the-job` for `docs/guides/the-job.md`. */
function placeOf(document) {
  const file = posix(document.project.files.getReflectionPath(document) ?? '');
  if (file === 'DEVELOPERS.md') return { root: 'guides', name: 'guides/contributors' };
  const root = Object.keys(documentRoots).find((name) => file.startsWith(`${documentRoots[name]}/`));
  if (root === undefined) return undefined;
  return { root, name: `${root}/${file.slice(documentRoots[root].length + 1).replace(/\.md$/, '')}` };
}

/**
 * A link may name an export of another folder (`{@link DomainError}`) that its file does not import.
 * @param {import('typedoc').Application} app
 */
export function linkAcrossFolders(app) {
  app.converter.addUnknownSymbolResolver(({ moduleSource, symbolReference }, reflection) => {
    const names = symbolReference?.path?.map(({ path: name }) => name) ?? [];
    if (moduleSource !== undefined || names.length !== 1) return undefined;
    const modules = reflection.project.children ?? [];
    const target = modules
      .flatMap((module) => module.children ?? [])
      .find((child) => child.name === names[0] && !child.isReference());
    return target && { target };
  });
}

class PlaceRouter extends KindRouter {
  getIdealBaseName(reflection) {
    return (reflection.isDocument?.() && placeOf(reflection)?.name) || super.getIdealBaseName(reflection);
  }
}

/**
 * Pages have the addresses of their files, whatever their titles.
 * @param {import('typedoc').Application} app
 */
export function addressesOfFiles(app) {
  app.renderer.defineRouter('place', PlaceRouter);
}

/**
 * The groups of the sidebar. A page without front matter has its heading for a title.
 * @param {import('typedoc').Application} app
 */
export function sidebarGroups(app) {
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_context, document) => {
    const place = placeOf(document);
    if (place === undefined || !document.parent.isProject()) return;
    document.frontmatter.group ??= groups[place.root];
    const [, heading] = /^# (.+)$/m.exec(document.content.map(({ text }) => text).join('')) ?? [];
    if (document.frontmatter.title === undefined && heading !== undefined) document.name = heading.replaceAll('`', '');
  });
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    for (const module of project.children ?? []) {
      module.comment ??= new Comment();
      module.comment.blockTags.push(new CommentTag('@group', [{ kind: 'text', text: 'API' }]));
    }
  });
}

/**
 * `@record wind.components` becomes a link to that formula's page. A tag that names no formula, and a formula whose
 * function does not name it, are warnings, which fail the build.
 * @param {import('typedoc').Application} app
 */
export function linkRecords(app) {
  app.converter.on(Converter.EVENT_RESOLVE_END, ({ project }) => {
    const documents = Object.values(project.reflections).filter((reflection) => reflection.isDocument());
    const pages = new Map(documents.map((page) => [page.frontmatter.record, page]));
    pages.delete(undefined);
    const named = new Set();
    for (const reflection of Object.values(project.reflections)) {
      for (const tag of reflection.comment?.getTags('@record') ?? []) {
        const id = Comment.combineDisplayParts(tag.content).trim();
        const page = pages.get(id);
        if (page === undefined) app.logger.warn(`${reflection.getFriendlyFullName()}: no formula has the record ${id}`);
        else tag.content = [{ kind: 'inline-tag', tag: '@link', text: id, target: page }];
        named.add(id);
      }
    }
    for (const id of pages.keys()) {
      if (!named.has(id)) app.logger.warn(`${id}: no function has this record in its comment`);
    }
  });
}

/**
 * What the search finds of a page: its words without the mark-up, and of a page of the register what its front matter
 * says, without the figures.
 * @param {import('typedoc').Application} app
 */
export function searchWords(app) {
  app.renderer.on(IndexEvent.PREPARE_INDEX, (event) => {
    event.searchResults.forEach((reflection, i) => {
      if (!reflection.isDocument()) {
        // Whoever types the name of a thing means its formula; the types of its arguments are one click further.
        reflection.relevanceBoost = reflection.kindOf(ReflectionKind.Function) ? 1.5 : 0.25;
        return;
      }
      const content = reflection.content.map(({ text }) => text).join('');
      const document = reflection.frontmatter.search ?? content.replace(/<[^>]+>/g, ' ');
      // A reader looks for the page that explains before the name of a property.
      reflection.relevanceBoost = 12;
      event.searchFields[i] = { ...event.searchFields[i], document };
    });
  });
}

/**
 * A block of code scrolls, so the keyboard must reach it.
 * @param {import('typedoc').Application} app
 */
export function reachableCode(app) {
  app.renderer.on(PageEvent.END, (page) => {
    page.contents = page.contents?.replaceAll('<pre>', '<pre tabindex="0">');
  });
}

/**
 * Wide tables of a guide scroll in a box of their own.
 * @param {import('markdown-it').default} markdownIt
 */
export function scrollBoxes(markdownIt) {
  const { rules } = markdownIt.renderer;
  const open = rules.table_open ?? ((tokens, i, options, _env, self) => self.renderToken(tokens, i, options));
  const close = rules.table_close ?? ((tokens, i, options, _env, self) => self.renderToken(tokens, i, options));
  rules.table_open = (...all) => `<div class="table" tabindex="0" role="group" aria-label="Table">${open(...all)}`;
  rules.table_close = (...all) => `${close(...all)}</div>`;
}

/** The files of a folder in the order in which its first page links them, others after those. */
export function inOrderOfLinks(folder, first) {
  const linked = [...fs.readFileSync(path.join(folder, first), 'utf8').matchAll(/\]\(([\w-]+\.md)\)/g)].map(
    ([, file]) => file,
  );
  const all = fs.readdirSync(folder).filter((file) => file.endsWith('.md'));
  return [...new Set([first, ...linked, ...all.sort()])].map((file) => path.join(folder, file));
}

/** Nothing on the worksheet page can send anything anywhere. */
const sendsNothing =
  '<meta http-equiv="Content-Security-Policy" content="connect-src \'none\'; form-action \'none\'"/>';

/**
 * The worksheet page brings its own script and style, and leaves the index of the search, which is larger than
 * everything else on it, until somebody searches.
 * @param {import('typedoc').Application} app
 */
export function worksheetPage(app) {
  app.renderer.on(PageEvent.END, (page) => {
    if (page.url !== 'guides/work-your-own-runway.html') return;
    const own = [
      sendsNothing,
      '<link rel="stylesheet" href="../worksheet-page/style.css"/>',
      '<script defer src="../worksheet-page/page.js"></script>',
    ];
    const search = /<script async src="([^"]+)" id="tsd-search-script">/;
    if (!search.test(page.contents)) throw new Error('the worksheet page has no search script to put off');
    page.contents = page.contents
      .replace('</head>', `${own.join('')}</head>`)
      .replace(search, '<script data-source="$1" id="tsd-search-script">');
  });
}
