import { fireEvent, render, screen } from "@testing-library/react";
import { expect, test } from "vitest";
import { qrCode } from "../../src/app/share/qrCode";
import { readLink, shareLink } from "../../src/app/share/shareLink";
import { fittingStore } from "../../src/app/session/store";
import { demoFitting } from "../../src/app/session/demoFitting";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";

const link = () => screen.queryByRole("textbox", { name: "Link" }) as HTMLInputElement | null;

test("a made-up person goes home from the class view, and the own fitting never", async () => {
  const store = fittingStore({ ...demoFitting, title: "Somebody real" });
  render(
    <StoreProvider store={store}>
      <ClassPage />
    </StoreProvider>,
  );
  fireEvent.keyDown(window, { key: "t" });
  expect(link()).toBeNull();
  fireEvent.keyDown(window, { key: "k" });
  expect(screen.queryByRole("button", { name: "Take home" })).toBeNull();
  fireEvent.keyDown(window, { key: "m" });
  fireEvent.click(screen.getByRole("button", { name: "Take home" }));
  expect(screen.getByText(/has a copy that cannot be called back/)).toBeTruthy();
  const shared = (await screen.findByRole("textbox", { name: "Link" })) as HTMLInputElement;
  const read = await readLink(shared.value.slice(shared.value.indexOf("#")));
  expect(read).toMatchObject({
    ok: true,
    value: { title: madeUpPerson(0).name, body: madeUpPerson(0).takeHome?.body },
  });
  expect(await screen.findByRole("img", { name: /code of the link/ })).toBeTruthy();
  expect(screen.getByText(/another device cannot open this link/)).toBeTruthy();
  fireEvent.keyDown(window, { key: "o" });
  expect(link()).toBeNull();
});

test("every made-up person fits into a code that a camera reads across a room", async () => {
  for (let place = 0; place < madeUpPeople; place += 1) {
    const fitting = madeUpPerson(place).takeHome;
    if (fitting === null) throw new Error("a made-up person may be taken home");
    const made = await shareLink(fitting, { names: true, work: false }, "https://sewing.example/padwright/index.html");
    if (made.kind !== "link") throw new Error(made.kind);
    expect((await qrCode(made.link)).kind, fitting.title).toBe("code");
  }
});
