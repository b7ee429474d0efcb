// The first minutes with Forefoot Notes: one invented note as typed, then checked, staged and written as prose.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const note = 'samples/second-ray.forefoot';
const today = '2026-05-04';

const steps = [
  ['check', 'What is dangerous, contradictory or unread in it: here an injection that somebody gave before.'],
  ['stage', 'What is computed from it, the newest visit first, each with the words it stands on.'],
  ['write', 'The clinic note of the newest visit: what was stated, and below the line what was computed.'],
];

console.log(`\nA note of an invented patient, as a surgeon types it (${note}):\n`);
console.log(readFileSync(note, 'utf8'));

for (const [command = '', says] of steps) {
  console.log(`\n${says}\n$ node dist/cli.js ${command} ${note} --today ${today}\n`);
  const { status } = spawnSync(process.execPath, ['dist/cli.js', command, note, '--today', today], {
    stdio: 'inherit',
    env: { ...process.env, COLUMNS: '100' },
  });
  // 1 means that the note has a warning, which this one has; 2 means that the command could not run.
  if (status !== 0 && status !== 1) process.exit(status ?? 2);
}

console.log('\nMore notes stand beside it in samples/; faulty.forefoot shows every kind of report.');
