import { languageFor, type Language } from '../../core/base/language.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { Settings } from '../../core/contract/settingsShape.ts';
import { speech } from './language.svelte.ts';

/** What a person chose for this computer; one for the whole page. */
class Preferences {
  contrast = $state<'system' | 'high'>('system');
  /** Share of the window that the tables take, per cent. */
  tablesPercent = $state(50);
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

  see(contrast: 'system' | 'high') {
    this.#choose({ contrast });
  }

  widen(tablesPercent: number) {
    this.#choose({ tablesPercent });
  }

  #choose(chosen: Settings) {
    this.#take(chosen);
    // A choice that cannot be kept holds all the same until the page is closed.
    void this.#host?.send('settings.write', chosen);
  }

  #take({ language, contrast, tablesPercent }: Settings) {
    speech.language = language ?? speech.language;
    this.contrast = contrast ?? this.contrast;
    this.tablesPercent = tablesPercent ?? this.tablesPercent;
  }
}

export const preferences = new Preferences();
