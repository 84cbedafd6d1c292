import { textHtml } from 'groundroll/worksheet';
import { addressOf, stateFromAddress } from './address.ts';
import { aeroplanes, configurationsOf } from './aeroplanes.ts';
import { type FieldKey, type ObstacleKey, type SentenceId, sentenceIds } from './fields.ts';
import { openSteps } from './opening.ts';
import { noFile, type OwnFile, readOwnFile } from './own-file.ts';
import { headlineOf, Results } from './results.ts';
import { sentencesOf } from './sentences.ts';
import { emptyObstacle, type PageState, startState, withObstacle, withValue } from './state.ts';
import { type Aeroplane, type WorkedOut, workOut } from './work-out.ts';

/** Sentences without metres of their own, around those of the ledger. */
const before: readonly SentenceId[] = ['aeroplane', 'runway'];
const after: readonly SentenceId[] = ['distances', 'obstacles', 'limits', 'policies'];

class WorksheetPage {
  private state: PageState = startState;
  private ownFile: OwnFile | undefined;
  private addressFaults: readonly string[] = [];
  private worked: WorkedOut;
  private results: Results;
  private shape = '';
  /** Whether the next change begins a new entry of the browser's history. */
  private isNewEntry = true;
  private addressDue: number | undefined;
  private sayDue: number | undefined;
  private readonly opened = new Set<string>();

  constructor(private readonly root: HTMLElement) {
    root.innerHTML = frame;
    this.readAddress();
    this.worked = workOut(this.state, this.aeroplane());
    this.results = new Results(this.worked);
    this.show();
    root.addEventListener('input', (event) => this.onInput(event.target as HTMLElement));
    root.addEventListener('change', (event) => this.onChange(event.target as HTMLElement));
    root.addEventListener('click', (event) => this.onClick(event.target as HTMLElement));
    // It does not bubble.
    root.addEventListener('toggle', (event) => this.onToggle(event.target as HTMLElement), true);
    window.addEventListener('popstate', () => this.onAddress());
    window.addEventListener('hashchange', () => this.onAddress());
  }

  private part(name: string): HTMLElement {
    return this.root.querySelector(`[data-part="${name}"]`) as HTMLElement;
  }

  private aeroplane(): Aeroplane {
    const { aeroplane } = this.state.values;
    return aeroplane === 'own' ? (this.ownFile ?? noFile) : { ok: true, data: aeroplanes[aeroplane] };
  }

  private update(state: PageState): void {
    this.state = state;
    this.addressFaults = [];
    this.writeAddress();
    this.recompute();
  }

  private recompute(): void {
    this.worked = workOut(this.state, this.aeroplane());
    this.results = new Results(this.worked);
    this.show();
  }

  private show(): void {
    this.showSentences();
    this.showResults();
    this.showFaults();
    this.sayVerdicts();
  }

  /** The sentences are built anew only where other fields stand in them: what is being typed stays untouched. */
  private showSentences(): void {
    const aeroplane = this.aeroplane();
    const data = aeroplane.ok ? aeroplane.data : undefined;
    const fileName = this.ownFile?.name;
    const typed = new Set(textFields(this.root));
    const choices = Object.entries(this.state.values).filter(([key]) => !typed.has(key));
    const shape = JSON.stringify([choices, this.state.obstacles.length, fileName, aeroplane.ok, this.results.order]);
    if (shape !== this.shape) {
      const focused = this.root.contains(document.activeElement) ? document.activeElement?.id : undefined;
      const sentences = sentencesOf(this.state, data, fileName);
      const ledger = this.results.order;
      const items = [...before, ...ledger, ...after].map((id) => sentenceHtml(id, sentences[id], ledger));
      const open = this.root.querySelector<HTMLDetailsElement>('#policies')?.open ?? false;
      this.part('sentences').innerHTML = items.join('');
      const policies = this.root.querySelector<HTMLDetailsElement>('#policies');
      if (policies !== null) policies.open = open;
      if (focused) document.getElementById(focused)?.focus();
      const now = new Set(textFields(this.root));
      const left = Object.entries(this.state.values).filter(([key]) => !now.has(key));
      this.shape = JSON.stringify([left, this.state.obstacles.length, fileName, aeroplane.ok, this.results.order]);
    }
    for (const { place, name } of this.worked.ends) {
      for (const each of this.root.querySelectorAll(`[data-end="${place + 1}"]`)) each.textContent = name;
    }
    const report = this.root.querySelector('[data-report-wind]');
    if (report !== null) report.textContent = this.reportInWords();
  }

