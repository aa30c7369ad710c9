/** Whatever was found, as fields that may be there or not. */
export const fieldsOf = (found: unknown): { readonly [name: string]: unknown } =>
  typeof found === "object" && found !== null ? (found as { readonly [name: string]: unknown }) : {};
