import type { Result } from '../../core/base/result.ts';
import type { CallName, Gives, Takes } from '../../core/contract/calls.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import type { Archive } from '../archive/archive.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import type { Binding } from './binding.ts';
import type { IdentityStore } from './identityStore.ts';
import type { Printing } from './printJob.ts';
import type { SettingsStore } from './settingsFile.ts';

/** What the areas work with. */
export interface ServiceParts {
  readonly archive: Archive;
  readonly fonts: ShippedFonts;
  readonly settings: SettingsStore;
  readonly identities: IdentityStore;
  /** Absent where the host reaches no printer. */
  readonly printing?: Printing;
  /** Absent where the host makes no binders. */
  readonly binding?: Binding;
  /** Now, ISO 8601. */
  readonly clock: () => string;
  /** A UUID that no well has. */
  readonly newId: () => string;
  /** Tells every open page. */
  readonly tell: (event: HostEvent) => void;
}

type Outcome<N extends CallName> = Result<Gives<N>> | Promise<Result<Gives<N>>>;

/** What does a call's work. Throws only when the program is at fault. */
export interface Handler<N extends CallName> {
  /** True when it changes the archive: such calls are done one after the other. */
  readonly writes: boolean;
  run(args: Takes<N>): Outcome<N>;
}

/** The handlers of one area by name; all of them, or it does not compile. */
export type Handlers<Area extends string> = {
  readonly [N in Extract<CallName, `${Area}.${string}`>]: Handler<N>;
};

export function reads<N extends CallName>(run: (args: Takes<N>) => Outcome<N>): Handler<N> {
  return { writes: false, run };
}

export function writes<N extends CallName>(run: (args: Takes<N>) => Outcome<N>): Handler<N> {
  return { writes: true, run };
}
