import { textHtml } from './markup.ts';
import { type Paper, styleFor } from './page-style.ts';

interface PageParts {
  readonly title: string;
  readonly paper: Paper;
  /** Markup, everything in it textHtml. */
  readonly body: string;
  /** What this kind of page needs beside the common style sheet. */
  readonly style?: string;
}

/** One self-contained page: nothing is fetched, nothing is run, and the policy in its head says so to the browser. */
export function page({ title, paper, body, style = '' }: PageParts): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${textHtml(title)}</title>
<style>${styleFor(paper)}${style}</style>
</head>
<body>
${body}
</body>
</html>
`;
}
