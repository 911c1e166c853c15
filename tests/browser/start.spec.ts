import { spawn } from 'node:child_process';
import { createServer } from 'node:http';
import { expect, it, onTestFinished } from 'vitest';
import { ROOT } from '../../scripts/lib/root.mjs';
import { listenFrom } from '../../scripts/lib/static-server.mjs';

/** Runs `npm start` until it prints its address, or ends. */
function start(PORT: string): Promise<{ address?: URL; said: string; code?: number | null }> {
  const child = spawn(process.execPath, ['scripts/start.mjs'], { cwd: ROOT, env: { ...process.env, PORT } });
  onTestFinished(() => void child.kill());
  let said = '';
  return new Promise((resolve) => {
    const listen = (chunk: Buffer) => {
      said += chunk;
      const address = /http:\/\/\S+/.exec(said)?.[0];
      if (address) resolve({ address: new URL(address), said });
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.on('close', (code) => resolve({ said, code }));
  });
}

it('npm start serves the bench where it says', async () => {
  const { address } = await start('0');
  const answer = await fetch(address!);
  expect(await answer.text()).toMatch(/<title>Shimwright/);
  expect(answer.headers.get('Content-Security-Policy')).toMatch(/default-src 'none'/);
});

it('npm start takes the next port when its own is taken', async () => {
  const taken = createServer();
  onTestFinished(() => void taken.close());
  const { port } = new URL(await listenFrom(taken, 0));
  const { address } = await start(port);
  expect(Number(address!.port)).toBeGreaterThan(Number(port));
});

it('npm start refuses a port that is none', async () => {
  const { said, code } = await start('http');
  expect(code).toBe(1);
  expect(said.trim()).toBe('PORT: got http, wanted a whole number from 0 to 65535');
});
