import { parseArgs } from 'node:util';
import { ok, type Result } from '../../core/base/result.ts';
import {
  commonOptions,
  misused,
  type Command,
  type ExitCode,
  type Given,
  type Host,
  type World,
} from './command.ts';
import { commands } from './commands.ts';
import { help } from './help.ts';

const seeHelp = '`borefolio --help` lists the commands.';

/** The command that the arguments start with; the one with more words goes before. */
function findCommand(args: readonly string[]): Command | undefined {
  return commands
    .toSorted((a, b) => b.name.length - a.name.length)
    .find(({ name }) => name.split(' ').every((word, at) => args[at] === word));
}

function unknown(args: readonly string[]): Result<never> {
  const halves = commands.filter(({ name }) => name.startsWith(`${args[0]} `));
  const next = halves.map(({ name }) => name.split(' ')[1]).join(' or ');
  if (next !== '') return misused(`After ${args[0]} comes ${next}. ${seeHelp}`);
  return misused(`There is no command ${args[0]}. ${seeHelp}`);
}

/** Node's own sentence on an option that it could not take, in one line. */
function optionTrouble(error: unknown): Result<never> {
  if (!(error instanceof TypeError)) throw error;
  return misused(`${error.message.split('. ')[0]!.replace(/\.$/, '')}. ${seeHelp}`);
}

function parse(command: Command, args: readonly string[]): Result<Given> {
  try {
    const { values, positionals } = parseArgs({
      args: args.slice(command.name.split(' ').length),
      options: { ...command.options, ...commonOptions },
      allowPositionals: true,
    });
    return ok({ words: positionals, options: values as Given['options'] });
  } catch (error) {
    return optionTrouble(error);
  }
}

/** What a command may say, by the options of every command. */
function worldOf(host: Host, { options }: Given): World {
  const nothing = () => undefined;
  const [quiet, json] = [options['quiet'] === true, options['json'] === true];
  const print = quiet || json ? nothing : host.print;
  return {
    ...host,
    print,
    give: host.print,
    report: (done, ...lines) => {
      if (json) host.print(JSON.stringify(done));
      else lines.forEach(print);
    },
    progress: quiet ? nothing : host.complain,
  };
}

async function runCommand(args: readonly string[], host: Host): Promise<Result<ExitCode>> {
  const command = findCommand(args);
  if (!command) return unknown(args);
  const given = parse(command, args);
  return given.ok ? command.run(given.value, worldOf(host, given.value)) : given;
}

function asksForHelp(args: readonly string[]): boolean {
  return args.includes('--help') || args.includes('-h') || args[0] === 'help';
}

/** Runs what was typed, without the program's own name. */
export async function run(args: readonly string[], host: Host): Promise<ExitCode> {
  if (asksForHelp(args)) {
    host.print(help());
    return 0;
  }
  if (args.length === 0) {
    host.complain(`Say what to do. ${seeHelp}`);
    return 2;
  }
  const outcome = await runCommand(args, host);
  if (outcome.ok) return outcome.value;
  host.complain(outcome.error.sentence);
  return outcome.error.code === 'usage' ? 2 : 1;
}
