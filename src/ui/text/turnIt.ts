/** The way from the plan to the turning figure, in a file of its own so that the plan does not load the rest. */
export const turnIt = "Turn the figure round";
