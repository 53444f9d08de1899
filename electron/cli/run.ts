import { parseArgs } from 'node:util';
import { ok, type Result } from '../../core/base/result.ts';
import { misused, type Command, type ExitCode, type Given, type World } from './command.ts';
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
      options: command.options,
      allowPositionals: true,
    });
    return ok({ words: positionals, options: values as Given['options'] });
  } catch (error) {
    return optionTrouble(error);
  }
}

async function runCommand(args: readonly string[], world: World): Promise<Result<ExitCode>> {
  const command = findCommand(args);
  if (!command) return unknown(args);
  const given = parse(command, args);
  return given.ok ? command.run(given.value, world) : given;
}

function asksForHelp(args: readonly string[]): boolean {
  return args.includes('--help') || args.includes('-h') || args[0] === 'help';
}

/** Runs what was typed, without the program's own name. */
export async function run(args: readonly string[], world: World): Promise<ExitCode> {
  if (asksForHelp(args)) {
    world.print(help());
    return 0;
  }
  if (args.length === 0) {
    world.complain(`Say what to do. ${seeHelp}`);
    return 2;
  }
  const outcome = await runCommand(args, world);
  if (outcome.ok) return outcome.value;
  world.complain(outcome.error.sentence);
  return outcome.error.code === 'usage' ? 2 : 1;
}
