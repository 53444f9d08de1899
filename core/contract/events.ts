import type { BinderState } from './binderShape.ts';
import type { WorkState } from './calls.ts';
import type { ImportProgress } from './importsShape.ts';
import type { Settings } from './settingsShape.ts';

/**
 * What a host tells every open page without being asked, so that a second window does not show
 * old work. The page that made the change hears of it too.
 */
export interface HostEvents {
  /** A well was edited or saved, here or by another program: how far it is now. */
  'well.changed': WorkState & { readonly id: string; readonly revision: number };
  /** Wells went into the bin or came out of it, or what lies under the map is another. */
  'list.changed': Record<string, never>;
  /** A practice of the user was made, changed or taken away, here or by another program. */
  'practices.changed': Record<string, never>;
  /** The like of the user's sets of guideline values. */
  'guidelines.changed': Record<string, never>;
  /** The like of templates, or another one was chosen. */
  'templates.changed': Record<string, never>;
  /** A paper of the well was issued or signed. */
  'issues.changed': { readonly id: string };
  /** A certificate was made, taken in or taken away on this computer. */
  'identities.changed': Record<string, never>;
  /** How far the binder is that is being made, or what became of it. */
  'binder.state': BinderState;
  /** A person chose other settings, in this window or another. */
  'settings.changed': Settings;
  /** How many wells of an import are looked at, or in, so far. */
  'import.progress': ImportProgress;
  /** Undo or redo was asked for outside the page, as from the desktop's menu. */
  'page.undo': Record<string, never>;
  'page.redo': Record<string, never>;
}

export type EventName = keyof HostEvents;

/** One event as it travels, as JSON. */
export type HostEvent = {
  [N in EventName]: { readonly name: N; readonly data: HostEvents[N] };
}[EventName];
