/** The reference cases in a thread of their own; their texts are a file apart. */
import { expose } from 'comlink';
import { reportOn } from '../src/proof/report.ts';
import { createProofApi } from './proof-api.ts';

expose(createProofApi(async () => (await import('./proof-cases.ts')).proofCases, reportOn));
