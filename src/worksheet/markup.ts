const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * A text for HTML and SVG, in an element or in a quoted attribute. Names come from documents: nothing in them is markup,
 * and what neither format can hold (control characters) is replaced.
 *
 * @example
 * textHtml('pines <28 m> & hedge') // => 'pines &lt;28 m&gt; &amp; hedge'
 */
export function textHtml(text: string): string {
  return [...text].map((character) => entities[character] ?? (isControl(character) ? '\ufffd' : character)).join('');
}

/**
 * A text for Markdown, on one line. Nothing in it is markup, neither of Markdown nor of the HTML that Markdown lets through,
 * and no mathematics; what it would mean only elsewhere stays readable: `V_S0`, `[300, 325]`.
 */
export function textMarkdown(text: string): string {
  return onOneLine(text)
    .replace(/[\\`*~$]/g, '\\$&')
    .replace(/&(?=#?\w+;)/g, '&amp;')
    .replaceAll('<', '&lt;')
    .replace(/(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, '\\_')
    .replace(/\](?=[([:])/g, '\\]')
    .replace(/^(?:[[>]|(?:#{1,6}|[-+])(?=\s|$)|-(?=[-\s]+$))/, '\\$&')
    .replace(/^(\d+)(?=[.)](?:\s|$))/, '$1\\')
    .replace(/(?<=\s)#+$/, '\\$&');
}

function onOneLine(text: string): string {
  return text
    .split(/[\r\n\u2028\u2029]/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join(' ');
}

/** Control characters and halves of surrogate pairs. */
function isControl(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  const isBlank = code === 0x09 || code === 0x0a || code === 0x0d;
  return (code < 0x20 && !isBlank) || (code >= 0x7f && code <= 0x9f) || (code >= 0xd800 && code <= 0xdfff);
}

const unit = 'm|ft|km|NM|kt|mph|kg|lb|hPa|inHg|psi|s|KIAS|KCAS|KTAS|K|percentage';

/**
 * A sentence for a page: a number stays on the line of its unit, what multiplies stands behind a sign for it, and the
 * letters of a speed stand low.
 */
export function sentenceHtml(text: string): string {
  const bound = text.replace(new RegExp(`(\\d) (?=(?:${unit})\\b|[%\u00b0])`, 'g'), '$1\u00a0');
  const signed = textHtml(bound.replace(/(?<=\d) x | x (?=\d)/g, ' \u00d7\u00a0'));
  return signed.replace(/\bV_([A-Z0-9]{1,3})\b/g, 'V<sub>$1</sub>');
}
