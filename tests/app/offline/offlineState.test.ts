import { expect, it } from "vitest";
import { type OfflineState, startOffline } from "../../../src/app/offline/offlineState";

const rest = () => new Promise((resolve) => setTimeout(resolve, 50));

/** A browser's container of workers that answers a registration in its own way. */
async function statesWith(register: (() => Promise<unknown>) | null): Promise<readonly OfflineState["kind"][]> {
  const states: OfflineState["kind"][] = [];
  const container = register && { register, addEventListener: () => {}, controller: null };
  const offline = startOffline({
    container: (container ?? undefined) as unknown as ServiceWorkerContainer | undefined,
    workerAddress: "./sw.js",
    onState: ({ kind }) => states.push(kind),
    loadAnew: () => states.push("failed"),
  });
  await rest();
  await offline.lookForRelease();
  offline.takeNewRelease();
  return states;
}

it("says that there are no workers, that they are refused, or that nothing came of it", async () => {
  expect(await statesWith(null)).toEqual(["unsupported"]);
  expect(await statesWith(() => Promise.reject(new Error("refused")))).toEqual(["preparing", "failed"]);
  expect(await statesWith(() => Promise.resolve(undefined))).toEqual(["preparing", "failed"]);
});

const workerThatSays = (isWhole: boolean) => ({
  addEventListener: () => {},
  postMessage: (_question: unknown, ports: readonly MessagePort[] = []) => ports[0]?.postMessage(isWhole),
});

it("says ready only of a worker that has all files", async () => {
  const registered = (isWhole: boolean) => () =>
    Promise.resolve({ addEventListener: () => {}, update: () => Promise.resolve(), active: workerThatSays(isWhole) });
  expect(await statesWith(registered(false))).toEqual(["preparing", "failed"]);
  expect(await statesWith(registered(true))).toEqual(["preparing", "ready"]);
});

it("says ready, and that a newer release waits", async () => {
  const worker = workerThatSays(true);
  const registered = (parts: object) => () =>
    Promise.resolve({ addEventListener: () => {}, update: () => Promise.reject(new Error("no network")), ...parts });
  expect(await statesWith(registered({ active: worker }))).toEqual(["preparing", "ready"]);
  expect(await statesWith(registered({ active: worker, waiting: worker }))).toEqual(["preparing", "newReleaseWaits"]);
});
