import path from 'node:path';
import { currentNode, isCurrentNode, nodeMajor, ownNode, Stopped } from './project.mjs';
import { runCommand } from './runCommand.mjs';

/**
 * The environment in which `node` names the project's own one, for the programs that start others.
 */
export function currentEnvironment() {
  const folder = path.dirname(currentNode() ?? ownNode());
  const key = Object.keys(process.env).find((name) => name.toUpperCase() === 'PATH') ?? 'PATH';
  const rest = process.env[key];
  return { ...process.env, [key]: rest ? `${folder}${path.delimiter}${rest}` : folder };
}

/**
 * Runs the body here where this Node is current, else the whole program again under the
 * project's own Node.
 * @param {() => Promise<number>} body gives the exit code
 * @returns {Promise<number>} exit code
 */
export async function underCurrentNode(body) {
  if (isCurrentNode(process.versions.node)) return body();
  const node = currentNode();
  if (!node)
    throw new Stopped(
      `Node ${nodeMajor} or newer is needed; this is ${process.versions.node}. Run \`npm run setup\` first.`,
    );
  const { code } = await runCommand(node, process.argv.slice(1), { env: currentEnvironment() });
  return code;
}
