import { readBlob } from "./fittingFile";

// Runs beside the page. What goes wrong here reaches the page as an error of its worker, and the page then reads itself.
addEventListener("message", ({ data }: MessageEvent<Blob>) => void readBlob(data).then((read) => postMessage(read)));
