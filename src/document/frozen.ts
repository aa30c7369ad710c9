/** A value read from a file, all the way down readonly: documents are replaced, never edited. */
export type Frozen<Value> = Value extends object ? { readonly [key in keyof Value]: Frozen<Value[key]> } : Value;
