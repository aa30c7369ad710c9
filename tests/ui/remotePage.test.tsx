import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { remoteMoves } from "../../src/app/classRemote/remoteWords";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import { demoFitting } from "../../src/app/session/demoFitting";
import { fittingStore } from "../../src/app/session/store";
import { classRemoteWords, remoteWords } from "../../src/text/remote";
import { stepWords } from "../../src/text/steps";
import { namesLength } from "../../src/text/withoutFigures";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";
import { remoteAct } from "../../src/ui/pages/class/useClassRemote";
import { RemotePage } from "../../src/ui/pages/remote/RemotePage";

/** A server that the test plays: what was posted to it, and the streams that it may tell news. */
const posted: { readonly at: string; readonly body: unknown }[] = [];
const streams: FakeStream[] = [];
let codeNow = "";
let isServed = true;
let isOpen = true;

class FakeStream {
  static readonly CLOSED = 2;
  onopen: (() => void) | null = null;
  onmessage: ((event: { readonly data: string }) => void) | null = null;
  onerror: (() => void) | null = null;
  readyState = 1;
  constructor(readonly url: string) {
    streams.push(this);
  }
  close(): void {
    this.readyState = FakeStream.CLOSED;
  }
}

const answerOf = (at: string, body: Record<string, unknown>): readonly [number, object | null] => {
  if (!isServed) return [200, null];
  if (at === "offer") return [200, { remote: true }];
  if (at === "rooms") return [201, { room: "r1", addresses: ["http://192.0.2.7:4471/"] }];
  if (at === "phones") return body.code === codeNow ? [201, { phone: "p1" }] : [403, null];
  return [at.endsWith("/moves") && !isOpen ? 409 : 204, null];
};

