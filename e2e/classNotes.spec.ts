import { expect, test } from "@playwright/test";
import { pdfPages } from "./support/pdfText";
import { rulesBroken } from "./support/rulesBroken";
import { openDemo } from "./support/workroom";

/** Seen to fail where the file of the fitting left the notes out. */
test("a note typed before class outlives a reload, is on the printed session plan, and is shown in the class view at its step", async ({
  page,
}) => {
  await openDemo(page, "print");
  await page.getByRole("checkbox", { name: /^Session plan/ }).check();
  await page.getByText("Notes for the steps").click();
  const field = page.getByRole("textbox", { name: /Try the batting/ });
  await field.fill("Pass the strip around the room");
  expect(await rulesBroken(page)).toEqual([]);
  await page.reload();
  await page.getByRole("checkbox", { name: /^Session plan/ }).check();
  await page.getByText("Notes for the steps").click();
  await expect(field).toHaveValue("Pass the strip around the room");
  for (const format of ["Letter", "A4"] as const) {
    const pages = await pdfPages(await page.pdf({ format, printBackground: true }));
    const own = pages.find(({ text }) => text.includes("Session plan for"));
    expect(own?.text).toContain("Try the batting. Stop here. Pass the strip around the room 10 min");
    expect(own?.words.filter(({ size }) => size < 9.9)).toEqual([]);
  }
  await page.goto("/#class");
  await expect(page.locator(".class-action")).toBeVisible();
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("PageDown");
  await expect(page.locator(".class-count")).toContainText("a note");
  await page.keyboard.press("n");
  const note = page.locator(".class-note");
  await expect(note).toHaveText("Pass the strip around the room");
  for (const room of [
    { width: 1920, height: 1080 },
    { width: 1180, height: 820 },
  ]) {
    await page.setViewportSize(room);
    expect(await note.evaluate((part) => Number.parseFloat(getComputedStyle(part).fontSize))).toBeGreaterThan(
      room.height / 40,
    );
    expect(await rulesBroken(page)).toEqual([]);
  }
  await page.keyboard.press("PageUp");
  await expect(note).toContainText("No note for this step");
});
