import { formatLength } from "../core/lengthText";

/** A length as it is read, on a screen or on paper: `38 1/2 in`, `97.5 cm`. Files, commands and fields have `formatLength`. */
export const writtenLength = formatLength;
