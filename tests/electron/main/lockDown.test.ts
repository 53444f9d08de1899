import { EventEmitter } from 'node:events';
import type { Session, WebContents } from 'electron';
import { describe, expect, it, vi } from 'vitest';
import { keepHome, keepShut } from '../../../electron/main/lockDown.ts';

/** Stands in for Electron's web contents: remembers what it was told. */
function contentsStandIn() {
  const contents = Object.assign(new EventEmitter(), { setWindowOpenHandler: vi.fn() });
  keepHome(contents as unknown as WebContents);
  return contents;
}

/** Whether an event was stopped. */
function stopped(name: string, url: string): boolean {
  const preventDefault = vi.fn();
  contentsStandIn().emit(name, { preventDefault }, url);
  return preventDefault.mock.calls.length > 0;
}

describe('a page, kept home by what a stand-in for Electron is told', () => {
  it('cannot go to another address', () => {
    for (const name of ['will-navigate', 'will-redirect']) {
      expect(stopped(name, 'https://borefolio.example/')).toBe(true);
      expect(stopped(name, 'file:///etc/hosts')).toBe(true);
      expect(stopped(name, 'borefolio://other/')).toBe(true);
      expect(stopped(name, 'no address')).toBe(true);
      expect(stopped(name, 'borefolio://page/')).toBe(false);
    }
  });

  it('cannot open a window or hold a page within', () => {
    const { setWindowOpenHandler } = contentsStandIn();
    expect(setWindowOpenHandler.mock.calls[0]![0]()).toEqual({ action: 'deny' });
    expect(stopped('will-attach-webview', '')).toBe(true);
  });
});

function sessionStandIn() {
  const session = {
    setPermissionRequestHandler: vi.fn(),
    setPermissionCheckHandler: vi.fn(),
    setDevicePermissionHandler: vi.fn(),
    webRequest: { onBeforeRequest: vi.fn() },
  };
  keepShut(session as unknown as Session);
  return session;
}

describe('a session, kept shut by what a stand-in for Electron is told', () => {
  it('grants no permission and no device', () => {
    const session = sessionStandIn();
    const answer = vi.fn();
    session.setPermissionRequestHandler.mock.calls[0]![0]({}, 'geolocation', answer);
    expect(answer).toHaveBeenCalledExactlyOnceWith(false);
    expect(session.setPermissionCheckHandler.mock.calls[0]![0]()).toBe(false);
    expect(session.setDevicePermissionHandler.mock.calls[0]![0]()).toBe(false);
  });

  it('lets no request leave the machine', () => {
    const judge = sessionStandIn().webRequest.onBeforeRequest.mock.calls[0]![0];
    const cancelled = (url: string) => {
      const answer = vi.fn();
      judge({ url }, answer);
      return answer.mock.calls[0]![0].cancel as boolean;
    };
    expect(cancelled('https://borefolio.example/x')).toBe(true);
    expect(cancelled('ws://borefolio.example')).toBe(true);
    expect(cancelled('file:///etc/hosts')).toBe(true);
    expect(cancelled('borefolio://page/main.js')).toBe(false);
    expect(cancelled('blob:borefolio://page/1')).toBe(false);
  });
});
