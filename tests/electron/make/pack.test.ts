import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { extractAll, listPackage } from '@electron/asar';
import { Arch, build, Platform, type Configuration } from 'electron-builder';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundleElectron } from '../../../electron/make/bundleElectron.ts';
import { freshFolder } from '../archive/sample.ts';

const top = path.resolve(import.meta.dirname, '../../..');

/** Enough of Electron's folder for the packer; its runtime is not there in tests. */
function electronFolder(folder: string): string {
  mkdirSync(path.join(folder, 'resources'), { recursive: true });
  mkdirSync(path.join(folder, 'locales'));
  for (const name of ['electron', 'version', 'LICENSE', 'locales/en-US.pak'])
    writeFileSync(path.join(folder, name), 'stand-in', { mode: 0o755 });
  return folder;
}

/** A copy of the project with its bundle, and with files about that must not be shipped. */
async function builtProject(folder: string): Promise<string> {
  for (const name of ['package.json', 'package-lock.json', 'LICENSE', 'assets', 'demo-data'])
    cpSync(path.join(top, name), path.join(folder, name), { recursive: true });
  symlinkSync(path.join(top, 'node_modules'), path.join(folder, 'node_modules'));
  await bundleElectron(top, path.join(folder, 'dist/electron'));
  for (const name of ['dist/page', 'core', 'tests'])
    mkdirSync(path.join(folder, name), { recursive: true });
  writeFileSync(path.join(folder, 'dist/page/index.html'), '<title>page</title>');
  writeFileSync(path.join(folder, 'core/source.ts'), '');
  writeFileSync(path.join(folder, '.env'), '');
  return folder;
}

function shippedConfiguration(electronDist: string): Configuration {
  const text = readFileSync(path.join(top, 'electron-builder.json'), 'utf8');
  const config = JSON.parse(text) as Configuration;
  // Fuses are burnt into a real program's bytes, which the stand-in does not have.
  Reflect.deleteProperty(config, 'electronFuses');
  return { ...config, electronDist };
}

let asar: string;
let files: string[];

beforeAll(async () => {
  const folder = freshFolder();
  const projectDir = await builtProject(path.join(folder, 'project'));
  const config = shippedConfiguration(electronFolder(path.join(folder, 'electron')));
  const targets = Platform.LINUX.createTarget('dir', Arch.x64);
  await build({ projectDir, targets, config, publish: 'never' });
  asar = path.join(projectDir, 'out/packages/linux-unpacked/resources/app.asar');
  files = listPackage(asar, { isPack: false }).map((file) => file.replaceAll('\\', '/'));
}, 180_000);

describe('the packed program, around a stand-in for Electron', () => {
  it('holds the programs, the page, the fonts and the licences', () => {
    for (const file of [
      '/package.json',
      '/LICENSE',
      '/assets/NOTICES.md',
      '/dist/electron/main.js',
      '/dist/electron/preload.cjs',
      '/dist/electron/index_bg.wasm',
      '/dist/page/index.html',
      '/assets/fonts/SourceSans3-Regular.ttf',
      '/assets/fonts/metrics.json',
    ])
      expect(files).toContain(file);
  });

  it('holds one module, with the native file of its own system only', () => {
    const modules = files.filter((file) => /^\/node_modules\/[^/]+$/.test(file));
    expect(modules).toEqual(['/node_modules/better-sqlite3']);
    expect(files.filter((file) => file.endsWith('.node'))).toEqual([
      '/node_modules/better-sqlite3/prebuilds/linux-x64.node',
    ]);
    expect(files.filter((file) => /better-sqlite3\/(src|deps)/.test(file))).toEqual([]);
  });

  it('holds no source, no test and nothing that lay about', () => {
    const others = files.filter(
      (file) => !/^\/(node_modules|dist|assets|package\.json|LICENSE)(\/|$)/.test(file),
    );
    expect(others).toEqual([]);
    expect(files.filter((file) => /\.(ts|map|env)$/.test(file))).toEqual([]);
  });

  it('keeps the native file outside the archive, where the system can load it', () => {
    const native = 'node_modules/better-sqlite3/prebuilds/linux-x64.node';
    expect(existsSync(path.join(`${asar}.unpacked`, native))).toBe(true);
  });

  it('starts at the bundle and makes a sheet from nothing but what is packed', () => {
    const folder = freshFolder();
    extractAll(asar, folder);
    const start = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as {
      main: string;
    };
    const hook = pathToFileURL(path.join(import.meta.dirname, 'packed/standInHook.mjs')).href;
    const archive = path.join(folder, 'Kalo.borefolio');
    const words = ['--import', hook, path.join(folder, start.main), archive];
    const said = execFileSync(process.execPath, words, { encoding: 'utf8' });
    expect(JSON.parse(said)).toEqual({ start: '%PDF-', page: '<title>page</title>' });
  });
});

describe('the packing rules', () => {
  it('publish nowhere and leave no back door in the runtime', () => {
    const text = readFileSync(path.join(top, 'electron-builder.json'), 'utf8');
    const { publish, electronFuses } = JSON.parse(text) as Configuration;
    expect(publish).toBeNull();
    expect(electronFuses).toMatchObject({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      onlyLoadAppFromAsar: true,
      enableEmbeddedAsarIntegrityValidation: true,
    });
  });
});
