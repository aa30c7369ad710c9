import { describe, expect, test } from "vitest";
import { measurementNames } from "../../src/core/body/vocabulary";
import { markRoles } from "../../src/ui/drawing/scene";
import { roundedSvg } from "./roundedSvg";
import { pictures } from "./registry";

const steady = pictures.filter(({ kind }) => kind === "steady");

describe("every picture of the registry", () => {
  test("has a name of its own, and there are many", () => {
    expect(new Set(pictures.map(({ name }) => name)).size).toBe(pictures.length);
    expect(pictures.length).toBeGreaterThan(2 * measurementNames.length);
  });

  test.each(pictures.map(({ name, markup }) => [name, markup] as const))("%s is whole", (_, markup) => {
    const svg = markup();
    expect(svg).toMatch(/<svg[^>]*class="drawing"/);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(svg).toMatch(/ d="[^"]{20,}"/);
    for (const role of svg.matchAll(/class="mark-(\w+)"/g)) expect(markRoles).toContain(role[1]);
  });

  test("says in words what it shows", () => {
    const spoken = pictures
      .map(({ markup }) => markup())
      .filter((svg) => !svg.includes('aria-hidden="true" viewBox') && svg.includes('role="img"'));
    expect(spoken.length).toBeGreaterThan(150);
    for (const svg of spoken) {
      expect(svg).toMatch(/<title[^>]*>[^<]{3,}<\/title>/);
      expect(svg).toMatch(/<desc[^>]*>[^<]{20,}<\/desc>/);
    }
  });

  test("stays a handful of paths", () => {
    for (const { name, markup } of pictures) {
      const paths = markup().match(/<path /g)?.length ?? 0;
      expect(paths, name).toBeLessThanOrEqual(name.startsWith("tape/") ? 9 : 24);
    }
  });
});

/** The figure under the tape is the same in all of them and is kept whole only once for each view. */
const withoutFigure = (svg: string): string =>
  svg.replace(/<path class="mark-(skin|skinLine|skinFill|garment|stand|form|formLine)"[^>]*><\/path>/g, "");
const wholeFigures = ["bustGirth", "napeToWaist", "waistToFloorFront", "armLength"];

describe("pictures drawn as they were", () => {
  const single = steady.filter(
    ({ room, name }) => !room.startsWith("measure-") || wholeFigures.some((whole) => name.endsWith(`/${whole}`)),
  );
  test.each(single.map(({ name, markup }) => [name, markup] as const))("%s", async (name, markup) => {
    await expect(roundedSvg(markup())).toMatchFileSnapshot(`./pictures/${name.replace("/", "-")}.svg`);
  });

  test.each(["measure-body", "measure-form"])("every tape of %s", async (room) => {
    const tapes = steady
      .filter((picture) => picture.room === room)
      .map(({ name, markup }) => `<!-- ${name} -->\n${roundedSvg(withoutFigure(markup()))}`);
    expect(tapes.length).toBe(measurementNames.length);
    await expect(tapes.join("\n")).toMatchFileSnapshot(`./pictures/${room}.txt`);
  });
});
