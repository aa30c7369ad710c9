import { expect, test, type Page } from "@playwright/test";
import { toolServer } from "../src/command/toolServer";
import { freePort } from "../tests/support/freePort";
import { expectReadable, rooms, viewSeen } from "./support/backRow";
import { rulesBroken } from "./support/rulesBroken";
import { heading, openDemo, row } from "./support/workroom";

/** A fitting with a plan whose figures are nobody's of the sample people. */
const openMeasured = async (page: Page) => {
  await openDemo(page, "body");
  await row(page, "waistGirth").click();
  const field = page.getByRole("textbox", { name: "Waist, all around" });
  await field.fill("31 5/8");
  await field.press("Enter");
  await expect(row(page, "waistGirth")).toContainText("31 5/8");
  await page.goto("/#padding");
  await expect(page.getByText(/0 of \d+ pinned/)).toBeVisible();
};

/** Past what comes before, to the trial: the first step with the tape on the form. */
const openClassView = async (page: Page) => {
  await page.goto("/#class");
  await expect(page.locator(".class-lines")).toBeVisible();
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("PageDown");
  await expect(page.locator(".class-table")).toBeVisible();
};

/**
 * With fingers the controls always show, and take their room from the work. Seen to fail where controls in two rows cut off the trial's
 * figures, "should be on target" was wider than its column, and the cut piece had no height.
 */
for (const room of rooms)
  test(`under a finger every step of a long job is read from the back row at ${room.width} × ${room.height}`, async ({
    page,
  }) => {
    await page.setViewportSize(room);
    await page.goto("/#class");
    await page.locator(".class-action").waitFor();
    // The second sample person: halves of their own, and the longest names.
    await page.keyboard.press("m");
    const count = page.locator(".class-count");
    const steps = Number(/of (\d+)/.exec((await count.textContent()) ?? "")?.[1]);
    expect(steps).toBeGreaterThan(40);
    for (let step = 1; step <= steps; step += 1) {
      await expect(count).toContainText(`Step ${step} of`);
      expectReadable(
        await viewSeen(page),
        room,
        `${(await page.locator(".class-action").textContent()) ?? ""} ${step}`,
      );
      await page.keyboard.press("PageDown");
    }
  });

/** Seen to fail where a second row of controls cut off the trial's figures by 14 pixels. */
test("with an own fitting and a remote there are more controls, and still nothing is cut off under a finger", async ({
  page,
}) => {
  const server = await toolServer({ isShared: true, port: await freePort() });
  await page.goto(new URL("#demo", server.local).href);
  await heading(page, "The plan").waitFor();
  await page.goto(new URL("#class", server.local).href);
  await page.locator(".class-action").waitFor();
  await page.keyboard.press("m");
  for (const control of ["The open fitting", "Remote", "Note"])
    await expect(page.getByRole("button", { name: control, exact: true })).toBeVisible();
  for (const room of rooms) {
    await page.setViewportSize(room);
    await page.keyboard.press("Home");
    for (let step = 1; step <= 25; step += 1) {
      await expect(page.locator(".class-count")).toContainText(`Step ${step} of`);
      expectReadable(await viewSeen(page), room, `${step} at ${room.width}`);
      await page.keyboard.press("PageDown");
    }
  }
  await server.close();
});

test.describe("with keys instead of a finger, which the class view tells of", () => {
  test.use({ hasTouch: false, isMobile: false });

  test("at every step nothing lies over anything else, nothing is cut off, and all of it is read from the back row", async ({
    page,
  }) => {
    await page.goto("/#class");
    await expect(page.locator(".class-lines")).toBeVisible();
    const title = page.getByRole("heading", { level: 1 });
    const count = page.locator(".class-count");
    const steps = Number(/of (\d+)/.exec((await count.textContent()) ?? "")?.[1]);
    expect(steps).toBeGreaterThan(20);
    const headlines: string[] = [];
    for (let step = 0; step < steps; step += 1) {
      headlines.push((await title.textContent()) ?? "");
      for (const room of rooms) {
        await page.setViewportSize(room);
        const said = `${headlines.at(-1)} at ${room.width} × ${room.height}`;
        const seen = await viewSeen(page);
        const isMarking = step === 1;
        const isMeasuring = step === 3;
        if (isMarking) expect(seen.words.length).toBeGreaterThan(10);
        if (isMeasuring) expect(seen.figures.length).toBeGreaterThan(5);
        for (const height of seen.words) expect(height, said).toBeGreaterThan(room.height / 40);
        if (isMeasuring) for (const height of seen.figures) expect(height, said).toBeGreaterThan(room.height / 20);
        expectReadable(seen, room, said);
      }
      await page.keyboard.press("ArrowRight");
    }
    expect(headlines.slice(0, 2)).toEqual(["Make the form ready.", "Mark the person’s level lines on the form."]);
    expect(headlines.at(-1)).toBe("The stand-in is done.");
    for (const act of [
      "Cut the",
      "Stack the",
      "Pin the",
      "Carry the lines",
      "Measure every",
      "Slip in the",
      "Baste what",
    ])
      expect(
        headlines.some((headline) => headline.startsWith(act)),
        act,
      ).toBe(true);
    await page.keyboard.press("Home");
    for (let i = 0; i < 3; i += 1) await page.keyboard.press("ArrowRight");
    await expect(count).toContainText("Step 4 of");
    await page.keyboard.press("PageUp");
    await page.keyboard.press("PageUp");
    const picture = page.locator(".class-lines svg");
    await expect(picture).toContainText(/\d\sin/);
    await page.keyboard.press("4");
    await expect(picture).toHaveAccessibleName("Marking the high hip line");
    await page.keyboard.press("c");
    await expect(picture).not.toContainText(/\d/);
  });
});

