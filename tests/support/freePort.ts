import { createServer } from "node:net";

/** A port of this machine that nothing listens on at this moment. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      if (address === null || typeof address === "string") {
        reject(new Error("The machine gave no port."));
        return;
      }
      server.close(() => resolve(address.port));
    });
  });
}