beforeEach(() => {
  posted.length = 0;
  streams.length = 0;
  codeNow = "482913";
  isServed = true;
  isOpen = true;
  sessionStorage.clear();
  vi.stubGlobal("EventSource", FakeStream);
  vi.stubGlobal("fetch", async (address: string, init?: { readonly body?: string }) => {
    const at = address.replace("./remote/", "");
    const body = JSON.parse(init?.body ?? "{}") as Record<string, unknown>;
    if (init !== undefined) posted.push({ at, body });
    const [status, said] = answerOf(at, body);
    return new Response(status === 204 ? null : JSON.stringify(said), { status });
  });
  // The server that shares the tool speaks plain HTTP.
  vi.stubGlobal("location", { ...window.location, protocol: "http:", pathname: "/", hash: "" });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

const tell = (part: string, news: object) =>
  act(async () => streams.findLast(({ url }) => url.includes(part))?.onmessage?.({ data: JSON.stringify(news) }));

/** Broken on purpose: the code sent with its gap, a move that did not arrive passed over in silence. Seen to fail. */
test("the phone comes in by the code, has three buttons and the act, and says when it was let go", async () => {
  const { unmount } = render(<RemotePage />);
  const code = await screen.findByRole("textbox", { name: remoteWords.code });
  fireEvent.change(code, { target: { value: "111 111" } });
  fireEvent.click(screen.getByRole("button", { name: remoteWords.connect }));
  expect(await screen.findByText(remoteWords.wrongCode)).toBeTruthy();
  fireEvent.change(code, { target: { value: "482 913" } });
  fireEvent.click(screen.getByRole("button", { name: remoteWords.connect }));
  for (const move of remoteMoves) fireEvent.click(await screen.findByRole("button", { name: remoteWords.moves[move] }));
  expect(posted.filter(({ at }) => at === "phones/p1/moves").map(({ body }) => body)).toEqual(
    remoteMoves.map((move) => ({ move })),
  );
  isOpen = false;
  fireEvent.click(screen.getByRole("button", { name: remoteWords.moves.forward }));
  expect(await screen.findByText(remoteWords.notMoved)).toBeTruthy();
  await tell("phones/p1", { kind: "act", act: "Try the batting." });
  expect(screen.getByText("Try the batting.")).toBeTruthy();
  expect(screen.getByText(remoteWords.passes)).toBeTruthy();
  unmount();
  // Put down and woken again, it is still the remote.
  render(<RemotePage />);
  await tell("phones/p1", { kind: "over" });
  expect(await screen.findByText(remoteWords.over)).toBeTruthy();
  expect(screen.getByRole("textbox", { name: remoteWords.code })).toBeTruthy();
  expect(sessionStorage.length).toBe(0);
});

test("where no tool is shared the phone says what is missing, and the class view offers nothing but how to share", async () => {
  isServed = false;
  render(<RemotePage />);
  expect(await screen.findByText(remoteWords.notOffered)).toBeTruthy();
  expect(screen.queryByRole("textbox")).toBeNull();
  render(
    <StoreProvider store={fittingStore(demoFitting)}>
      <ClassPage />
    </StoreProvider>,
  );
  await act(async () => {});
  expect(screen.queryByRole("button", { name: remoteWords.control })).toBeNull();
  fireEvent.keyDown(window, { key: "r" });
  expect(screen.getByText(classRemoteWords.notShared)).toBeTruthy();
  expect(screen.queryByRole("button", { name: classRemoteWords.stop })).toBeNull();
  await act(async () => {});
  expect(posted).toEqual([]);
});

/** Broken on purpose: the phone's moves not followed, the act told with its figures. Seen to fail. */
test("the class view shows the code, follows the phone, and tells it the act of every step", async () => {
  render(
    <StoreProvider store={fittingStore(demoFitting)}>
      <ClassPage />
    </StoreProvider>,
  );
  const control = await screen.findByRole("button", { name: remoteWords.control });
  expect(posted).toEqual([]);
  fireEvent.click(control);
  await act(async () => {});
  await tell("rooms/r1", { kind: "waiting", code: "482913" });
  expect(screen.getByText("482 913")).toBeTruthy();
  expect(screen.getByText("http://192.0.2.7:4471/#remote")).toBeTruthy();
  expect(screen.getByText(remoteWords.passes)).toBeTruthy();
  await tell("rooms/r1", { kind: "paired" });
  expect(screen.queryByText("482 913")).toBeNull();
  const headline = () => screen.getByRole("heading", { level: 1 }).textContent;
  const first = headline();
  await tell("rooms/r1", { kind: "move", move: "forward" });
  expect(headline()).not.toBe(first);
  expect(posted.at(-1)).toEqual({ at: "rooms/r1/act", body: { act: headline() } });
  await tell("rooms/r1", { kind: "move", move: "back" });
  expect(headline()).toBe(first);
  const covered = () => document.querySelector(".class-view")?.getAttribute("data-figures");
  expect(covered()).toBe("shown");
  await tell("rooms/r1", { kind: "move", move: "cover" });
  expect(covered()).toBe("covered");
  // The panel is out of the way once the phone moves; the phone stays.
  expect(screen.queryByText(classRemoteWords.title)).toBeNull();
  fireEvent.click(control);
  fireEvent.click(screen.getByRole("button", { name: classRemoteWords.disconnect }));
  expect(posted.at(-1)?.at).toBe("rooms/r1/free");
  fireEvent.click(screen.getByRole("button", { name: classRemoteWords.stop }));
  expect(posted.at(-1)?.at).toBe("rooms/r1/end");
});

test("no act that a phone is told names a figure", () => {
  let told = 0;
  for (let person = 0; person < madeUpPeople; person += 1) {
    const { plan, job, facts } = madeUpPerson(person);
    for (const { step } of job.steps) {
      const [headline] = stepWords(step, { lengths: "1/8 in", levels: plan.levels, pieces: plan.pieces, facts });
      expect(namesLength(remoteAct(headline))).toBe(false);
      if (remoteAct(headline) === headline) told += 1;
    }
  }
  expect(told).toBeGreaterThan(100);
  expect(remoteAct("Padding 3/8 in short at the waist, in front.")).toBe(remoteWords.noAct);
});
