/** Words as they stand at the head of a sentence. */
export const upperFirst = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
