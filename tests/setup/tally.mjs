// Sums what the test runners left in .cache/results into one plain line: `N passed, N failed`.
import { existsSync, readdirSync, readFileSync } from 'node:fs';

const folder = '.cache/results';
let passed = 0;
let failed = 0;
for (const name of existsSync(folder) ? readdirSync(folder) : []) {
  if (!name.endsWith('.json')) continue;
  const result = JSON.parse(readFileSync(`${folder}/${name}`, 'utf8'));
  passed += result.numPassedTests ?? result.passed ?? 0;
  failed += result.numFailedTests ?? result.failed ?? 0;
}
console.log(`${passed} passed, ${failed} failed`);
