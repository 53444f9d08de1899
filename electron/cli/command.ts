import { refused, type Result } from '../../core/base/result.ts';

/** 0: done · 1: the record has errors, a file is not whole, or the work could not be done · 2: not understood. */
export type ExitCode = 0 | 1 | 2;

/** What the command line touches outside itself. */
export interface Host {
  /** A line on standard output. */
  readonly print: (line: string) => void;
  /** A sentence on standard error. */
  readonly complain: (sentence: string) => void;
  /** Now, ISO 8601. */
  readonly now: () => string;
  /** A new UUID. */
  readonly newId: () => string;
  /** File of a person's choices. */
  readonly settingsFile: string;
  /** Relative paths start here. */
  readonly folder: string;
  /** Asks for a passphrase without showing it; undefined where nobody answers. */
  readonly askSecret: (question: string) => Promise<string | undefined>;
  /** Comes true when the person or the system asks the program to end. */
  readonly asksToStop: () => Promise<void>;
}

/** The same for a command, as far as what was typed lets it speak. */
export interface World extends Host {
  /** A line for people on what was found or done; silent with `--quiet`, and with `--json`. */
  readonly print: (line: string) => void;
  /** What the command is for, to be read by another program too; never silent. */
  readonly give: (line: string) => void;
  /** What was done: a line of JSON with `--json`, else lines for people. */
  readonly report: (done: object, ...lines: readonly string[]) => void;
  /** How far a long work is, on standard error; silent with `--quiet`. */
  readonly progress: (line: string) => void;
}

export interface OptionShape {
  readonly type: 'string' | 'boolean';
  readonly short?: string;
}

/** A command's words after its name, and its options. */
export interface Given {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
}

export interface Command {
  /** One or two words, as typed. */
  readonly name: string;
  /** What follows the name, for the help. */
  readonly takes: string;
  /** What it does, for the help: a sentence without its full stop. */
  readonly says: string;
  /** Its own, beside those of every command. */
  readonly options: Readonly<Record<string, OptionShape>>;
  run(given: Given, world: World): Result<ExitCode> | Promise<Result<ExitCode>>;
}

/** Options of every command. */
export const commonOptions = {
  json: { type: 'boolean' },
  quiet: { type: 'boolean' },
} as const satisfies Readonly<Record<string, OptionShape>>;

/** Refuses what was typed; ends with exit code 2. */
export function misused(sentence: string): Result<never> {
  return refused('usage', sentence);
}

/** The text of an option; undefined where it was not given. */
export function textOption({ options }: Given, name: string): string | undefined {
  const value = options[name];
  return typeof value === 'string' ? value : undefined;
}
