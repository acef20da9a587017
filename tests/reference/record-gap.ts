/** Records GAP's answers for machines without it: `npx node tests/reference/record-gap.ts`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { RECORDED, askGap, readAnswer } from './gap.ts';

const output = askGap();
if (output === undefined) {
  process.stderr.write("GAP is not installed (Debian's gap-core)\n");
  process.exitCode = 1;
} else {
  readAnswer(output);
  mkdirSync(path.dirname(RECORDED), { recursive: true });
  writeFileSync(RECORDED, output);
}
