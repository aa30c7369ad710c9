import { expect, test } from "@playwright/test";
import { type ToolServer, toolServer } from "../src/command/toolServer";
import { freePort } from "../tests/support/freePort";
import { rulesBroken } from "./support/rulesBroken";

let server: ToolServer;
test.beforeAll(async () => {
  server = await toolServer({ isShared: true, port: await freePort() });
});
test.afterAll(() => server.close());

/** Seen to fail where the server passed no moves on, and where a phone that was loaded anew had lost the class view. */
test("a phone moves the class view of a laptop: it comes in by the code, sees the act, and another phone does not get in", async ({
  browser,
}) => {
  const laptop = await browser.newPage({ viewport: { width: 1920, height: 1080 }, hasTouch: false, isMobile: false });
  const phone = await browser.newPage({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  await laptop.goto(new URL("#class", server.local).href);
  const headline = laptop.getByRole("heading", { level: 1 });
  await expect(headline).toHaveText("Make the form ready.");
  await expect(laptop.getByRole("button", { name: "Remote" })).toHaveCount(1);
  await laptop.keyboard.press("r");
  const [network] = server.network;
  const panel = laptop.getByRole("region", { name: "A phone as remote" });
  if (network === undefined) {
    await expect(panel).toContainText("not on a network");
    return;
  }
  const code = (await laptop.locator(".class-code").textContent()) ?? "";
  await expect(panel).toContainText(`${network}#remote`);
  await expect(panel.getByRole("img", { name: "The address and the code as a square code" })).toBeVisible();
  expect(await rulesBroken(laptop)).toEqual([]);

  // What the square code leads to has the digits filled in.
  await phone.goto(new URL("#remote/123456", network).href);
  await expect(phone.getByRole("textbox", { name: "The code on the class view" })).toHaveValue("123456");
  const field = phone.getByRole("textbox", { name: "The code on the class view" });
  await field.fill(code.startsWith("0") ? "100000" : "000000");
  await phone.getByRole("button", { name: "Connect" }).click();
  await expect(phone.getByRole("alert")).toContainText("not the code");
  expect(await rulesBroken(phone)).toEqual([]);
  await field.fill(code);
  await phone.getByRole("button", { name: "Connect" }).click();
  await expect(phone.locator(".remote-act")).toHaveText("Make the form ready.");
  await expect(panel).toContainText("A phone controls the class view.");
  await laptop.keyboard.press("Escape");

  for (const [button, act] of [
    ["Next step", "Mark the person’s level lines on the form."],
    ["Next step", "Measure the bare form on each line."],
    ["Previous step", "Mark the person’s level lines on the form."],
  ] as const) {
    const { height = 0 } = (await phone.getByRole("button", { name: button }).boundingBox()) ?? {};
    expect(height).toBeGreaterThan(88);
    await phone.getByRole("button", { name: button }).click();
    await expect(headline).toHaveText(act);
    await expect(phone.locator(".remote-act")).toHaveText(act);
  }
  // The clicker goes on working, and the phone is told.
  await laptop.keyboard.press("PageDown");
  await expect(phone.locator(".remote-act")).toHaveText("Measure the bare form on each line.");
  const figures = laptop.locator(".class-view");
  await expect(figures).toHaveAttribute("data-figures", "shown");
  await phone.getByRole("button", { name: "Cover or show the figures" }).click();
  await expect(figures).toHaveAttribute("data-figures", "covered");
  expect(await rulesBroken(phone)).toEqual([]);
  // All of it lies on the screen of a phone.
  expect(await phone.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

  await phone.reload();
  await expect(phone.locator(".remote-act")).toHaveText("Measure the bare form on each line.");
  const other = await browser.newPage();
  await other.goto(new URL("#remote", network).href);
  await other.getByRole("textbox", { name: "The code on the class view" }).fill(code);
  await other.getByRole("button", { name: "Connect" }).click();
  await expect(other.getByRole("alert")).toContainText("not the code");

  await laptop.keyboard.press("r");
  await panel.getByRole("button", { name: "Disconnect the phone" }).click();
  await expect(phone.getByRole("alert")).toContainText("disconnected this phone");
  await expect(laptop.locator(".class-code")).not.toHaveText(code);
  for (const page of [laptop, phone, other]) await page.close();
});

test("where the tool is not shared the class view offers no remote, R tells how to share, and the phone’s page says what is missing", async ({
  page,
}) => {
  await page.goto("/#class");
  await expect(page.locator(".class-action")).toBeVisible();
  await page.waitForLoadState("networkidle");
  await expect(page.getByRole("button", { name: "Remote" })).toHaveCount(0);
  await page.keyboard.press("r");
  await expect(page.getByRole("region", { name: "A phone as remote" })).toContainText("npm start -- --share");
  await page.goto("/#remote");
  await expect(page.getByText("No class view can be reached here")).toBeVisible();
});
