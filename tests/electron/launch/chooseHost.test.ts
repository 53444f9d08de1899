import { describe, expect, it } from 'vitest';
import { chooseHost } from '../../../electron/launch/chooseHost.mjs';

describe('what npm start opens', () => {
  it('is the desktop program where its runtime and a display are there', () => {
    expect(chooseHost({ display: true, electron: true, fetched: false })).toBe('electron');
  });

  it('asks for the runtime once where only that is lacking', () => {
    expect(chooseHost({ display: true, electron: false, fetched: false })).toBe('fetchElectron');
  });

  it('is a browser’s window where the runtime was not to be had', () => {
    expect(chooseHost({ display: true, electron: false, fetched: true })).toBe('window');
  });

  it('never fetches the runtime where no window can be shown', () => {
    for (const electron of [true, false])
      for (const fetched of [true, false])
        expect(chooseHost({ display: false, electron, fetched })).toBe('papers');
  });
});
