/** Entry of the command line. Result to stdout, talk to stderr; the exit code is set and the streams run dry. */
import { EXIT } from './command.ts';
import { run } from './run.ts';
import { screenWidth } from './screen-width.ts';

// A reader that has seen enough, such as `head`, is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { exit, result, talk } = await run(process.argv.slice(2), {
    emit: (part) => {
      process.stdout.write(part);
    },
    width: screenWidth(process.env.COLUMNS, process.stdout.columns),
  });
  process.exitCode = exit;
  for (const line of talk) process.stderr.write(`${line}\n`);
  process.stdout.write(result);
} catch (error) {
  process.exitCode = EXIT.failed;
  process.stderr.write(`shimwright: a fault of the program: ${error instanceof Error ? error.stack : error}\n`);
}
