import { type FieldKey, fieldKeys, fieldOf, obstacleKeys } from './fields.ts';
import { emptyObstacle, type ObstacleState, type PageState, startState } from './state.ts';

/** The version of the keys and of what the page starts with: an address says only what differs from that. */
const version = '1';
/** As many as a request may have. */
const mostObstacles = 60;
const longestText = 2000;

export type AddressRead =
  | { readonly ok: true; readonly state: PageState }
  | { readonly ok: false; readonly faults: readonly string[] };

/** The state as the fragment of an address, without the `#`: `v=1&job=landing&mass=980`. */
export function addressOf(state: PageState): string {
  const pairs: [string, string][] = [['v', version]];
  for (const key of fieldKeys) {
    const value = state.values[key];
    if (value !== startState.values[key]) pairs.push([key, value]);
  }
  if (!sameObstacles(state.obstacles, startState.obstacles)) {
    pairs.push(['listed', String(state.obstacles.length)]);
    for (const [i, obstacle] of state.obstacles.entries()) {
      for (const key of obstacleKeys) if (obstacle[key] !== '') pairs.push([`obstacle${i + 1}.${key}`, obstacle[key]]);
    }
  }
  return pairs.map(([key, value]) => `${key}=${written(value)}`).join('&');
}

/** Spaces and commas stay readable; what would end the pair or the address does not, nor half a character. */
function written(value: string): string {
  return encodeURIComponent(value.replace(/[\ud800-\udfff]/gu, '\ufffd'))
    .replaceAll('%20', '+')
    .replaceAll('%2C', ',')
    .replaceAll('%2F', '/');
}

/** Reads such a fragment: all that is wrong with it at once, and then nothing of it. */
export function stateFromAddress(fragment: string): AddressRead {
  const faults: string[] = [];
  const pairs = pairsOf(fragment, faults);
  const found = pairs.get('v');
  if (found !== version) {
    const what = found === undefined ? 'it does not begin with v=1' : `it is of version "${found}"`;
    return { ok: false, faults: [`${what}; version ${version} is read here`] };
  }
  pairs.delete('v');
  const values = { ...startState.values };
  const obstacles = obstaclesOf(pairs, faults);
  for (const [key, value] of pairs) {
    if (!isFieldKey(key)) faults.push(`"${key}" is not a key of it`);
    else if (fieldOf(key).choices?.includes(value) === false) {
      faults.push(`${key} is "${value}", which is none of ${fieldOf(key).choices?.join(', ')}`);
    } else values[key] = value;
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, state: { values, obstacles } };
}

function pairsOf(fragment: string, faults: string[]): Map<string, string> {
  const pairs = new Map<string, string>();
  for (const part of fragment.split('&')) {
    const at = part.indexOf('=');
    const key = part.slice(0, Math.max(0, at));
    const value = decoded(part.slice(at + 1));
    if (at < 1) faults.push(`"${part.slice(0, 40)}" is not of the form key=value`);
    else if (value === undefined) faults.push(`${key} is not percent-encoded text`);
    else if (value.length > longestText) faults.push(`${key} is longer than ${longestText} characters`);
    else if (pairs.has(key)) faults.push(`${key} stands twice`);
    else pairs.set(key, value);
  }
  return pairs;
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    return undefined;
  }
}

/** The obstacles, whose keys are taken out of the pairs. */
function obstaclesOf(pairs: Map<string, string>, faults: string[]): readonly ObstacleState[] {
  const listed = pairs.get('listed');
  pairs.delete('listed');
  if (listed === undefined) return startState.obstacles;
  if (!/^(0|[1-9]\d?)$/.test(listed) || Number(listed) > mostObstacles) {
    faults.push(`listed is "${listed}", which is no number of obstacles from 0 to ${mostObstacles}`);
    return [];
  }
  return Array.from({ length: Number(listed) }, (_, i) => {
    const obstacle = { ...emptyObstacle };
    for (const key of obstacleKeys) {
      const name = `obstacle${i + 1}.${key}`;
      obstacle[key] = pairs.get(name) ?? '';
      pairs.delete(name);
    }
    return obstacle;
  });
}

function isFieldKey(key: string): key is FieldKey {
  return (fieldKeys as readonly string[]).includes(key);
}

function sameObstacles(some: readonly ObstacleState[], others: readonly ObstacleState[]): boolean {
  return JSON.stringify(some.map(inOrder)) === JSON.stringify(others.map(inOrder));
}

function inOrder(obstacle: ObstacleState): string[] {
  return obstacleKeys.map((key) => obstacle[key]);
}
