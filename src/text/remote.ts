import type { RemoteMove } from "../app/classRemote/remoteWords";

/** Words of the phone as a remote: on the phone, and in the class view. */
export const remoteWords = {
  title: "Remote",
  control: "Remote",
  /** Said on the phone where the act cannot be said without a figure. */
  noAct: "The act stands on the class view.",
  moves: {
    back: "Previous step",
    forward: "Next step",
    cover: "Cover or show the figures",
  } satisfies { readonly [move in RemoteMove]: string },
  code: "The code on the class view",
  connect: "Connect",
  lead: "This phone moves the class view of a laptop in the same network. On the laptop open the class view and press R.",
  wrongCode: "That is not the code on the class view. A code counts once; after several wrong ones it changes.",
  unreachable: "The laptop does not answer. Is it in the same network, and was the tool started with --share?",
  notOffered: "Here is no class view to move: the laptop has to serve the tool with “npm start -- --share”.",
  lost: "Not connected just now. It is tried again.",
  over: "The class view let this phone go.",
  notMoved: "That did not arrive: the class view is not open.",
  leave: "Disconnect",
  passes:
    "What passes: previous step, next step and cover from the phone; from the class view the sentence of the step, without figures. No measurement, no name, no note. The network is not encrypted, and nothing goes beyond it.",
} as const;

export const classRemoteWords = {
  title: "A phone as remote",
  open: "On the phone open:",
  type: "and type this code:",
  noNetwork: "This machine is in no network just now, so no phone can reach it.",
  once: "The first phone that types it has the class view; then the code is used up.",
  paired: "A phone moves the class view.",
  notYours: "If it is not yours, disconnect it: another code comes.",
  disconnect: "Disconnect the phone",
  stop: "No more remote",
  opening: "Asking the server…",
  failed: "The server that shares the tool does not answer.",
  again: "Ask again",
} as const;
