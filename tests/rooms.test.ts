import { readFileSync, readdirSync } from 'node:fs';
import { builtinModules } from 'node:module';
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { rooms, type Room } from './roomMap.ts';

const top = path.resolve(import.meta.dirname, '..');
const pageGlobals = ['window', 'document', 'localStorage', 'navigator', 'fetch', 'HTMLElement'];
const nodeGlobals = ['process', 'Buffer', '__dirname', '__filename', 'require', 'global'];
const worldGlobals = ['setTimeout', 'setInterval', 'performance', 'crypto', 'console'];

const sources = ['core', 'electron', 'renderer'].flatMap((folder) =>
  readdirSync(path.join(top, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|js|mjs|cjs|svelte)$/.test(name))
    .map((name) => path.posix.join(folder, name.split(path.sep).join('/'))),
);

function roomOf(file: string): Room | undefined {
  return rooms
    .filter(({ room }) => file.startsWith(`${room}/`))
    .sort((a, b) => b.room.length - a.room.length)[0];
}

function scriptOf(file: string): string {
  const text = readFileSync(path.join(top, file), 'utf8');
  if (!file.endsWith('.svelte')) return text;
  const blank = (part: string) => part.replace(/[^\n]/g, ' ');
  let end = 0;
  let script = '';
  for (const match of text.matchAll(/(<script[^>]*>)([\s\S]*?)<\/script>/g)) {
    const start = match.index + match[1]!.length;
    script += blank(text.slice(end, start)) + match[2]!;
    end = start + match[2]!.length;
  }
  return script;
}

const parsed = new Map(
  sources.map((file) => [
    file,
    ts.createSourceFile(file, scriptOf(file), ts.ScriptTarget.Latest, true, ts.ScriptKind.TS),
  ]),
);

interface Import {
  line: number;
  specifier: string;
  target: string;
}

function importsOf(file: string): Import[] {
  const source = parsed.get(file)!;
  const found: Import[] = [];
  const note = (node: ts.Node, specifier: string) =>
    found.push({
      line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1,
      specifier,
      target: specifier.startsWith('.')
        ? path.posix.join(path.posix.dirname(file), specifier.replace(/\?.*$/, ''))
        : specifier,
    });
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier)
      note(node, (node.moduleSpecifier as ts.StringLiteral).text);
    if (
      ts.isCallExpression(node) &&
      node.expression.kind === ts.SyntaxKind.ImportKeyword &&
      node.arguments[0] &&
      ts.isStringLiteral(node.arguments[0])
    )
      note(node, node.arguments[0].text);
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      note(node, (node.argument.literal as ts.StringLiteral).text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function within(target: string, door: string): boolean {
  return target === door || target.startsWith(`${door}/`);
}

function isNode(specifier: string): boolean {
  return specifier.startsWith('node:') || builtinModules.includes(specifier.split('/')[0]!);
}

function faultOf(room: Room, { specifier, target }: Import): string | undefined {
  if (specifier.startsWith('.')) {
    const open = [room.room, ...room.doors, 'assets'].some((door) => within(target, door));
    return open ? undefined : `${room.room} may not import ${target}`;
  }
  if (isNode(specifier))
    return room.world === 'node' ? undefined : `${room.room} may not use Node (${specifier})`;
  const known = room.packages.some((name) => within(specifier, name));
  return known ? undefined : `${room.room} may not import the package ${specifier}`;
}

function isBareName(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent) && parent.name === node) return false;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return false;
  if (ts.isPropertySignature(parent) || ts.isBindingElement(parent)) return false;
  return !ts.isParameter(parent) && !ts.isQualifiedName(parent);
}

/** Names that a file declares itself; a parameter named `document` is not the page's. */
function declaredIn(source: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    const declares =
      ts.isParameter(node) ||
      ts.isVariableDeclaration(node) ||
      ts.isBindingElement(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isImportSpecifier(node);
    if (declares && node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return names;
}

/** What a file touches of its host although its room must be handed it. */
function hostTouches(file: string, room: Room): string[] {
  if (room.world === 'node' || room.world === 'page' || room.world === 'both') return [];
  const banned = new Set([...pageGlobals, ...nodeGlobals, ...worldGlobals]);
  const source = parsed.get(file)!;
  const own = declaredIn(source);
  const found: string[] = [];
  const say = (node: ts.Node, what: string) =>
    found.push(
      `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} uses ${what}`,
    );
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && banned.has(node.text) && isBareName(node) && !own.has(node.text))
      say(node, node.text);
    if (room.world === 'handed' && ts.isPropertyAccessExpression(node)) {
      const text = node.getText();
      if (/^(Date\.now|Math\.random)$/.test(text) || /\.toLocale\w*$/.test(text)) say(node, text);
    }
    if (
      room.world === 'handed' &&
      ts.isNewExpression(node) &&
      node.expression.getText() === 'Date' &&
      !node.arguments?.length
    )
      say(node, 'new Date()');
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Import cycles between files, each written as its path of files. */
function cycles(): string[] {
  const state = new Map<string, 'open' | 'done'>();
  const found: string[] = [];
  const walk = (file: string, trail: string[]): void => {
    if (state.get(file) === 'done') return;
    if (state.get(file) === 'open') {
      found.push([...trail.slice(trail.indexOf(file)), file].join(' → '));
      return;
    }
    state.set(file, 'open');
    for (const { target } of importsOf(file))
      if (parsed.has(target)) walk(target, [...trail, file]);
    state.set(file, 'done');
  };
  for (const file of parsed.keys()) walk(file, []);
  return found;
}

describe('the map of rooms', () => {
  it('has a room for every source file', () => {
    expect(sources.filter((file) => !roomOf(file))).toEqual([]);
  });

  it('is kept by every import', () => {
    const faults = sources.flatMap((file) =>
      importsOf(file).flatMap((one) => {
        const fault = faultOf(roomOf(file)!, one);
        return fault ? [`${file}:${one.line} ${fault}`] : [];
      }),
    );
    expect(faults).toEqual([]);
  });

  it('keeps the host out of the rooms that are handed their world', () => {
    expect(sources.flatMap((file) => hostTouches(file, roomOf(file)!))).toEqual([]);
  });

  it('has no circle of imports', () => {
    expect(cycles()).toEqual([]);
  });

  it('names the arrow that breaks it', () => {
    const record = rooms.find(({ room }) => room === 'core/record')!;
    const bad = { line: 1, specifier: '../model/tally.ts', target: 'core/model/tally.ts' };
    expect(faultOf(record, bad)).toBe('core/record may not import core/model/tally.ts');
    const node = { line: 1, specifier: 'node:fs', target: 'node:fs' };
    expect(faultOf(record, node)).toBe('core/record may not use Node (node:fs)');
  });
});
