/**
 * What the smoke story needs of a browser, whichever way it is driven. Things on the page are found by XPath, because
 * every driver has it and because it can ask for the words a person reads.
 */
export interface SmokeBrowser {
  /** Its name and release, as it says itself. */
  readonly name: string;
  open(address: string): Promise<void>;
  reload(): Promise<void>;
  /** The value of an expression, worked out in the page. */
  ask<Value>(expression: string): Promise<Value>;
  press(path: string): Promise<void>;
  /** Letter by letter, with the keys of a keyboard, in place of what is chosen there. */
  type(path: string, text: string): Promise<void>;
  pressEnter(path: string): Promise<void>;
  /** A PNG of what is shown. */
  picture(): Promise<Uint8Array>;
  /** Ends the browser and everything that was started for it. */
  close(): Promise<void>;
}

/** Something on the page that is there, or not there yet. */
export const isThere = (path: string): string =>
  `document.evaluate(${JSON.stringify(path)}, document, null, XPathResult.BOOLEAN_TYPE).booleanValue`;

/** Where on the screen something is, as a text that changes when it moves. */
export const placeOf = (path: string): string =>
  `JSON.stringify(document.evaluate(${JSON.stringify(path)}, document, null, ` +
  `XPathResult.FIRST_ORDERED_NODE_TYPE).singleNodeValue?.getBoundingClientRect() ?? null)`;

/** Puts the caret into a field and chooses all that stands there, as a double tap does. */
export const chooseAll = (path: string): string =>
  `(() => { const field = document.evaluate(${JSON.stringify(path)}, document, null, ` +
  `XPathResult.FIRST_ORDERED_NODE_TYPE).singleNodeValue; field.focus(); field.select(); return true; })()`;

/** The words of something on the page, spaces made single; "" where it is not. */
export const wordsOf = (path: string): string =>
  `(document.evaluate(${JSON.stringify(path)}, document, null, XPathResult.FIRST_ORDERED_NODE_TYPE)` +
  `.singleNodeValue?.textContent ?? "").replace(/\\s+/g, " ").trim()`;
