const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text for an element or a quoted attribute: names come from files and addresses, and nothing in them is markup. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? '');
}
