// The first minutes with Forefoot Notes: one invented note checked, staged and written as prose.
import { spawnSync } from 'node:child_process';

const note = 'samples/second-ray.forefoot';
const today = '2026-05-04';

for (const command of ['check', 'stage', 'write']) {
  console.log(`\n== forefoot ${command} ${note}\n`);
  const { status } = spawnSync(process.execPath, ['dist/cli.js', command, note, '--today', today], {
    stdio: 'inherit',
  });
  // 1 means that the note has a warning, which a demonstration may well show; 2 means that the command could not run.
  if (status !== 0 && status !== 1) process.exit(status ?? 2);
}
