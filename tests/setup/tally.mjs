// Sums what the test runners left in .cache/results into one plain line: `N passed, N failed`.
import { existsSync, readdirSync, readFileSync } from 'node:fs';

const folder = '.cache/results';
let passed = 0;
let failed = 0;
for (const name of existsSync(folder) ? readdirSync(folder) : []) {
  if (!name.endsWith('.json')) continue;
  const result = JSON.parse(readFileSync(`${folder}/${name}`, 'utf8'));
  passed += result.numPassedTests ?? result.passed ?? 0;
  // A test file that cannot be loaded has no failed test of its own.
  failed += result.numFailedTests || (result.failed ?? (result.success === false ? 1 : 0));
}
console.log(`${passed} passed, ${failed} failed`);
