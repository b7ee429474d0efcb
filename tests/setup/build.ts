import { build } from '../../esbuild.config.mjs';

/**
 * Protocol and command-line tests drive the built bundles, so they are built once before any test. A bundle that fails
 * to build is gone from dist/: the tests that need it fail, the others still say what they know.
 */
export async function setup(): Promise<void> {
  await build();
}
