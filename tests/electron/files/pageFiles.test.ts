import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { contentPolicy, readPageFile } from '../../../electron/files/pageFiles.ts';
import { freshFolder } from '../archive/sample.ts';

let folder: string;

/** The page's folder, with a secret beside it and one within that is no kind of page file. */
beforeAll(() => {
  const top = freshFolder();
  folder = path.join(top, 'page');
  mkdirSync(path.join(folder, 'assets'), { recursive: true });
  for (const name of ['index.html', 'assets/a b.js', 'assets/é.css', 'assets/UPPER.PNG'])
    writeFileSync(path.join(folder, name), name);
  for (const name of ['notes.txt', 'wells.borefolio', 'bare'])
    writeFileSync(path.join(folder, name), name);
  writeFileSync(path.join(top, 'secret.html'), 'secret');
  mkdirSync(path.join(top, 'page-other'));
  writeFileSync(path.join(top, 'page-other/index.html'), 'secret');
  symlinkSync(path.join(top, 'secret.html'), path.join(folder, 'linked.html'));
  symlinkSync(path.join(top, 'page-other'), path.join(folder, 'other'));
  symlinkSync(path.join(folder, 'index.html'), path.join(folder, 'inner.html'));
});

const textAt = async (urlPath: string) => {
  const file = await readPageFile(folder, urlPath);
  return file && [Buffer.from(file.bytes).toString(), file.type];
};

describe('a file of the page', () => {
  it.each([
    ['/', 'index.html', 'text/html; charset=utf-8'],
    ['/index.html', 'index.html', 'text/html; charset=utf-8'],
    ['/assets/a%20b.js', 'assets/a b.js', 'text/javascript; charset=utf-8'],
    ['/assets/%C3%A9.css', 'assets/é.css', 'text/css; charset=utf-8'],
    ['/assets/UPPER.PNG', 'assets/UPPER.PNG', 'image/png'],
    ['/inner.html', 'index.html', 'text/html; charset=utf-8'],
  ])('stands at %s', async (urlPath, text, type) => {
    expect(await textAt(urlPath)).toEqual([text, type]);
  });

  it.each([
    '/none.html',
    '/notes.txt',
    '/wells.borefolio',
    '/bare',
    '/assets',
    '/assets/',
    '/../secret.html',
    '/assets/../../secret.html',
    '/%2e%2e/secret.html',
    '/..%2fsecret.html',
    '/..\\secret.html',
    '/..%5Csecret.html',
    '/C:/secret.html',
    '/index.html%00.js',
    '/%E0%A4%A.html',
    '/linked.html',
    '/other/index.html',
  ])('does not stand at %s', async (urlPath) => {
    expect(await readPageFile(folder, urlPath)).toBeUndefined();
  });

  it('is missing, not an error, where the page was never built', async () => {
    expect(await readPageFile(path.join(folder, 'nowhere'), '/')).toBeUndefined();
  });
});

describe('the content policy', () => {
  const rules = new Map(
    contentPolicy.split('; ').map((rule) => {
      const [name, ...sources] = rule.split(' ');
      return [name!, sources];
    }),
  );

  it('lets in nothing by default, and no script or style from elsewhere or within the page', () => {
    expect(rules.get('default-src')).toEqual(["'none'"]);
    for (const name of ['script-src', 'style-src', 'font-src', 'connect-src', 'worker-src'])
      expect([name, rules.get(name)]).toEqual([name, ["'self'"]]);
    expect(contentPolicy).not.toMatch(/unsafe|\*|https?:/);
  });

  it('lets the page show pictures and papers that it made, and nobody frame it', () => {
    expect(rules.get('img-src')).toEqual(["'self'", 'data:', 'blob:']);
    expect(rules.get('frame-src')).toEqual(['blob:']);
    for (const name of ['base-uri', 'form-action', 'frame-ancestors'])
      expect([name, rules.get(name)]).toEqual([name, ["'none'"]]);
  });
});