/** Seen to fail where the padded form stood at each of these steps. */
test("over the padding a class sees what is done, as large as the room is, and nothing of a person who is covered", async ({
  page,
}) => {
  await page.goto("/#fittings");
  await page.locator("input[type=file]").setInputFiles("shared/demo/whole-job.json");
  await page.getByRole("button", { name: /^(Open|Go on).*Rosamund/ }).tap();
  await expect(page).toHaveURL(/#(padding|plan|person)$/);
  await page.goto("/#class");
  const act = page.locator(".class-action");
  const making = page.locator(".class-making");
  await expect(act).toBeVisible();
  await page.keyboard.press("c");
  await expect(page.getByRole("button", { name: /^Cover the figures/ })).toBeVisible();
  const steps = Number(/of (\d+)/.exec((await page.locator(".class-count").textContent()) ?? "")?.[1]);
  const shown: string[] = [];
  for (let step = 1; step <= steps; step += 1) {
    await expect(page.locator(".class-count")).toContainText(`Step ${step} of`);
    const headline = (await act.textContent()) ?? "";
    if ((await making.count()) > 0) {
      shown.push(headline);
      for (const room of rooms) {
        await page.setViewportSize(room);
        expectReadable(await viewSeen(page), room, headline);
        const { height = 0 } = (await making.locator("svg").boundingBox()) ?? {};
        expect(height, headline).toBeGreaterThan(room.height / 6);
      }
    }
    await page.keyboard.press("PageDown");
  }
  for (const words of [
    "Cut the cover",
    "Pin the cover",
    "Hem the cover",
    "Sew on the waist tape",
    "Cut the arm",
    "Hang the arm",
  ])
    expect(
      shown.some((headline) => headline.startsWith(words)),
      words,
    ).toBe(true);
  await page.keyboard.press("PageUp");
  await expect(making).toBeVisible();
  await page.keyboard.press("c");
  await expect(making).toHaveCount(0);
});

/** Seen to fail on a list with a line for every step, which went on below the panel. */
test("the session plan and the timer are read from the back row, whole, wherever the job stands", async ({ page }) => {
  await page.setViewportSize(rooms[0]);
  await openClassView(page);
  await page.keyboard.press("p");
  await page.keyboard.press("s");
  const panel = page.getByRole("region", { name: "In this session" });
  await expect(page.getByRole("timer")).toContainText(/^\d+:\d\d of about/);
  for (const at of [0, 8, 30]) {
    await page.keyboard.press("Home");
    for (let i = 0; i < at; i += 1) await page.keyboard.press("PageDown");
    for (const length of ["1 h", "3 h"]) {
      await panel.getByRole("button", { name: length, exact: true }).click();
      await expect(panel.getByRole("listitem").first()).toBeVisible();
      const seen = await viewSeen(page);
      expect(seen.small, `${at} ${length}`).toEqual([]);
      expect(seen.cutOff, `${at} ${length}`).toBeLessThanOrEqual(1);
      expect(seen.sideways, `${at} ${length}`).toBeLessThanOrEqual(0);
    }
  }
});

test("the clicker moves it, step by step, and at the last measurement the tape says there", async ({ page }) => {
  await openClassView(page);
  const title = page.getByRole("heading", { level: 1 });
  const next = await page.locator(".class-next strong").textContent();
  await page.getByRole("button", { name: "Next step" }).click();
  await expect(title).toHaveText(next ?? "");
  await expect(page.locator(".class-facts")).toContainText(/in (long|wide), [\d\s/]+in high/);
  await expect(page.locator(".class-foot")).toContainText(/should read/);
  await page.keyboard.press(" ");
  await expect(title).toHaveText(/^(Stack|Pin) the/);
  await page.keyboard.press("Home");
  await expect(title).toHaveText("Make the form ready.");
  await page.keyboard.press("End");
  await expect(title).toHaveText("The stand-in is done.");
  // Back over dust bag, lines, waist tape and hem to the last measurement, over the cover.
  for (let i = 0; i < 5; i += 1) await page.keyboard.press("PageUp");
  await page.keyboard.press("3");
  await expect(page.getByRole("columnheader", { name: "over the cover" })).toBeVisible();
  const figures = await page
    .getByRole("row", { name: /^around/ })
    .locator(".class-figure")
    .allTextContents();
  const expected = (await page.locator(".class-expected").textContent()) ?? "";
  const digits = (text = ""): string => text.replace(/\D/g, "");
  // The foot has it twice: once for whoever listens.
  expect(digits(expected)).toMatch(new RegExp(`^(?:${digits(figures[1])})+$`));
});

test("an own fitting comes on covered and is left as it was; a made-up person is one key away", async ({ page }) => {
  await openMeasured(page);
  await openClassView(page);
  const view = page.locator(".class-view");
  await expect(view).toContainText("figures covered");
  await expect(page.locator(".class-figure")).toHaveCount(0);
  await page.keyboard.press("c");
  await expect(page.locator(".class-figure").first()).toBeVisible();
  await page.keyboard.press("m");
  await expect(view).toContainText("sample person");
  await page.keyboard.press("End");
  await page.keyboard.press("o");
  await expect(view).toContainText("figures covered");
  await page.keyboard.press("c");
  await page.getByRole("link", { name: /^Leave/ }).click();
  await expect(page.getByText(/0 of \d+ pinned/)).toBeVisible();
  // Nothing but the waist was typed into it.
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
});

test("the class view breaks no rule of access, covered, open and with its keys shown", async ({ page }) => {
  await openDemo(page);
  await openClassView(page);
  for (const key of ["PageDown", "c", "k"]) {
    await page.keyboard.press(key);
    for (const room of rooms) {
      await page.setViewportSize(room);
      expect(await rulesBroken(page)).toEqual([]);
    }
  }
});

test("what is taken home is seen whole, and its keys leave the class view alone", async ({ page }) => {
  await openClassView(page);
  await page.keyboard.press("t");
  const code = page.locator(".code svg");
  await expect(code).toBeVisible();
  for (const room of rooms) {
    await page.setViewportSize(room);
    const box = await code.boundingBox();
    expect((box?.y ?? 1e9) + (box?.height ?? 0)).toBeLessThanOrEqual(room.height);
  }
  const count = page.locator(".class-count");
  const before = await count.textContent();
  await page.getByRole("textbox", { name: "Link" }).focus();
  for (const key of ["End", "ArrowRight", "Space", "c", "m"]) await page.keyboard.press(key);
  await page.getByRole("button", { name: "As large as the screen" }).press("Enter");
  for (const key of ["ArrowRight", "PageDown"]) await page.keyboard.press(key);
  expect(await count.textContent()).toBe(before);
  await page.keyboard.press("Escape");
  await expect(page.locator(".code-large")).toBeHidden();
  await expect(code).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(code).toBeHidden();
  await page.keyboard.press("PageDown");
  await expect(count).not.toHaveText(before ?? "");
});

/** Seen to fail: with the way back always to Fittings. */
test("Leave goes back to where one came from, where nobody's figures are covered", async ({ page }) => {
  await openDemo(page, "print");
  await page.goto("/#class");
  await expect(page.locator(".class-whose")).toContainText("Marta (sample person)");
  await page.mouse.move(600, 810);
  await page.getByRole("link", { name: /^Leave/ }).click();
  await expect(heading(page, "Print")).toBeVisible();
});

/** Seen to fail: at a field that grew out of the stage. */
test("what the class reads is typed on the screen itself, whole and large, and stands in the table", async ({
  page,
}) => {
  await openClassView(page);
  const stage = page.locator(".class-typed");
  for (const room of rooms) {
    await page.setViewportSize(room);
    await page.getByRole("textbox", { name: "without the strip" }).fill("23 1/4");
    await page.getByRole("textbox", { name: "over the strip" }).fill("28");
    await page.keyboard.press("Enter");
    await expect(stage).toContainText(/One layer adds about/);
    const sizes = await stage.locator("input").evaluateAll((inputs) =>
      inputs.map((input) => ({
        type: Number.parseFloat(getComputedStyle(input).fontSize),
        box: input.getBoundingClientRect().height,
      })),
    );
    for (const { type, box } of sizes) {
      expect(type).toBeGreaterThan(room.height / 40);
      expect(box).toBeGreaterThan(24);
    }
    expectReadable(await viewSeen(page), room, "trial");
  }
});

test("a person whose figures were covered is not uncovered by leaving", async ({ page }) => {
  await openMeasured(page);
  await page.goto("/#class");
  await expect(page.locator(".class-whose")).toContainText("figures covered");
  await page.keyboard.press("m");
  await page.getByRole("link", { name: /^Leave/ }).click();
  await expect(heading(page, "Fittings")).toBeVisible();
});
