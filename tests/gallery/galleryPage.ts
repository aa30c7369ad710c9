import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { pictures } from "./registry";

/** Writes every picture to one page to browse, in the colours of the tool: light, dark and on paper. */
const folder = "reports/gallery";
const css = ["src/ui/shell/tokens.css", "src/ui/drawing/drawing.css"]
  .map((file) => readFileSync(file, "utf8").replace(/@font-face\s*\{[^}]*\}/g, ""))
  .join("\n");

const rooms = [...new Set(pictures.map(({ room }) => room))];
const figure = (name: string, markup: string): string =>
  `<figure id="${name}">${markup}<figcaption>${name}</figcaption></figure>`;
const body = rooms
  .map((room) => {
    const shown = pictures.filter((picture) => picture.room === room).map(({ name, markup }) => figure(name, markup()));
    return `<h2 id="${room}">${room}</h2><div class="room room-${room}">${shown.join("\n")}</div>`;
  })
  .join("\n");
const page = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Pictures</title><style>${css}
body { margin: 1rem; background: var(--calico); color: var(--ink); font-family: system-ui, sans-serif; }
.room { display: grid; gap: 1rem; grid-template-columns: repeat(auto-fill, minmax(20rem, 1fr)); }
.room-tape, .room-thickness { grid-template-columns: repeat(auto-fill, minmax(28rem, 1fr)); }
.room-measure-body, .room-measure-form { grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); }
figure { margin: 0; background: var(--paper); padding: 0.5rem; }
</style><nav>${rooms.map((room) => `<a href="#${room}">${room}</a>`).join(" ")}</nav>${body}</html>`;

mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}/index.html`, page);
console.log(`${String(pictures.length)} pictures in ${folder}/index.html`);
