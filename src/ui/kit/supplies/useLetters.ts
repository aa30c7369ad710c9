import { phoneQuery, useMediaQuery } from "../useScreen";

/** How many times smaller than a layout its letters are: on a phone they stay large enough to read. */
export const useLetters = (): number => (useMediaQuery(phoneQuery) ? 28 : 44);
