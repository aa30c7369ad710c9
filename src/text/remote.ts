import type { RemoteMove } from "../app/classRemote/remoteWords";

/** Words of the phone as a remote: on the phone, and in the class view. */
export const remoteWords = {
  title: "Remote",
  control: "Remote",
  /** Said on the phone where the act cannot be said without a figure. */
  noAct: "Look at the class view for this step.",
  moves: {
    back: "Previous step",
    forward: "Next step",
    cover: "Cover or show the figures",
  } satisfies { readonly [move in RemoteMove]: string },
  code: "The code on the class view",
  connect: "Connect",
  lead: "This phone turns the steps of a class view on a laptop on the same network. On the laptop open the class view and press R.",
  wrongCode:
    "That is not the code on the class view. Each code works once. After several wrong tries there is a new one.",
  unreachable: "The laptop does not answer. Is it on the same network, and was the tool started with --share?",
  notOffered: "No class view can be reached here. Start the tool on the laptop with “npm start -- --share”.",
  lost: "Not connected. Trying again…",
  over: "The class view disconnected this phone.",
  notMoved: "That did not get through: the class view is not open.",
  leave: "Disconnect",
  passes:
    "The phone sends only: previous step, next step, cover or show. It gets only the sentence of the step, without figures. No measurement, name or note is sent. The link is not encrypted, and nothing goes beyond this network.",
} as const;

export const classRemoteWords = {
  title: "A phone as remote",
  notShared:
    "No phone can reach this class view: the tool was not started to be shared. Close it where it was started, and start it there with “npm start -- --share”. Phones in the same network then reach it.",
  open: "On the phone open:",
  type: "and type this code:",
  noNetwork: "This computer is not on a network, so no phone can reach it.",
  squares: "The address and the code as a square code",
  once: "The first phone that types it controls the class view; then the code no longer works. Close this panel with R: the code stays good.",
  paired: "A phone controls the class view.",
  notYours: "If it is not yours, disconnect it: you will get a new code.",
  disconnect: "Disconnect the phone",
  stop: "Turn the remote off",
  opening: "Asking the server…",
  failed: "The server that shares the tool does not answer.",
  again: "Ask again",
} as const;
