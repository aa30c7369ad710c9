/** The way from the plan to the 3-D view, in a file of its own so that the plan does not load the rest. */
export const turnIt = "See it in 3-D";
