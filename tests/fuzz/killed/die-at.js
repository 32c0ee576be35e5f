// Loaded before the program: lets it die, as if the power failed, at the n-th step of writing a file.
import fs from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';
import process from 'node:process';

let left = Number(process.env['DIE_AT_STEP'] ?? '0');

function step() {
  left -= 1;
  if (left === 0) process.kill(process.pid, 'SIGKILL');
}

const { open, rename, unlink } = fs;

fs.open = async (path, flags, ...rest) => {
  if (!String(flags).startsWith('w')) return open(path, flags, ...rest);
  step();
  const file = await open(path, flags, ...rest);
  step();
  const { writeFile, sync, close } = file;
  file.writeFile = async (bytes) => {
    await file.write(bytes, 0, Math.floor(bytes.length / 2));
    step();
    await file.write(bytes, Math.floor(bytes.length / 2));
    step();
  };
  file.sync = async () => {
    await sync.call(file);
    step();
  };
  file.close = async () => {
    await close.call(file);
    step();
  };
  void writeFile;
  return file;
};
fs.rename = async (from, to) => {
  step();
  await rename(from, to);
  step();
};
fs.unlink = async (path) => {
  step();
  await unlink(path);
};
syncBuiltinESMExports();
