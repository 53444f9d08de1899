import { beforeEach, describe, expect, it, vi } from 'vitest';

const app = vi.hoisted(() => ({
  requestSingleInstanceLock: vi.fn<() => boolean>(),
  quit: vi.fn(),
  enableSandbox: vi.fn(),
  on: vi.fn(),
  whenReady: vi.fn(() => new Promise(() => undefined)),
}));

vi.mock('electron', async () => {
  const standIn = (await import('./standIn.ts')).electronStandIn();
  return { ...standIn, app, session: {} };
});

async function startWith(lock: boolean): Promise<void> {
  app.requestSingleInstanceLock.mockReturnValue(lock);
  await import('../../../electron/main/main.ts');
}

beforeEach(() => {
  vi.resetModules();
  vi.clearAllMocks();
});

describe('the program, started on a stand-in for Electron', () => {
  it('ends at once where it runs already', async () => {
    await startWith(false);
    expect(app.quit).toHaveBeenCalledOnce();
    expect(app.whenReady).not.toHaveBeenCalled();
  });

  it('sandboxes every page and watches each one before any is made', async () => {
    await startWith(true);
    expect(app.quit).not.toHaveBeenCalled();
    expect(app.enableSandbox).toHaveBeenCalledBefore(app.whenReady);
    const watched = app.on.mock.calls.map(([name]) => name);
    expect(watched).toEqual(expect.arrayContaining(['web-contents-created', 'second-instance']));
  });
});
