import { fieldsOf, type PhoneNews, readPhoneNews, readRoomNews, type RemoteMove, type RoomNews } from "./remoteWords";

/** Whether the server that this page came from passes moves on. Only a server without encryption is asked: a host of the tool never is one. */
export async function isRemoteOffered(): Promise<boolean> {
  if (window.location.protocol !== "http:") return false;
  try {
    const answer = await fetch("./remote/offer");
    return answer.ok && fieldsOf(await answer.text()).remote === true;
  } catch {
    return false;
  }
}

/** The class view's end. */
export interface OpenRoom {
  /** Where a phone in the same network finds this tool. */
  readonly addresses: readonly string[];
  readonly sayAct: (act: string) => void;
  /** Lets the phone go, and waits for another one with another code. */
  readonly free: () => void;
  readonly end: () => void;
}

export async function openRoom(
  onNews: (news: RoomNews) => void,
  onLost: (isLost: boolean) => void,
): Promise<OpenRoom | null> {
  const { room, addresses } = fieldsOf(await bodyOf(post("rooms", {}), 201));
  if (typeof room !== "string" || !Array.isArray(addresses)) return null;
  const at = `rooms/${room}`;
  const news = listen(at, onLost, (text) => {
    const said = readRoomNews(text);
    if (said !== null) onNews(said);
  });
  return {
    addresses: addresses.filter((address) => typeof address === "string"),
    sayAct: (act) => void post(`${at}/act`, { act }),
    free: () => void post(`${at}/free`, {}),
    end: () => {
      news.close();
      void post(`${at}/end`, {});
    },
  };
}

/** The phone's end: its name at the server once the code was right, or why not. */
export async function pairPhone(code: string): Promise<{ readonly phone: string } | "wrongCode" | "unreachable"> {
  const answer = await post("phones", { code });
  if (answer === null) return "unreachable";
  if (answer.status === 403) return "wrongCode";
  const { phone } = fieldsOf(await bodyOf(Promise.resolve(answer), 201));
  return typeof phone === "string" ? { phone } : "unreachable";
}

export function listenAsPhone(
  phone: string,
  onNews: (news: PhoneNews) => void,
  onLost: (isLost: boolean) => void,
): () => void {
  const onText = (text: string) => {
    const said = readPhoneNews(text);
    if (said !== null) onNews(said);
  };
  const news = listen(`phones/${phone}`, onLost, onText, () => onNews({ kind: "over" }));
  return () => news.close();
}

/** Whether the move arrived at the class view. */
export async function sendMove(phone: string, move: RemoteMove): Promise<boolean> {
  return (await post(`phones/${phone}/moves`, { move }))?.status === 204;
}

/** A browser connects anew by itself, unless the server answers that it knows nothing of this: then it is gone for good. */
function listen(
  at: string,
  onLost: (isLost: boolean) => void,
  onText: (text: string) => void,
  onGone: () => void = () => {},
): EventSource {
  const source = new EventSource(`./remote/${at}/news`);
  source.onopen = () => onLost(false);
  source.onmessage = ({ data }: MessageEvent<unknown>) => onText(String(data));
  source.onerror = () => {
    onLost(true);
    // A page that is loaded anew closes its streams as well, and is gone before this is due.
    if (source.readyState === EventSource.CLOSED) setTimeout(onGone, beforeGone);
  };
  return source;
}

/** (ms) */
const beforeGone = 1_000;

/** Null where nobody answers. */
async function post(at: string, body: object): Promise<Response | null> {
  try {
    return await fetch(`./remote/${at}`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
    });
  } catch {
    return null;
  }
}

async function bodyOf(answering: Promise<Response | null>, wanted: number): Promise<string> {
  const answer = await answering;
  return answer?.status === wanted ? answer.text() : "";
}
