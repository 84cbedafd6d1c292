import { textHtml } from 'groundroll/worksheet';
import { idOfField, idOfObstacle } from './faults.ts';
import { type FieldKey, fieldOf, type ObstacleKey, obstacleFields } from './fields.ts';
import type { PageState } from './state.ts';

/** The blank stands where nothing does, so that a style sheet sees that it is empty. */
const asText = 'type="text" autocomplete="off" spellcheck="false" placeholder=" "';

/** A part of a sentence that may be left empty: in print it then gives way to what holds instead. */
export function clause(words: string, instead: string): string {
  return `<span class="clause">${words}<span class="hint"> (empty: ${instead})</span></span>`;
}

/** The fields of one state as they stand in sentences. */
export class Inputs {
  constructor(private readonly state: PageState) {}

  /** A figure. It is text to the browser, which would otherwise change or hide what it does not take for a number. */
  figure(key: FieldKey, size = 4): string {
    return this.input(key, size, ' inputmode="decimal"');
  }

  words(key: FieldKey, size = 10): string {
    return this.input(key, size, '');
  }

  private input(key: FieldKey, size: number, mode: string): string {
    const value = textHtml(this.state.values[key]);
    return `<input ${asText}${mode} id="${idOfField(key)}" data-field="${key}" size="${size}" value="${value}" aria-label="${textHtml(fieldOf(key).label)}">`;
  }

  /** A choice of words; one that the list does not have stands as it is. */
  choice(key: FieldKey, words: Readonly<Record<string, string>>, chosen = this.state.values[key]): string {
    const all = chosen in words ? words : { ...words, [chosen]: chosen };
    const options = Object.entries(all).map(
      ([value, text]) =>
        `<option value="${textHtml(value)}"${value === chosen ? ' selected' : ''}>${textHtml(text)}</option>`,
    );
    return `<select id="${idOfField(key)}" data-field="${key}" aria-label="${textHtml(fieldOf(key).label)}">${options.join('')}</select>`;
  }

  obstacle(place: number, key: ObstacleKey, size: number): string {
    const value = textHtml(this.state.obstacles[place]?.[key] ?? '');
    const mode = key === 'name' ? '' : ' inputmode="decimal"';
    const label = `${obstacleFields[key].label} of obstacle ${place + 1}`;
    return `<input ${asText}${mode} id="${idOfObstacle(place, key)}" data-obstacle="${place}" data-key="${key}" size="${size}" value="${value}" aria-label="${label}">`;
  }

  report(): string {
    const value = textHtml(this.state.values.metar);
    return `<textarea id="${idOfField('metar')}" data-field="metar" rows="2" cols="40" autocomplete="off" spellcheck="false" aria-label="${fieldOf('metar').label}">${value}</textarea>`;
  }
}
