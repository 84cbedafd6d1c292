/** Something to be labelled at a height, and the room that its label takes. */
interface Wanted {
  readonly at: number;
  readonly height: number;
}

/**
 * Centres of labels that do not overlap, as near as can be to where they are wanted and in the same order. Labels that
 * would overlap share the room around their common middle; where the bounds are too narrow, the last ones leave them.
 */
export function spread(wanted: readonly Wanted[], from: number, to: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] as Wanted).at - (wanted[b] as Wanted).at);
  const groups: { members: number[]; height: number; middle: number }[] = [];
  const held = (middle: number, height: number) => Math.max(from + height / 2, Math.min(to - height / 2, middle));
  for (const i of order) {
    const { at, height } = wanted[i] as Wanted;
    let group = { members: [i], height, middle: held(at, height) };
    for (let last = groups.at(-1); last !== undefined && overlap(last, group); last = groups.at(-1)) {
      groups.pop();
      const members = [...last.members, ...group.members];
      const tall = last.height + group.height;
      group = { members, height: tall, middle: held(commonMiddle(members, wanted, tall), tall) };
    }
    groups.push(group);
  }
  const centres: number[] = [];
  for (const { members, height, middle } of groups) {
    let top = Math.max(from, middle - height / 2);
    for (const i of members) {
      const own = (wanted[i] as Wanted).height;
      centres[i] = top + own / 2;
      top += own;
    }
  }
  return centres;
}

function overlap(a: { middle: number; height: number }, b: { middle: number; height: number }): boolean {
  return a.middle + a.height / 2 > b.middle - b.height / 2;
}

/** Where the middle of a stack lies if its members are, on average, where they are wanted. */
function commonMiddle(members: readonly number[], wanted: readonly Wanted[], height: number): number {
  let before = 0;
  let sum = 0;
  for (const i of members) {
    const each = wanted[i] as Wanted;
    sum += each.at - (before + each.height / 2);
    before += each.height;
  }
  return sum / members.length + height / 2;
}

/** About how wide a text is in a plain sans serif, a little on the safe side. */
export function widthOf(text: string, size: number): number {
  const units = [...text].map((character) =>
    /[ilj.,:;'|!() ]/.test(character)
      ? 0.33
      : /[mwMW%@]/.test(character)
        ? 0.95
        : /[A-Z]/.test(character)
          ? 0.72
          : 0.59,
  );
  return units.reduce((sum, each) => sum + each, 0) * size;
}

/** A text in lines no wider than that; a word that is wider is cut, and so is what is left after the last line. */
export function wrapped(text: string, width: number, size: number, most = 3): string[] {
  const lines: string[] = [];
  // A number stays with its unit.
  const bound = text.replace(/(\d) (?=[A-Za-z%\u00b0])/g, '$1\u00a0');
  for (const word of bound.split(/[ \t\n]+/).filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const kept = lines.slice(0, most);
  if (lines.length > most) kept[most - 1] = `${kept[most - 1]}\u2026`;
  return kept.map((each) => cut(each, width, size));
}

/** A text cut to a width, with an ellipsis where something is missing. */
export function cut(text: string, width: number, size: number): string {
  if (widthOf(text, size) <= width) return text;
  let kept = [...text];
  while (kept.length > 1 && widthOf(`${kept.join('')}\u2026`, size) > width) kept = kept.slice(0, -1);
  return `${kept.join('')}\u2026`;
}

/** A round step that divides a span into no more than that many parts. */
export function roundStep(span: number, parts: number): number {
  const least = Math.max(span, 1e-9) / parts;
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5, 10].find((each) => each * power >= least - 1e-9) ?? 10) * power;
}
