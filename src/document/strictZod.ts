import * as z from "zod/mini";

/**
 * The maker of all schemas, told before any is made to write no code of its own: it would otherwise try whether it may
 * make a function out of text, which the page's policy forbids and the browser reports as a violation. Schemas are made
 * with this `z` and no other.
 */
z.config({ jitless: true });

export { z };
