import { codeDigits, type PhoneNews, type RemoteMove, type RoomNews } from "../app/classRemote/remoteWords";

/** A class view that waits for a phone, or has one; `room` and `phone` are secrets of the two ends. */
interface Room {
  readonly room: string;
  /** Null once it is used up. */
  code: string | null;
  phone: string | null;
  act: string;
  readonly classViews: Set<Listener<RoomNews>>;
  readonly phones: Set<Listener<PhoneNews>>;
}

type Listener<News> = (news: News) => void;

export interface Chance {
  /** A secret nobody guesses. */
  readonly secret: () => string;
  /** A whole number from nought up to, and without, `end`. */
  readonly below: (end: number) => number;
}

/**
 * Which phone moves which class view. One phone has a class view at a time, and a code counts once; after a few wrong ones every code that
 * waits is changed, so that nobody comes in by trying.
 */
export class RemoteRooms {
  private readonly rooms = new Map<string, Room>();
  private wrong = 0;

  constructor(private readonly chance: Chance) {}

  open(): string {
    for (const { room } of [...this.rooms.values()].filter(({ classViews }) => classViews.size === 0)) {
      if (this.rooms.size >= mostRooms) this.end(room);
    }
    if (this.rooms.size >= mostRooms) this.end([...this.rooms.keys()][0] ?? "");
    const room = this.chance.secret();
    const opened: Room = { room, code: null, phone: null, act: "", classViews: new Set(), phones: new Set() };
    this.rooms.set(room, opened);
    opened.code = this.newCode();
    return room;
  }

  /** Ends at the returned call; null where there is no such room. */
  listenAsClassView(room: string, listener: Listener<RoomNews>): (() => void) | null {
    const found = this.rooms.get(room);
    if (found === undefined) return null;
    found.classViews.add(listener);
    listener(found.code === null ? { kind: "paired" } : { kind: "waiting", code: found.code });
    return () => found.classViews.delete(listener);
  }

  sayAct(room: string, act: string): boolean {
    const found = this.rooms.get(room);
    if (found === undefined) return false;
    found.act = act;
    for (const listener of found.phones) listener({ kind: "act", act });
    return true;
  }

  /** Lets the phone go and waits with another code. */
  free(room: string): boolean {
    const found = this.rooms.get(room);
    if (found === undefined) return false;
    for (const listener of found.phones) listener({ kind: "over" });
    found.phones.clear();
    found.phone = null;
    this.giveCode(found);
    return true;
  }

  end(room: string): boolean {
    const found = this.rooms.get(room);
    if (found !== undefined) for (const listener of found.phones) listener({ kind: "over" });
    return this.rooms.delete(room);
  }

  /** The phone's secret, or null for a code that nobody waits with. */
  pair(code: string): string | null {
    const found = [...this.rooms.values()].find((room) => room.code === code);
    if (found === undefined) {
      this.wrong += 1;
      if (this.wrong % mostWrong === 0)
        for (const room of this.rooms.values()) if (room.code !== null) this.giveCode(room);
      return null;
    }
    found.code = null;
    found.phone = this.chance.secret();
    for (const listener of found.classViews) listener({ kind: "paired" });
    return found.phone;
  }

  listenAsPhone(phone: string, listener: Listener<PhoneNews>): (() => void) | null {
    const found = this.roomOf(phone);
    if (found === undefined) return null;
    found.phones.add(listener);
    listener({ kind: "act", act: found.act });
    return () => found.phones.delete(listener);
  }

  /** Whether a class view heard of it; null for a phone that has none. */
  move(phone: string, move: RemoteMove): boolean | null {
    const found = this.roomOf(phone);
    if (found === undefined) return null;
    for (const listener of found.classViews) listener({ kind: "move", move });
    return found.classViews.size > 0;
  }

  private roomOf(phone: string): Room | undefined {
    return [...this.rooms.values()].find((room) => room.phone === phone);
  }

  private giveCode(room: Room): void {
    const code = this.newCode();
    room.code = code;
    for (const listener of room.classViews) listener({ kind: "waiting", code });
  }

  private newCode(): string {
    const taken = new Set([...this.rooms.values()].map(({ code }) => code));
    for (;;) {
      const code = String(this.chance.below(10 ** codeDigits)).padStart(codeDigits, "0");
      if (!taken.has(code)) return code;
    }
  }
}

/** Class views at once; a school has fewer in one network. */
const mostRooms = 20;
/** Wrong codes until every code is changed. */
const mostWrong = 8;
