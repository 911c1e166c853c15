/** `npm start`: installs what is missing, builds what is out of date, serves the bench on this machine. */
import { BENCH_FOLDER, ensureBench } from './lib/build.mjs';
import { ensureInstalled } from './lib/install.mjs';
import { createStaticServer, listenFrom } from './lib/static-server.mjs';

const DEFAULT_PORT = 5180;

try {
  await ensureInstalled();
  await ensureBench();
  const address = await listenFrom(createStaticServer(BENCH_FOLDER), portWanted(process.env.PORT));
  console.log(`Shimwright is at ${address} (Ctrl+C stops it)`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

/** @param {string | undefined} text */
function portWanted(text) {
  if (text === undefined || text === '') return DEFAULT_PORT;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  throw new Error(`PORT: got ${text}, wanted a whole number from 0 to 65535`);
}
