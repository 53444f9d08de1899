/** Serves an archive's page as a process of its own, which a test can kill; says its address. */
import { startLoopback } from '../../electron/loopback/server.ts';
import { openService } from '../../electron/service/openService.ts';

const [file, pageFolder] = process.argv.slice(2) as [string, string];
const opened = openService(file, {
  clock: () => new Date().toISOString(),
  newId: () => crypto.randomUUID(),
});
if (!opened.ok) throw new Error(opened.error.sentence);
const { url } = await startLoopback({ service: opened.value.service, pageFolder });
process.stdout.write(`${url}\n`);