  /** What the report says, as the library words its weather. */
  private reportInWords(): string {
    const line = this.results.inputs().find((each) => each.startsWith('METAR: wind '));
    return line === undefined ? '' : `, which reads: ${line.slice('METAR: '.length).replace(/\.$/, '')}`;
  }

  private showResults(): void {
    this.part('head').innerHTML = this.results.head();
    for (const [sentence, html] of Object.entries(this.results.edges())) this.part(`edge-${sentence}`).innerHTML = html;
    this.part('sections').innerHTML = this.results.sections();
    for (const [i, link] of [...this.root.querySelectorAll<HTMLButtonElement>('[data-save]')].entries()) {
      const end = this.worked.ends[i];
      link.textContent = `Save the assessment of ${end?.name}`;
      link.disabled = end?.assessment === undefined;
    }
    for (const key of this.opened) {
      const element = this.root.querySelector<HTMLElement>(`[data-way="${key}"]`);
      if (element === null) this.opened.delete(key);
      else if (element instanceof HTMLDetailsElement) element.open = true;
      else this.openEdge(element, key);
    }
  }

  private showFaults(): void {
    const { faults } = this.worked;
    for (const id of sentenceIds) {
      const own = faults.filter(({ sentence }) => sentence === id);
      const items = own.map(({ field, label, message }, i) => {
        const name = label === undefined ? '' : `<b>${textHtml(label)}:</b> `;
        return `<li id="fault-${id}-${i}"${field === undefined ? '' : ` data-fault-of="${textHtml(field)}"`}>${name}${textHtml(message)}</li>`;
      });
      this.part(`faults-${id}`).innerHTML = items.join('');
    }
    for (const marked of this.root.querySelectorAll('[aria-invalid]')) {
      marked.removeAttribute('aria-invalid');
      marked.removeAttribute('aria-describedby');
    }
    for (const fault of this.root.querySelectorAll<HTMLElement>('[data-fault-of]')) {
      const field = document.getElementById(fault.dataset['faultOf'] ?? '');
      const others = field?.getAttribute('aria-describedby') ?? '';
      field?.setAttribute('aria-invalid', 'true');
      field?.setAttribute('aria-describedby', `${others} ${fault.id}`.trim());
    }
    if (faults.some(({ sentence }) => sentence === 'policies')) {
      this.root.querySelector<HTMLDetailsElement>('#policies')?.setAttribute('open', '');
    }
    const items = this.addressFaults.map((each) => `<li>${textHtml(each)}</li>`).join('');
    this.part('address').innerHTML =
      items === ''
        ? ''
        : `<p>The address of this page cannot be read, so the page starts from the invented field:</p><ul class="faults">${items}</ul>`;
  }

  /** For a screen reader: the verdicts, once typing pauses. */
  private sayVerdicts(): void {
    window.clearTimeout(this.sayDue);
    this.sayDue = window.setTimeout(() => {
      const { faults, ends } = this.worked;
      const refused = faults.map(({ label, message }) => `${label === undefined ? '' : `${label}: `}${message}.`);
      const said = [...ends.map(headlineOf), ...refused, ...this.addressFaults].join(' ');
      if (this.part('status').textContent !== said) this.part('status').textContent = said;
    }, 400);
  }

