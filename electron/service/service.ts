import type { Result } from '../../core/base/result.ts';
import type { Answer, CallName, Takes } from '../../core/contract/calls.ts';
import { joinAreas } from '../../core/contract/check.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import { archiveHandlers } from './archive.ts';
import { attachmentsHandlers } from './attachments.ts';
import { backdropsHandlers } from './backdrops.ts';
import { binHandlers } from './bin.ts';
import { copiesHandlers } from './copies.ts';
import { bindersHandlers } from './binders.ts';
import { exportHandlers } from './export.ts';
import { guidelinesHandlers } from './guidelines.ts';
import { identitiesHandlers } from './identities.ts';
import { importsHandlers } from './imports.ts';
import { issuesHandlers } from './issues.ts';
import { sealsHandlers } from './seals.ts';
import type { ServiceParts } from './handlers.ts';
import { listHandlers } from './list.ts';
import { papersHandlers } from './papers.ts';
import { practicesHandlers } from './practices.ts';
import { printingHandlers } from './printing.ts';
import { settingsHandlers } from './settings.ts';
import { templatesHandlers } from './templates.ts';
import { watchArchive } from './watch.ts';
import { wellsHandlers } from './wells.ts';

/** What every host answers its pages from. */
export interface Service {
  /** Throws only when the program is at fault; what the user can act on is in the answer. */
  call<N extends CallName>(name: N, args: Takes<N>): Promise<Answer<N>>;
  /** Listens until the function that it gives back is called. */
  onEvent(listener: (event: HostEvent) => void): () => void;
  /** Looks whether another program changed the archive, and tells who listens. */
  look(): void;
}

interface AnyHandler {
  readonly writes: boolean;
  run(args: unknown): Result<unknown> | Promise<Result<unknown>>;
}

function handlersOf(parts: ServiceParts): Map<string, AnyHandler> {
  const areas = [
    archiveHandlers(parts),
    wellsHandlers(parts),
    listHandlers(parts),
    binHandlers(parts),
    copiesHandlers(parts),
    bindersHandlers(parts),
    backdropsHandlers(parts),
    attachmentsHandlers(parts),
    importsHandlers(parts),
    exportHandlers(parts),
    papersHandlers(parts),
    practicesHandlers(parts),
    guidelinesHandlers(parts),
    templatesHandlers(parts),
    issuesHandlers(parts),
    identitiesHandlers(parts),
    sealsHandlers(parts),
    printingHandlers(parts),
    settingsHandlers(parts),
  ];
  return joinAreas(areas as unknown as Record<string, AnyHandler>[]);
}

/** Does the writing calls one after the other, so that none sees another half done. */
function inTurn(): <T>(work: () => T | Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work);
    last = next.catch(() => undefined);
    return next;
  };
}

/** The program's work behind the contract, on one open archive. */
export function createService(parts: Omit<ServiceParts, 'tell'>): Service {
  const listeners = new Set<(event: HostEvent) => void>();
  const tell = (event: HostEvent) => listeners.forEach((listener) => listener(event));
  const handlers = handlersOf({ ...parts, tell });
  const turn = inTurn();
  return {
    look: watchArchive(parts.archive, tell),
    async call<N extends CallName>(name: N, args: Takes<N>) {
      const handler = handlers.get(name)!;
      const work = () => handler.run(args);
      return (await (handler.writes ? turn(work) : work())) as Answer<N>;
    },
    onEvent(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}
