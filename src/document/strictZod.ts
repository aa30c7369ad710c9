import * as z from "zod/mini";

/**
 * The maker of all schemas: the small variant of the library, which makes no function out of text, as the page's policy
 * asks. Schemas are made with this `z` and no other.
 */
export { z };
