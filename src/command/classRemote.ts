import { randomBytes, randomInt } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";
import type { Plugin } from "vite";
import { fieldsOf, isRemoteMove, longestAct } from "../app/classRemote/remoteWords";
import { namesLength } from "../text/withoutFigures";
import { languageTags } from "./languageBuild";
import { RemoteRooms } from "./remoteRooms";

/**
 * The remote of the class view, for the server that shares the tool: a class view opens a room, a phone comes into it by the code that is shown
 * there, and both are told what is new over a stream of events. Nothing is kept, and nothing but moves and acts is taken.
 */
export function classRemote(addresses: () => readonly string[]): Plugin {
  return {
    name: "padwright-class-remote",
    configurePreviewServer({ middlewares, httpServer }) {
      const open = new Set<ServerResponse>();
      const rooms = new RemoteRooms({ secret: () => randomBytes(16).toString("hex"), below: (end) => randomInt(end) });
      httpServer.on("close", () => {
        for (const response of open) response.end();
      });
      // The page of every language asks beside itself; the rooms are the same, so a phone may read another language.
      for (const page of ["", ...languageTags.map((tag) => `/${tag}`)]) {
        middlewares.use(`${page}/remote`, (request, response) => {
          void replyTo({ rooms, addresses, open }, request, response)
            .catch(() => ({ status: 500 }))
            .then((reply) => (reply === null ? undefined : send(response, reply)));
        });
      }
    },
  };
}

interface Served {
  readonly rooms: RemoteRooms;
  readonly addresses: () => readonly string[];
  /** The streams that are being told news. */
  readonly open: Set<ServerResponse>;
}

interface Reply {
  readonly status: number;
  readonly body?: object;
}

/** What is answered at once; null where a stream was opened instead. */
async function replyTo(served: Served, request: IncomingMessage, response: ServerResponse): Promise<Reply | null> {
  const [what = "", secret = "", about = ""] = (request.url ?? "")
    .replace(/[?#].*$/, "")
    .split("/")
    .slice(1);
  if (request.method === "GET") return stream(served, response, [what, secret, about]);
  if (request.method !== "POST") return { status: 405 };
  // Another page can send a form from a person's browser, but not this type without asking first.
  if (request.headers["content-type"] !== "application/json") return { status: 415 };
  const text = await bodyOf(request);
  return text === null ? { status: 413 } : take(served, [what, secret, about], fieldsOf(text));
}

type Path = readonly [what: string, secret: string, about: string];

function stream({ rooms, open }: Served, response: ServerResponse, [what, secret, about]: Path): Reply | null {
  if (what === "offer") return { status: 200, body: { remote: true } };
  if (about !== "news") return { status: 404 };
  const write = (news: object): unknown => response.write(`data: ${JSON.stringify(news)}\n\n`);
  response.setHeader("Content-Type", "text/event-stream");
  response.setHeader("Cache-Control", "no-store");
  const stop = what === "rooms" ? rooms.listenAsClassView(secret, write) : rooms.listenAsPhone(secret, write);
  if (stop === null) return { status: 404 };
  open.add(response);
  const beat = setInterval(() => response.write(":\n\n"), betweenBeats);
  response.on("close", () => {
    clearInterval(beat);
    open.delete(response);
    stop();
  });
  return null;
}

function take(
  { rooms, addresses }: Served,
  [what, secret, about]: Path,
  { act, code, move }: { readonly [name: string]: unknown },
): Reply {
  const found = (is: boolean): Reply => ({ status: is ? 204 : 404 });
  switch (`${what} ${about}`.trim()) {
    case "rooms":
      return { status: 201, body: { room: rooms.open(), addresses: addresses() } };
    case "rooms act":
      return typeof act === "string" && act.length <= longestAct && !namesLength(act)
        ? found(rooms.sayAct(secret, act))
        : { status: 400 };
    case "rooms free":
      return found(rooms.free(secret));
    case "rooms end":
      return found(rooms.end(secret));
    case "phones": {
      const phone = typeof code === "string" ? rooms.pair(code) : null;
      return phone === null ? { status: 403 } : { status: 201, body: { phone } };
    }
    case "phones moves": {
      if (!isRemoteMove(move)) return { status: 400 };
      const heard = rooms.move(secret, move);
      return heard === false ? { status: 409 } : found(heard === true);
    }
    default:
      return { status: 404 };
  }
}

function send(response: ServerResponse, { status, body }: Reply): void {
  response.statusCode = status;
  response.setHeader("Content-Type", "application/json");
  response.setHeader("Cache-Control", "no-store");
  response.end(body === undefined ? undefined : JSON.stringify(body));
}

/** Null where it is longer than anything that is said here. */
async function bodyOf(request: IncomingMessage): Promise<string | null> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request) {
    const bytes = Buffer.from(part as Buffer);
    length += bytes.length;
    if (length > longestBody) return null;
    parts.push(bytes);
  }
  return Buffer.concat(parts).toString("utf8");
}

const longestBody = 2_000;
/** A stream that is silent longer is cut by some networks (ms). */
const betweenBeats = 15_000;
