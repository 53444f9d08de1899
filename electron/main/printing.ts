import { app, shell } from 'electron';
import { systemPrinting } from '../service/systemPrinting.ts';

/** The desktop's printing. */
export const desktopPrinting = systemPrinting({
  temporary: () => app.getPath('temp'),
  openFile: (file) => shell.openPath(file),
});