  private onInput(target: HTMLElement): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) || target.id === 'own-file')
      return;
    const { field, obstacle, key } = target.dataset;
    if (field !== undefined) this.update(withValue(this.state, field as FieldKey, target.value));
    else if (obstacle !== undefined) {
      this.update(withObstacle(this.state, Number(obstacle), key as ObstacleKey, target.value));
    }
  }

  private onChange(target: HTMLElement): void {
    this.isNewEntry = true;
    if (target.id === 'own-file') void this.readFile(target as HTMLInputElement);
    if (!(target instanceof HTMLSelectElement)) return;
    const key = target.dataset['field'] as FieldKey;
    const state = withValue(this.state, key, target.value);
    this.update(key === 'aeroplane' ? this.withConfigurations(state, target.value) : state);
    this.isNewEntry = true;
  }

  /** Another aeroplane has other configurations: the first of each phase is taken, and stands in the sentence. */
  private withConfigurations(state: PageState, aeroplane: string): PageState {
    const file = this.ownFile;
    const data = aeroplane === 'own' ? (file?.ok ? file.data : undefined) : aeroplanes[aeroplane];
    if (data === undefined) return state;
    const first = (phase: string) => configurationsOf(data, phase)[0]?.id ?? '';
    const withTakeoff = withValue(state, 'takeoffConfiguration', first('takeoff'));
    return withValue(withTakeoff, 'landingConfiguration', first('landing'));
  }

  private async readFile(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    this.ownFile = readOwnFile(file.name, await file.text());
    this.update(this.withConfigurations(this.state, 'own'));
  }

  private onClick(target: HTMLElement): void {
    const button = target.closest('button');
    if (button === null) return;
    const { way, remove, save } = button.dataset;
    if (way !== undefined) this.toggleEdge(button, way);
    if (save !== undefined) this.save(Number(save));
    const { obstacles } = this.state;
    if (remove !== undefined) {
      this.isNewEntry = true;
      this.update({ ...this.state, obstacles: obstacles.filter((_, i) => i !== Number(remove)) });
      document.getElementById('add-obstacle')?.focus();
    }
    if (button.id === 'add-obstacle') {
      this.isNewEntry = true;
      this.update({ ...this.state, obstacles: [...obstacles, emptyObstacle] });
      document.getElementById(`obstacle-${obstacles.length + 1}-name`)?.focus();
    }
  }

  private onToggle(target: HTMLElement): void {
    const key = target.dataset['way'];
    if (!(target instanceof HTMLDetailsElement) || key === undefined) return;
    if (!target.open) this.opened.delete(key);
    else this.fill(target.querySelector('.way') as HTMLElement, key);
  }

  private toggleEdge(button: HTMLElement, key: string): void {
    if (button.getAttribute('aria-expanded') === 'false') this.openEdge(button, key);
    else {
      this.opened.delete(key);
      button.setAttribute('aria-expanded', 'false');
      document.getElementById(`way-${key}`)?.remove();
    }
  }

  /** A figure of the ledger opens below its line. */
  private openEdge(button: HTMLElement, key: string): void {
    button.setAttribute('aria-expanded', 'true');
    const place = document.createElement('div');
    place.className = 'way';
    place.id = `way-${key}`;
    button.closest('.tread')?.after(place);
    this.fill(place, key);
  }

  private fill(place: HTMLElement, key: string): void {
    const way = this.results.ways.get(key);
    if (way === undefined) return;
    this.opened.add(key);
    void openSteps(place, way.assessment, way.steps, key);
  }

  /** A file for the disk of whoever works here; it is made on the page and sent nowhere. */
  private save(place: number): void {
    const end = this.worked.ends[place];
    if (end?.assessment === undefined) return;
    const json = `${JSON.stringify(end.assessment, undefined, 2)}\n`;
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([json], { type: 'application/json' }));
    link.download = `${this.state.values.job}-${end.name}.json`;
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }

  /** While one figure is typed the address follows it; another figure is another entry to go back to. */
  private writeAddress(): void {
    const isNew = this.isNewEntry;
    this.isNewEntry = false;
    window.clearTimeout(this.addressDue);
    const write = () => window.history.replaceState(null, '', `#${addressOf(this.state)}`);
    if (isNew) window.history.pushState(null, '', `#${addressOf(this.state)}`);
    // Browsers limit how often an address may change.
    else this.addressDue = window.setTimeout(write, 200);
  }

  private onAddress(): void {
    if (window.location.hash === `#${addressOf(this.state)}`) return;
    window.clearTimeout(this.addressDue);
    this.isNewEntry = true;
    this.readAddress();
    this.recompute();
  }

  private readAddress(): void {
    const fragment = window.location.hash.slice(1);
    // A heading of the page is a place on it, and leaves everything as it stands.
    if (fragment !== '' && document.getElementById(fragment) !== null) {
      if (this.state !== startState) window.history.replaceState(null, '', `#${addressOf(this.state)}`);
      return;
    }
    const read = fragment === '' ? { ok: true as const, state: startState } : stateFromAddress(fragment);
    this.state = read.ok ? read.state : startState;
    this.addressFaults = read.ok ? [] : read.faults;
    this.shape = '';
  }
}

