/** First file of a worker thread: runs the TypeScript file named by its first argument. */
import { register } from 'tsx/esm/api';

register();
await import(process.argv[2]);
