/**
 * What a host tells every open page without being asked, so that a second window does not show
 * old work. The page that made the change hears of it too.
 */
export interface HostEvents {
  'well.changed': { readonly id: string; readonly revision: number; readonly changedAt: string };
}

export type EventName = keyof HostEvents;

/** One event as it travels, as JSON. */
export type HostEvent = {
  [N in EventName]: { readonly name: N; readonly data: HostEvents[N] };
}[EventName];
