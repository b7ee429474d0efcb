/** Computed when it is first asked for, then kept: what argues a stage is read for the rays that somebody looks at. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
