import path from 'node:path';

/** What looking for a browser needs of the machine. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly exists: (file: string) => boolean;
}

/** Browsers that can show one page as a window of its own (`--app=`). */
const commands = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
  'brave-browser',
];

const macPrograms = ['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser'];

const windowsPrograms = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Chromium\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
  'BraveSoftware\\Brave-Browser\\Application\\brave.exe',
];

function onPath({ env }: Machine): string[] {
  const folders = (env['PATH'] ?? '').split(':').filter((folder) => path.posix.isAbsolute(folder));
  return commands.flatMap((command) => folders.map((folder) => path.posix.join(folder, command)));
}

function macPlaces({ env }: Machine): string[] {
  const folders = ['/Applications', ...(env['HOME'] ? [`${env['HOME']}/Applications`] : [])];
  return macPrograms.flatMap((program) =>
    folders.map((folder) => `${folder}/${program}.app/Contents/MacOS/${program}`),
  );
}

function windowsPlaces({ env }: Machine): string[] {
  const folders = [env['ProgramFiles'], env['ProgramFiles(x86)'], env['LOCALAPPDATA']];
  return windowsPrograms.flatMap((program) =>
    folders.flatMap((folder) => (folder ? [path.win32.join(folder, program)] : [])),
  );
}

function places(machine: Machine): string[] {
  if (machine.platform === 'win32') return windowsPlaces(machine);
  if (machine.platform === 'darwin') return macPlaces(machine);
  return onPath(machine);
}

/** The first Chromium-type browser on a machine; undefined where there is none. */
export function findBrowser(machine: Machine): string | undefined {
  return places(machine).find(machine.exists);
}
