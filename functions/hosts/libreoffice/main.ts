import { CalcServer } from './server.ts';

/** The long-lived child process of the Calc add-in. It ends when the office closes the pipe. */
const server = new CalcServer();
let rest = '';

process.stdout.write(`${JSON.stringify({ ready: process.versions.node })}\n`);
process.stdin.setEncoding('utf8');
process.stdin.on('data', (chunk: string) => {
  const lines = (rest + chunk).split('\n');
  rest = lines.pop() ?? '';
  for (const line of lines) process.stdout.write(`${server.answerLine(line)}\n`);
});
process.stdin.on('end', () => process.exit(0));