const frame = `
<div data-part="address"></div>
<div data-part="head" class="head"></div>
<p class="unseen" role="status" data-part="status"></p>
<ol class="ledger" data-part="sentences"></ol>
<div data-part="sections"></div>
<p class="saves"><button type="button" class="plain" data-save="0"></button> <button type="button" class="plain" data-save="1"></button></p>`;

function sentenceHtml(id: SentenceId, words: string, ledger: readonly SentenceId[]): string {
  const hasEdge = id === 'distances' || ledger.includes(id);
  const edge = hasEdge ? `<div data-part="edge-${id}"></div>` : '';
  const said = `<div class="words">${words}</div>`;
  const faults = `<ul class="faults" data-part="faults-${id}"></ul>`;
  if (id !== 'policies') return `<li data-sentence="${id}">${said}${faults}${edge}</li>`;
  return `<li data-sentence="${id}"><details id="policies" class="choices"><summary>Choices that no rule settles, all as by default unless you change them</summary>${said}</details>${faults}</li>`;
}

/** The fields in which one types: what stands in them is no part of the shape of the sentences. */
function textFields(root: HTMLElement): string[] {
  return [...root.querySelectorAll<HTMLElement>('input[data-field], textarea[data-field]')].map(
    (each) => each.dataset['field'] ?? '',
  );
}

/** The index of the search is larger than this page: it comes when the search is opened. */
function loadSearchWhenOpened(): void {
  const script = document.getElementById('tsd-search-script') as HTMLScriptElement | null;
  const dialog = document.getElementById('tsd-search');
  const source = script?.dataset['source'];
  if (script === null || dialog === null || source === undefined) return;
  const observer = new MutationObserver(() => {
    if (!dialog.hasAttribute('open')) return;
    observer.disconnect();
    script.src = source;
    searchOnceIndexed();
  });
  observer.observe(dialog, { attributes: true });
}

/** Looks for what was typed before the index had come; the site's own search waits for the next letter. */
function searchOnceIndexed(): void {
  const status = document.getElementById('tsd-search-status');
  const typed = document.getElementById('tsd-search-input');
  if (status === null || typed === null) return;
  const observer = new MutationObserver(() => {
    if (status.childNodes.length > 0) return;
    observer.disconnect();
    typed.dispatchEvent(new Event('input'));
  });
  observer.observe(status, { childList: true });
}

const root = document.getElementById('worksheet');
if (root !== null) new WorksheetPage(root);
loadSearchWhenOpened();
