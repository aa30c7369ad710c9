import { expect, type Page } from "@playwright/test";

/** The projector of a class, and the tablet that is held up to a few. */
export const rooms = [
  { width: 1920, height: 1080 },
  { width: 1180, height: 820 },
] as const;

/** How the class view lies on its screen, and how large what is read there stands. */
export const viewSeen = (page: Page) =>
  page.evaluate(async () => {
    await document.fonts.ready;
    const boxOf = (part: string) => document.querySelector(part)?.getBoundingClientRect();
    const [head, stage, foot] = [".class-head", ".class-stage", ".class-foot"].map(boxOf);
    const shown = [...document.querySelectorAll(".class-head *, .class-stage *, .class-foot *")].filter(
      (part) =>
        !["title", "desc"].includes(part.tagName) &&
        part.closest(".unseen") === null &&
        [...part.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== ""),
    );
    const sizeOf = (part: Element) =>
      part.closest("svg") === null
        ? Number.parseFloat(getComputedStyle(part).fontSize)
        : part.getBoundingClientRect().height;
    // Digits of the figures' face are seven tenths of the type size high; ask the browser rather than trust it.
    const pen = document.createElement("canvas").getContext("2d");
    const figures = [...document.querySelectorAll(".class-figure, .class-fraction")].map((figure) => {
      const { fontSize, fontFamily } = getComputedStyle(figure);
      if (pen === null) return 0;
      pen.font = `600 ${fontSize} ${fontFamily}`;
      return pen.measureText("8").actualBoundingBoxAscent;
    });
    const tall = (parts: string) =>
      [...document.querySelectorAll(parts)].map((part) => part.scrollHeight - part.clientHeight);
    const { scrollWidth, clientWidth } = document.querySelector(".class-view") ?? document.documentElement;
    const act = document.querySelector(".class-action");
    return {
      act: act === null ? 0 : sizeOf(act),
      cut: document.querySelector(".class-cut svg")?.getBoundingClientRect().height ?? null,
      headOverStage: (head?.bottom ?? 1e9) - (stage?.top ?? 0),
      stageOverFoot: (stage?.bottom ?? 1e9) - (foot?.top ?? 0),
      small: shown.filter((part) => sizeOf(part) < innerHeight / 40).map(({ textContent }) => textContent),
      words: [...document.querySelectorAll(".class-lines svg text, .class-lines-steps li")].map(sizeOf),
      figures,
      cutOff: Math.max(document.documentElement.scrollHeight - innerHeight, ...tall(".class-view, .class-stage > *")),
      sideways: Math.max(
        document.documentElement.scrollWidth - innerWidth,
        scrollWidth - clientWidth,
        ...[...document.querySelectorAll(".class-head, .class-stage > *, .class-foot")].map(
          (part) => part.scrollWidth - part.clientWidth,
        ),
      ),
    };
  });

/** The act is read from farthest away, all else from the back row; nothing has to be scrolled, and the cut piece is a picture. */
export function expectReadable(
  seen: Awaited<ReturnType<typeof viewSeen>>,
  room: (typeof rooms)[number],
  said: string,
): void {
  expect(seen.act, said).toBeGreaterThanOrEqual(room.height / 18);
  expect(seen.small, said).toEqual([]);
  expect(seen.headOverStage, said).toBeLessThanOrEqual(0);
  expect(seen.stageOverFoot, said).toBeLessThanOrEqual(0);
  expect(seen.cutOff, said).toBeLessThanOrEqual(1);
  expect(seen.sideways, said).toBeLessThanOrEqual(0);
  if (seen.cut !== null) expect(seen.cut, said).toBeGreaterThan(room.height / 4);
}
