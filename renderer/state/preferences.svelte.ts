import { languageFor, type Language } from '../../core/base/language.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { Settings } from '../../core/contract/settingsShape.ts';
import type { Orientation } from '../../core/drawing/paper.ts';
import type { SwitchedColumn } from '../../core/drawing/parts/columnNames.ts';
import { speech } from './language.svelte.ts';

type SheetAxis = NonNullable<Settings['sheetAxis']>;

/** How an as-built sheet lies, which columns its log has and whether its axis may be broken. */
export interface SheetShape {
  readonly orientation?: Orientation;
  readonly columns?: readonly SwitchedColumn[];
  readonly brokenAxis?: boolean;
}

/** What a person chose for this computer; one for the whole page. */
class Preferences {
  contrast = $state<'system' | 'high'>('system');
  /** The name beside revisions; empty where none was given. */
  author = $state('');
  /** Share of the window that the tables take, per cent. */
  tablesPercent = $state(50);
  /** How as-built sheets lie. */
  sheetOrientation = $state<Orientation | 'usual'>('usual');
  /** Columns of the log on as-built sheets. */
  sheetColumns = $state.raw<readonly SwitchedColumn[] | 'byRecord'>('byRecord');
  /** Whether as-built sheets may leave out long plain stretches. */
  sheetAxis = $state<SheetAxis>('fitting');
  #host: PageHost | undefined;

  /**
   * Takes up what was chosen before, and what is chosen in other windows. Until a language was
   * chosen, the page speaks the first of the browser's that it knows.
   */
  async follow(host: PageHost, browserLanguages: readonly string[]) {
    this.#host = host;
    speech.language = languageFor(browserLanguages);
    host.onEvent((event) => {
      if (event.name === 'settings.changed') this.#take(event.data);
    });
    const answer = await host.send('settings.read', {});
    if (answer.ok) this.#take(answer.value);
  }

  speak(language: Language) {
    this.#choose({ language });
  }

  sign(author: string) {
    this.#choose({ author });
  }

  see(contrast: 'system' | 'high') {
    this.#choose({ contrast });
  }

  widen(tablesPercent: number) {
    this.#choose({ tablesPercent });
  }

  lay(sheetOrientation: Orientation | 'usual') {
    this.#choose({ sheetOrientation });
  }

  showColumns(sheetColumns: readonly SwitchedColumn[] | 'byRecord') {
    this.#choose({ sheetColumns });
  }

  drawAxis(sheetAxis: SheetAxis) {
    this.#choose({ sheetAxis });
  }

  /** What as-built sheets are drawn and made with; what was not chosen is absent. */
  get sheetShape(): SheetShape {
    const { sheetOrientation: orientation, sheetColumns: columns, sheetAxis } = this;
    return {
      ...(orientation !== 'usual' && { orientation }),
      ...(columns !== 'byRecord' && { columns }),
      ...(sheetAxis === 'whole' && { brokenAxis: false }),
    };
  }

  #choose(chosen: Settings) {
    this.#take(chosen);
    // A choice that cannot be kept holds all the same until the page is closed.
    void this.#host?.send('settings.write', chosen);
  }

  #take({ language, contrast, tablesPercent, ...sheet }: Settings) {
    speech.language = language ?? speech.language;
    this.contrast = contrast ?? this.contrast;
    this.author = sheet.author ?? this.author;
    this.tablesPercent = tablesPercent ?? this.tablesPercent;
    this.sheetOrientation = sheet.sheetOrientation ?? this.sheetOrientation;
    this.sheetColumns = sheet.sheetColumns ?? this.sheetColumns;
    this.sheetAxis = sheet.sheetAxis ?? this.sheetAxis;
  }
}

export const preferences = new Preferences();
