import { build } from '../../esbuild.config.mjs';

/** Protocol and command-line tests drive the built bundles, so they are built once before any test. */
export async function setup(): Promise<void> {
  await build();
}
