import type { Result } from '../../core/base/result.ts';
import type { BinderState, BinderWish } from '../../core/contract/binderShape.ts';
import type { Archive } from '../archive/archive.ts';

/** A binder that shall be made. */
export interface BindingJob {
  readonly archive: Archive;
  readonly name: string;
  readonly wish: BinderWish;
  /** ISO 8601. */
  readonly madeAt: string;
  /** Is told how far it is, until it ended. */
  readonly onState: (state: BinderState) => void;
}

/** A host that makes binders beside its other work, one at a time. */
export interface Binding {
  /** Refused as `binderRuns` while another is being made. */
  start(job: BindingJob): Result<BinderState>;
  /** Stops what is being made. */
  stop(): Promise<BinderState>;
  state(): BinderState;
  /** A file of the binder made last. Refused as `noSuchFile`. */
  file(fileName: string): Result<Uint8Array>;
}
