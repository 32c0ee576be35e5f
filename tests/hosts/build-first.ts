import { execFileSync } from 'node:child_process';

/** What is tested is what is in the tree: the extension and the command line are built anew before the first test. */
export default function setup(): void {
  execFileSync('npm', ['run', '--silent', 'build:libreoffice'], { stdio: 'inherit' });
  execFileSync('npx', ['webpack', '--config-name', 'command-line'], { stdio: 'inherit' });
}
