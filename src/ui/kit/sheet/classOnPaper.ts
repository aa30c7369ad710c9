import { createStore } from "zustand/vanilla";

/** Whether the sheets of a class wait for the printer: then the open fitting's own stay away from them. */
export const classOnPaper = createStore(() => ({ isWaiting: false }));
